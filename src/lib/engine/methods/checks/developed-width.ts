import { fraction, listOf } from '../../quantity/kinds.ts';
import { checked } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { atLeast, atMost } from '../../solver/write.ts';
import { developedWidth } from '../developed-width.ts';
import { tolerance, within } from './parts/tolerance.ts';

const everyLeg = 'Give every leg as bent, in the order of the mold line dimensions.';

export const check = checked(developedWidth, {
	takes: { tolerance },
	measured: {
		blank: given(fraction, 'Width of the blank, flat'),
		bent: given(listOf(fraction), 'Legs as bent, to the mold lines')
	},
	optional: ['blank', 'bent'],
	each: 'leg',
	keeps: [
		...within('blank', 'width', {
			what: 'Width of the blank',
			behind: 'width',
			short: 'Do not bend it: a leg will come out short. Cut another blank.',
			long: 'Trim the blank to its width before you bend it.'
		}),
		...within('bent', 'legs', {
			what: 'Leg as bent',
			behind: 'flats',
			short:
				'Do not bend it again: find which flat or sight line was off, and lay out the next piece.',
			long: 'Ask whether the leg may be trimmed; find which flat or sight line was off.'
		})
	],
	possible: [
		atLeast('howMany(bent)', 'howMany(legs)', everyLeg),
		atMost('howMany(bent)', 'howMany(legs)', everyLeg)
	]
});
