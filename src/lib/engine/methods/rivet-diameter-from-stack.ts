import { length, listOf } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, slip, step, use } from '../solver/write.ts';
import { diameterInJoint } from './outcomes/diameter.ts';
import { stockedDiameter } from './pieces/stocked-diameter.ts';
import { threeT } from './pieces/three-t.ts';
import { thousandths } from '../trade/tolerances.ts';

export const rivetDiameterFromStack = method({
	id: 'rivet-diameter-from-stack',
	title: 'Rivet diameter from the stack',
	given: {
		layers: given(listOf(length), 'Layers')
	},
	steps: {
		thickest: step('largest(layers)', 'Thickness of the thickest layer', {
			symbol: 'T',
			asks: 'How thick is the thickest layer?',
			rule: 'diameter.three-t',
			tolerance: thousandths,
			slips: {
				thinnest: slip(
					'smallest(layers)',
					'The thinnest layer was taken; the thickest one decides.'
				),
				outer: slip(
					'member(layers, 1)',
					'The layer under the manufactured head was taken; the thickest one decides.'
				),
				middle: slip(
					'howMany(layers) > 2 ? member(layers, 2) : largest(layers)',
					'The layer in the middle was taken; the thickest one decides.',
					{ rare: true }
				),
				outerLeftOut: slip(
					'howMany(layers) > 2 ? max(member(layers, 2), member(layers, howMany(layers))) : largest(layers)',
					'The layer under the manufactured head is left out, as if it were not there: a doubler counts too.',
					{ rare: true }
				),
				last: slip(
					'member(layers, howMany(layers))',
					'The layer at the shop head was taken; the thickest one decides.',
					{ rare: true }
				),
				wholeStack: slip('sum(layers)', 'The whole stack was taken; the thickest layer decides.'),
				stackAlone: slip(
					'sum(layers) / 3',
					'The stack was taken without a factor; three times the thickest layer decides.',
					{ rare: true }
				),
				average: slip(
					'sum(layers) / howMany(layers)',
					'The layers were averaged; three times the thickest one decides.',
					{ rare: true }
				),
				twoAsOne: slip(
					'howMany(layers) > 2 ? member(layers, 1) + member(layers, 2) : largest(layers)',
					'Two layers were taken as one sheet: each stands by itself, and the thickest one decides.',
					{ rare: true, late: true }
				)
			}
		}),
		threeT: use(threeT, {}, { rare: ['bothSheets'] }),
		diameter: stockedDiameter
	},
	outcomes: [diameterInJoint]
});
