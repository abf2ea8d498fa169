import { amountIn, listed } from '../option.ts';
import type { NameReading } from '../reading.ts';
import { unitOf } from '../units.ts';
import { anyLength } from './length.ts';
import { measured } from './measured.ts';

/** No length that is counted in 32nds comes near as many inches. */
const most = 64;

/** A bare whole number counts 32nds: 5 is 5/32 in. */
const counted: NameReading = {
	withoutNoun: (entry, field) => ({ entry, field }),
	named: () => [],
	bare({ value, form }, field) {
		const isCount = form !== 'fraction' && value.d === 1n && value.n > 0n && value.n < most;
		if (!isCount || field.unit === 'mm') return { found: [], only: false };
		const inches = unitOf(field.kind.dimension, 'in');
		return { found: [amountIn(listed(value.div(32), 'fraction'), inches, field)], only: true };
	},
	said: () => ''
};

/** A length that is asked for as the 32nd it is: 5/32 in, or 5. */
export const in32nds = measured({
	id: 'in-32nds',
	...anyLength,
	fractions: true,
	names: { reading: () => counted }
});
