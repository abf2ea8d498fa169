import { hundredths, length, listOf, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { nearRight } from './outcomes/near-right.ts';
import { grip } from './pieces/grip.ts';
import { shank } from './pieces/shank.ts';
import { stockedLength } from './pieces/stocked-length.ts';
import { stockedSize, thousandths } from '../trade/tolerances.ts';

export const rivetLength = method({
	id: 'rivet-length',
	title: 'Rivet length from the stack',
	given: {
		layers: given(listOf(length), 'Layers'),
		D: given(rivetDiameter, 'Rivet diameter')
	},
	steps: {
		grip,
		shank,
		needed: step('grip + shank', 'Length needed', {
			asks: 'How long must the rivet be, all told?',

			rule: 'length.shank',
			tolerance: thousandths,
			slips: {
				noShank: slip('grip', 'The stack alone: nothing is left to form the shop head.'),
				noGrip: slip('shank', 'Only the 1.5D for the shop head: the grip is left out.'),
				twoShanks: slip(
					'grip + 2 * shank',
					'The 1.5D for the shop head was added twice: only one end is driven.',
					{ rare: true }
				),
				factorOnGrip: slip(
					'1.5 * grip + D',
					'The 1.5 went with the grip: take 1.5D, and add the grip as it is.',
					{ rare: true }
				),
				factorOnBoth: slip('1.5 * (grip + D)', 'Grip and D were both taken 1.5 times: only D is.', {
					rare: true
				}),
				factorForShank: slip(
					'1.5 * grip',
					'1.5 times the grip: take the grip as it is, and add 1.5D for the shop head.',
					{ rare: true }
				)
			}
		}),
		length: stockedLength
	},
	outcomes: [
		outcome(
			['length'],
			{
				out: shown('(length - grip) / D', hundredths),
				// The metal that stands out first fills the hole, whose size is the final drill's.
				fill: shown('grip / D * ((finalDrill(D) / D)^2 - 1)'),
				// The rest is the head, driven to 1.5D across.
				high: shown('max(0.05, (out - fill) / 1.5^2)', hundredths),
				headAcross: shown('1.5 * D'),
				headHigh: shown('high * D')
			},
			{
				inside: when('out <= 0', '{entered} does not even come through the stack.'),
				full: when(
					nearRight('length', stockedSize),
					'{entered} stands out {out}D, enough for a full shop head.'
				),
				bends: when(
					'length >= needed + (1/16 in)',
					'{entered} stands out {out}D, a size or more too much: driven, the shank bends over.'
				),
				// The least head allowed is 1.25D across and 0.33D high.
				stub: when(
					'length < needed and out - fill < 1.25^2 * 0.33',
					'{entered} stands out {out}D: too little for any head.'
				),
				// A little under 0.5D, so that it is not told as 0.5D.
				short: when(
					'length < needed and high < 0.495',
					'{entered} stands out {out}D where 1.5D is wanted: at full width the head is only {high}D high.'
				),
				scant: when(
					'length < needed',
					'{entered} leaves metal for a head, but stands out less than the 1.5D wanted.'
				),
				unstocked: otherwise(
					'{entered} stands out {out}D, enough for a head; this asks for the next full 1/16 in.'
				)
			}
		)
	]
});
