import { angle, length } from '../solver/given.ts';
import { method } from '../solver/write.ts';
import { setbackOutcomes } from './outcomes/setback.ts';
import { setbackOfBend } from './pieces/setback.ts';
import { setbackFactor } from './pieces/setback-k.ts';

export const setback = method({
	id: 'setback',
	title: 'Setback of a bend',
	given: {
		R: length('Inside bend radius', { style: 'fraction' }),
		T: length('Thickness'),
		angle: angle('Bend angle, from flat', { symbol: 'N' })
	},
	steps: {
		K: setbackFactor,
		setback: setbackOfBend
	},
	outcomes: setbackOutcomes
});
