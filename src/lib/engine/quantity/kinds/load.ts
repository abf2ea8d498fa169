import { dimension } from '../units.ts';
import { measured } from './measured.ts';
import { plain } from './plain.ts';

/**
 * Pounds of force. The shop writes `lb` for these as for a weight; formulas keep the two apart
 * (mathjs: `lb` is mass, `lbf` force), so that a load over an area is a stress and a weight over
 * one is none. Ounces and kilograms are weights only.
 */
export const load = plain(
	measured({
		id: 'load',
		dimension: dimension({
			name: 'load',
			noun: 'a load',
			unit: 'lbf',
			formula: 'lbf',
			literals: ['lbf'],
			units: [
				['lb', 1n, 1n, 'lb lbs lbf pound pounds'],
				['kip', 1000n, 1n, 'kip kips']
			]
		}),
		noun: 'a load',
		hint: 'Pounds of force.',
		example: '388 lb',
		places: [0, 2],
		thousands: true,
		fine: 10,
		mistakes: { coarse: [1, 1 / 10, 1 / 100], onTheWay: [1, 1 / 10] }
	})
);
