import { fraction } from '../../quantity/kinds.ts';
import type { Shown } from '../../solver/method.ts';
import { otherwise, outcome, shown, when } from '../../solver/write.ts';

interface LegOff {
	/** Among them `more`: how much longer than wanted the leg comes out. */
	readonly shows: Readonly<Record<string, Shown>> & { readonly more: Shown };
	/** When the answer is right. */
	readonly right: string;
	readonly fits: string;
	/** The sentence for a leg that comes out `by`: about 1/16 in too long. */
	readonly off: (by: string) => string;
}

/**
 * A leg that comes out off, told as it would be seen with a rule laid to it: so coarse that it
 * does not give the answer away.
 */
export function legOff(at: readonly string[], { shows, right, fits, off }: LegOff) {
	const about = shown('max(1/16 in, nearest(abs(more), 1/16 in))', fraction);
	return outcome(
		at,
		{ ...shows, about },
		{
			fits: when(right, fits),
			hairLong: when('more >= 0 in and more < 3/64 in', off('less than {about} too long')),
			long: when('more > 0 in', off('about {about} too long')),
			hairShort: when('-more < 3/64 in', off('less than {about} too short')),
			short: otherwise(off('about {about} too short'))
		}
	);
}
