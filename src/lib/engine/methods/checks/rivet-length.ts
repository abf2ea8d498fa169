import { rivetLength as lengths } from '../../quantity/kinds.ts';
import { checked, keep } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { atLeast, atMost } from '../../solver/write.ts';
import { rivetLength } from '../rivet-length.ts';

const what = 'Rivet length';

export const check = checked(rivetLength, {
	measured: { measured: given(lengths, 'Length of the rivet') },
	each: 'rivet',
	keeps: [
		keep(
			atLeast('measured', 'needed', 'Too short: the shank stands less than 1.5D past the grip.', {
				what,
				rule: 'length.shank'
			}),
			'needed',
			'Take the next length up before you drive it.'
		),
		// From half a step on it is the next size.
		keep(
			atMost('measured', 'length + (1/32 in)', 'Too long: driven, the shank bends over.', {
				what,
				rule: 'length.up'
			}),
			'length',
			'Take the next length down, or ask before you cut a shank.'
		)
	]
});
