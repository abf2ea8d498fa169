import { fraction, length, word } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { fromTable, weightToHundredth } from '../trade/tolerances.ts';

export const sheetWeight = method({
	id: 'sheet-weight',
	title: 'Weight of a sheet from its size and alloy',
	given: {
		length: given(fraction, 'Length'),
		width: given(fraction, 'Width'),
		T: given(length, 'Thickness'),
		alloy: given(word, 'Alloy')
	},
	steps: {
		density: step('density(alloy)', 'Density of the alloy', {
			rule: 'cut.density',
			tolerance: fromTable,
			slips: {
				densityOf2024: slip(
					'0.1 lb / (1 in)^3',
					'0.100 is the density of 2024; this alloy has its own.'
				),
				densityOf5052: slip(
					'0.097 lb / (1 in)^3',
					'0.097 is the density of 5052; this alloy has its own.'
				),
				densityOf2014: slip(
					'0.101 lb / (1 in)^3',
					'0.101 is the density of 2014; this alloy has its own.'
				),
				specificGravity: slip(
					'2.7 lb / (1 in)^3',
					'2.7 is the specific gravity of aluminium; the density is in pounds per cubic inch.'
				)
			}
		}),
		weight: step('length * width * T * density', 'Weight', {
			rule: 'cut.weight',
			tolerance: weightToHundredth,
			slips: {
				noThickness: slip(
					'length * width * density * 1 in',
					'The thickness is left out: that is the weight of a plate 1 in thick.'
				),
				oneSideInFeet: slip(
					'length * width * T * density / 12',
					'One side was put in as feet: every length goes in as inches.'
				),
				bothSidesInFeet: slip(
					'length * width * T * density / 144',
					'Both sides were put in as feet: every length goes in as inches.'
				),
				twice: slip(
					'2 * length * width * T * density',
					'Both faces were counted: the thickness reaches from one to the other, once.'
				)
			}
		})
	}
});
