import { length } from '../../quantity/kinds.ts';
import { checked, keep } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { atLeast, atMost } from '../../solver/write.ts';
import { drillForRivet } from '../drill-for-rivet.ts';

const what = 'Hole';

export const check = checked(drillForRivet, {
	takes: { tolerance: given(length, 'How far a hole may be over the drill') },
	measured: { measured: given(length, 'Hole diameter') },
	optional: ['tolerance'],
	each: 'hole',
	times: 'D',
	keeps: [
		keep(
			atLeast('measured', 'D', 'Too small: the shank binds.', { what, rule: 'drill.clearance' }),
			'final',
			'Open it with the final drill for this rivet.'
		),
		keep(
			atMost('measured', 'final + tolerance', 'Larger than the final drill makes it.', {
				what,
				rule: 'drill.rivet'
			}),
			'final',
			'Do not drive this rivet: ask whether the next larger one may go in, with edge distance and pitch kept.'
		),
		keep(
			atMost('measured', 'D + (1/32 in)', 'As large as the next rivet.', {
				what,
				rule: 'drill.next-rivet'
			}),
			'clearance',
			'Do not drive this rivet: the hole is one for the next larger rivet, with edge distance and pitch kept. Ask first.'
		)
	]
});
