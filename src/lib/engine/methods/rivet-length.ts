import { length, lengths } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { grip } from './pieces/grip.ts';
import { shank } from './pieces/shank.ts';
import { stockedLength } from './pieces/stocked-length.ts';
import { thousandths } from '../trade/tolerances.ts';

export const rivetLength = method({
	id: 'rivet-length',
	title: 'Rivet length from the stack',
	given: {
		layers: lengths('Layers'),
		D: length('Rivet diameter', { style: 'rivet-diameter' })
	},
	steps: {
		grip,
		shank,
		needed: step('grip + shank', 'Length needed', {
			rule: 'length.shank',
			tolerance: thousandths,
			slips: {
				noShank: slip('grip', 'The stack alone: nothing is left to form the shop head.'),
				twoShanks: slip(
					'grip + 2 * shank',
					'The shank for the shop head was added twice: only one end is driven.'
				)
			}
		}),
		length: stockedLength
	}
});
