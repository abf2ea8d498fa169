import { length, listOf } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
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
		thickest: step('largest(layers)', 'Thickest layer', {
			rule: 'diameter.three-t',
			tolerance: thousandths,
			slips: {
				thinnest: slip(
					'smallest(layers)',
					'The thinnest sheet was taken; the thickest one decides.'
				),
				wholeStack: slip(
					'sum(layers)',
					'The whole stack was taken; only the thickest sheet decides the diameter.'
				),
				average: slip(
					'sum(layers) / howMany(layers)',
					'The average of the layers was taken; the thickest one decides.'
				)
			}
		}),
		threeT,
		diameter: stockedDiameter
	},
	outcomes: [diameterInJoint]
});
