import { length, lengths, method, slip, step } from '../solver/method.ts';
import { stockedSize, thousandths } from '../trade/tolerances.ts';

export const rivetLength = method({
	id: 'rivet-length',
	title: 'Rivet length from the stack',
	given: {
		layers: lengths('Layers'),
		D: length('Rivet diameter', { style: 'rivet-diameter' })
	},
	steps: {
		grip: step('sum(layers)', 'Grip: every layer the rivet passes through', {
			rule: 'length.grip',
			tolerance: thousandths
		}),
		shank: step('1.5 * D', 'Shank for the shop head', {
			rule: 'length.shank',
			tolerance: thousandths
		}),
		needed: step('grip + shank', 'Length needed', { tolerance: thousandths }),
		length: step('upTo(needed, 1/16 in)', 'Next stocked length', {
			rule: 'length.up',
			style: 'rivet-length',
			tolerance: stockedSize
		})
	},
	slips: {
		noShank: slip('needed', 'grip', 'The stack alone: nothing is left to form the shop head.'),
		oneLayer: slip('grip', 'largest(layers)', 'One layer only: the rivet passes through all of them.'),
		halfD: slip('shank', '1.5 * D / 2', 'Half of 1.5 D: the radius was taken for the diameter.'),
		oneD: slip('shank', 'D', '1 D for the shop head: it takes 1.5 D.'),
		down: slip('length', 'downTo(needed, 1/16 in)', 'Rounded down: the shank comes up short.')
	}
});
