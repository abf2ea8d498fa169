import { fraction, length, word } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { stockSheets } from '../trade/stock.ts';
import { fromTable, weightToHundredth } from '../trade/tolerances.ts';

/** The sheet that a piece was cut from, weighed whole. */
const wholeSheets = Object.fromEntries(
	stockSheets.map(({ width, length }) => [
		`sheet${width}by${length}`,
		slip(
			`${width} in * ${length} in * T * density`,
			`That is the weight of a whole ${width} × ${length} in sheet: this one has its own size.`,
			{ rare: true }
		)
	])
);

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
			asks: 'What is the density of this alloy?',

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
				densityOf3003: slip(
					'0.099 lb / (1 in)^3',
					'0.099 is the density of 3003; this alloy has its own.'
				),
				densityOfSteel: slip(
					'0.283 lb / (1 in)^3',
					'0.283 is about the density of steel: this sheet is aluminum alloy.',
					{ rare: true }
				),
				densityAboutSteel: slip(
					'0.28 lb / (1 in)^3',
					'0.28 is about the density of steel: this sheet is aluminum alloy.',
					{ rare: true, late: true }
				),
				perCubicFoot: slip(
					'density(alloy) * 1728',
					'That is pounds for a cubic foot: the sheet is worked in cubic inches.'
				),
				densityOf1100: slip(
					'0.098 lb / (1 in)^3',
					'0.098 is the density of 1100; this alloy has its own.'
				)
			}
		}),
		weight: step('length * width * T * density', 'Weight', {
			asks: 'So what does the sheet weigh?',

			rule: 'cut.weight',
			tolerance: weightToHundredth,
			slips: {
				...wholeSheets,
				noThickness: slip(
					'length * width * density * 1 in',
					'The thickness is left out: that is the weight of a plate 1 in thick.'
				),
				divided: slip(
					'length * width * T / density * (1 lb / (1 in)^3) * (1 lb / (1 in)^3)',
					'Divided by the density: the volume is multiplied by it.',
					{ rare: true }
				),
				sidesAdded: slip(
					'(length + width) * T * density * (1 in)',
					'The sides were added: length times width is the area.',
					{ rare: true }
				),
				widthTwice: slip(
					'width * width * T * density',
					'The width was taken for both sides: length times width is the area.',
					{ rare: true }
				),
				lengthTwice: slip(
					'length * length * T * density',
					'The length was taken for both sides: length times width is the area.',
					{ rare: true, late: true }
				),
				gaugeOver: slip(
					'length * width * gaugeAbove(T) * density',
					'The next thicker sheet was taken: this one has its own thickness.',
					{ rare: true, late: true }
				),
				gaugeUnder: slip(
					'length * width * gaugeBelow(T) * density',
					'The next thinner sheet was taken: this one has its own thickness.',
					{ rare: true, late: true }
				),
				oneSideInFeet: slip(
					'length * width * T * density / 12',
					'One side was put in as feet: every length goes in as inches.'
				),
				bothSidesInFeet: slip(
					'length * width * T * density / 144',
					'Both sides were put in as feet: every length goes in as inches.'
				),
				noDensity: slip(
					'length * width * T * (1 lb / (1 in)^3)',
					'That is the volume in cubic inches: multiply it by the density.'
				)
			}
		})
	}
});
