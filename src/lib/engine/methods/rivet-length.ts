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
		needed: step('grip + shank', 'Length needed', {
			rule: 'length.shank',
			tolerance: thousandths
		}),
		length: step('upTo(needed, 1/16 in)', 'Next stocked length', {
			rule: 'length.up',
			style: 'rivet-length',
			tolerance: stockedSize
		})
	},
	slips: {
		oneLayer: slip(
			'grip',
			'largest(layers)',
			'One layer only: the rivet passes through all of them.'
		),
		thinLeftOut: slip(
			'grip',
			'sum(layers) - smallest(layers)',
			'The thinnest layer is left out of the grip.'
		),
		thickLeftOut: slip(
			'grip',
			'sum(layers) - largest(layers)',
			'The thickest layer is left out of the grip.'
		),
		headToo: slip(
			'grip',
			'sum(layers) + 0.425 * D',
			'The manufactured head was added: the grip is the layers alone.'
		),
		halfD: slip('shank', '1.5 * D / 2', 'Half of 1.5 D: the radius was taken for the diameter.'),
		oneD: slip('shank', 'D', '1 D for the shop head: it takes 1.5 D.'),
		twoD: slip('shank', '2 * D', '2 D for the shop head: it takes 1.5 D.'),
		noShank: slip('needed', 'grip', 'The stack alone: nothing is left to form the shop head.'),
		twoShanks: slip(
			'needed',
			'grip + 2 * shank',
			'The shank for the shop head was added twice: only one end is driven.'
		),
		notStocked: slip('length', 'needed', 'No rivet has this length: take the next 16th up.'),
		down: slip('length', 'downTo(needed, 1/16 in)', 'Rounded down: the shank comes up short.'),
		halfSize: slip(
			'length',
			'upTo(needed, 1/32 in)',
			'Rounded up to a 32nd: lengths step by 1/16 in, diameters by 1/32 in.'
		),
		oneMore: slip(
			'length',
			'upTo(needed, 1/16 in) + (1/16 in)',
			'One size longer than the next one up: too much shank bends over.'
		)
	}
});
