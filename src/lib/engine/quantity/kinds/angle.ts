import { ratio } from '../exact.ts';
import { dimension } from '../units.ts';
import { measured } from './measured.ts';
import { plain } from './plain.ts';

/** Degrees in a radian. It has no exact size; 21 places are kept. */
const radian = [57_295779513082320876798n, 10n ** 21n] as const;

/** Degrees; a bend counts from flat. */
export const angle = plain(
	measured({
		id: 'angle',
		dimension: dimension({
			name: 'angle',
			noun: 'an angle',
			unit: 'deg',
			formula: 'deg',
			literals: ['deg'],
			units: [
				['°', 1n, 1n, '° deg degree degrees', '′'],
				['′', 1n, 60n, "'", '″'],
				['″', 1n, 3600n, '"'],
				['rad', ...radian, 'rad radian radians']
			]
		}),
		noun: 'an angle',
		hint: 'Degrees, from flat unless it says otherwise.',
		example: '45 or 22.5',
		places: [0, 2],
		most: { limit: 180, says: 'must be 180° or less; bend angles count from flat.' },
		mistakes: {
			units: [
				{
					id: 'radians',
					factor: ratio(...radian),
					says: 'That angle is in radians; the shop works in degrees.'
				}
			]
		}
	})
);
