import { fraction } from '../../quantity/kinds.ts';
import { checked, keep } from '../../solver/checked.ts';
import { given } from '../../solver/given.ts';
import { atLeast } from '../../solver/write.ts';
import { leastBendRadius } from '../least-bend-radius.ts';

export const check = checked(leastBendRadius, {
	measured: { measured: given(fraction, 'Inside radius of the bend') },
	each: 'bend',
	keeps: [
		keep(
			atLeast('measured', 'in32nds', 'Sharper than the chart allows: the bend can crack.', {
				what: 'Inside radius',
				rule: 'bend.least-radius'
			}),
			'in32nds',
			'Do not bend it back. Look for cracks on the outside of the bend, and form the next piece on a larger nose bar.'
		)
	]
});
