import { ratio } from '../exact.ts';
import { dimension } from '../units.ts';
import { measured } from './measured.ts';
import { plain } from './plain.ts';

/** Pounds of force per square inch. */
export const stress = plain(
	measured({
		id: 'stress',
		dimension: dimension({
			name: 'stress',
			noun: 'a stress',
			unit: 'psi',
			formula: 'psi',
			literals: ['psi'],
			units: [
				[
					'psi',
					1n,
					1n,
					'psi lb/in2 lb/in^2 lb/in² lbs/in2 lbs/in^2 lbs/in² lbf/in2 lbf/in² lb/sqin'
				],
				['ksi', 1000n, 1n, 'ksi kip/in2 kip/in²']
			],
			// Steel is pulled at 300,000 psi and more.
			largest: 1e8
		}),
		noun: 'a stress',
		hint: 'psi or ksi.',
		example: '38000 psi or 38 ksi',
		places: [0, 1],
		thousands: true,
		fine: 1,
		mistakes: {
			units: [
				{ id: 'ksi', factor: ratio(1000n), says: 'That is the right stress in ksi, read as psi.' }
			],
			coarse: [1 / 10, 1 / 100, 1 / 1000],
			onTheWay: [1 / 10, 1 / 100]
		}
	})
);
