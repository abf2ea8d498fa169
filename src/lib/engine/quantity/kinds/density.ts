import { dimension } from '../units.ts';
import { measured } from './measured.ts';
import { plain } from './plain.ts';

/** Pounds per cubic inch. */
export const density = plain(
	measured({
		id: 'density',
		dimension: dimension({
			name: 'density',
			noun: 'a density',
			unit: 'lb/in3',
			formula: 'lb/in^3',
			units: [
				['lb/in³', 1n, 1n, 'lb/in3 lb/in^3 lb/in³ lb/cuin'],
				['g/cm³', 16_387064n, 453_592370n, 'g/cm3 g/cm^3 g/cm³ g/cc']
			]
		}),
		noun: 'a density',
		hint: 'Three places or more.',
		example: '0.1 lb/in3',
		places: [0, 5]
	})
);
