import { ratio } from '../exact.ts';
import { dimension } from '../units.ts';
import { measured } from './measured.ts';
import { plain } from './plain.ts';

/*
 * 1 lb = 0.45359237 kg exactly: National Bureau of Standards, Federal Register notice 59-5442,
 * 1 July 1959.
 */

/** Pounds as a scale tells them. A pull or push is a load. */
export const weight = plain(
	measured({
		id: 'weight',
		dimension: dimension({
			name: 'weight',
			noun: 'a weight',
			unit: 'lb',
			formula: 'lb',
			literals: ['lb'],
			units: [
				['lb', 1n, 1n, 'lb lbs pound pounds', 'oz'],
				['oz', 1n, 16n, 'oz ounce ounces'],
				['kg', 100_000_000n, 45_359237n, 'kg kilogram kilograms'],
				['g', 100_000n, 45_359237n, 'g gram grams']
			]
		}),
		noun: 'a weight',
		hint: 'Pounds or kilograms.',
		example: '2.5 lb',
		places: [0, 4],
		mistakes: {
			units: [
				{
					id: 'kilograms',
					factor: ratio(100_000_000n, 45_359237n),
					says: 'That is the right weight in kilograms, read as pounds.'
				},
				{
					id: 'ounces',
					factor: ratio(1n, 16n),
					says: 'That is the right weight in ounces, read as pounds.'
				}
			]
		}
	})
);
