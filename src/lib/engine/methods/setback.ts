import { angle, fraction, length } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method } from '../solver/write.ts';
import { setbackOutcomes } from './outcomes/setback.ts';
import { setbackOfBend } from './pieces/setback.ts';
import { setbackFactor } from './pieces/setback-k.ts';

export const setback = method({
	id: 'setback',
	title: 'Setback of a bend',
	given: {
		R: given(fraction, 'Inside bend radius'),
		T: given(length, 'Thickness'),
		angle: given(angle, 'Bend angle, from flat', { symbol: 'N' })
	},
	steps: {
		K: setbackFactor,
		setback: setbackOfBend
	},
	outcomes: setbackOutcomes
});
