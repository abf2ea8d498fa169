import { length } from '../../quantity/kinds.ts';
import { checked, keep } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { atLeast, atMost } from '../../solver/write.ts';
import { edgeDistance } from '../edge-distance.ts';

const what = 'Edge distance';

export const check = checked(edgeDistance, {
	measured: { measured: given(length, 'Edge distance, centre of the hole to the edge') },
	each: 'hole',
	times: 'D',
	keeps: [
		keep(
			atLeast('measured', 'least', 'Too near the edge: the metal outside can crack.', {
				what,
				rule: 'edge.least'
			}),
			'least',
			'Leave the hole as it is: drilled larger it comes nearer to the edge still, and a larger rivet needs more. Strike the next row with the preferred edge distance.'
		),
		keep(
			atMost('measured', 'greatest', 'Too far from the edge: the edge can lift.', {
				what,
				rule: 'edge.greatest'
			}),
			'greatest',
			'Ask before you trim the edge or add a row; on the next part measure both ends of the row from the edge.'
		)
	],
	possible: [
		atMost(
			'measured',
			'40 * D',
			'That is over 40D from the edge: look for a decimal point or a unit that is missing, or measure from the nearest edge.'
		)
	]
});
