import { lengths, method, slip, step } from '../solver/method.ts';
import { thousandths } from '../trade/tolerances.ts';
import { rivetDiameter } from './rivet-diameter.ts';

export const rivetDiameterFromStack = method({
	id: 'rivet-diameter-from-stack',
	title: 'Rivet diameter from the stack',
	given: {
		layers: lengths('Layers')
	},
	steps: {
		thickest: step('largest(layers)', 'Thickest layer', {
			rule: 'diameter.three-t',
			tolerance: thousandths
		}),
		...rivetDiameter.steps
	},
	slips: {
		thinnest: slip(
			'thickest',
			'smallest(layers)',
			'The thinnest sheet was taken; the thickest one decides.'
		),
		wholeStack: slip(
			'thickest',
			'sum(layers)',
			'The whole stack was taken; only the thickest sheet decides the diameter.'
		),
		average: slip(
			'thickest',
			'sum(layers) / howMany(layers)',
			'The average of the layers was taken; the thickest one decides.'
		),
		...rivetDiameter.slips
	}
});
