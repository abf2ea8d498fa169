import { length } from '../../quantity/kinds.ts';
import { checked, keep } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { atLeast, atMost } from '../../solver/write.ts';
import { shank } from '../pieces/shank.ts';
import { shopHeadCheck } from '../shop-head-check.ts';

const wide = { what: 'Head width', rule: 'head.limits' };
const high = { what: 'Head height', rule: 'head.limits' };
const driveOn = 'If it was driven just now, drive it a little more and measure again.';
const replace = 'Drill it out and drive a new rivet: more driving cannot mend it.';

export const check = checked(shopHeadCheck, {
	measured: {
		width: given(length, 'Head width'),
		height: given(length, 'Head height')
	},
	each: 'head',
	times: 'D',
	keeps: [
		keep(atLeast('width', 'leastWidth', 'Too narrow.', wide), 'leastWidth', driveOn),
		keep(atMost('width', 'mostWidth', 'Too wide.', wide), 'mostWidth', replace),
		keep(atLeast('height', 'leastHeight', 'Too flat.', high), 'leastHeight', replace),
		keep(atMost('height', 'mostHeight', 'Too high.', high), 'mostHeight', driveOn)
	],
	possible: [
		atMost(
			'height',
			shank.step.formula,
			'The height of a head cannot be more than the 1.5D of shank that it is driven from; measure it again.'
		),
		atLeast('width', 'D', 'A head cannot be narrower than its shank; measure the width again.')
	]
});
