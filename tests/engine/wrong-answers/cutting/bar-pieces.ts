import { behind, rulesOf, type Typed } from '../rule.ts';
import { decimal, down, fraction, number, off, up } from '../typed.ts';

interface Given {
	readonly bar: number;
	readonly piece: number;
	readonly kerf: number;
}

interface Right {
	readonly count: number;
	readonly used: number;
	readonly remnant: number;
}

const { common, rare } = rulesOf<Given, Right>('bar-pieces');

const whole = (value: number): number => down(value, 1);

/** How many pieces the kerf lets out of a bar. */
const fit = ({ bar, piece, kerf }: Given): number => whole((bar + kerf) / (piece + kerf));

/** Count, used and remnant in one check. */
const filled = (count: number, used: number, remnant: number): Typed => ({
	count: number(count),
	used: fraction(used),
	remnant: fraction(remnant)
});

/** Count and bar used, as the shortest task asks for, and with the remnant as the longest does. */
function laid(count: number, used: number, { bar }: Given, right: Right): Typed | null {
	if (off(count, right.count) === null && off(used, right.used) === null) return null;
	// Whoever finds less than nothing left writes that nothing is.
	return filled(count, used, Math.max(bar - used, 0));
}

type Count = (given: Given, right: Right) => number;
type Each = (given: Given) => number;

/** A wrong count, and the bar used or the remnant worked on from it with so much bar for each piece. */
function worked(
	key: 'used' | 'remnant',
	rate: typeof common,
	why: string,
	count: Count,
	each: Each,
	...names: readonly string[]
) {
	return rate(
		key,
		why,
		(given, right) => {
			const pieces = count(given, right);
			const typed = laid(pieces, pieces * each(given), given, right);
			return typed && { count: typed.count ?? '', [key]: typed[key] ?? '' };
		},
		...names
	);
}

type Miscount = readonly [typeof common, string, Count, Each, ...string[]];

const miscounted = (...rule: Miscount) => [worked('used', ...rule), worked('remnant', ...rule)];

const withKerf: Each = ({ piece, kerf }) => piece + kerf;
const bare: Each = ({ piece }) => piece;

const written = [
	...miscounted(
		common,
		'the kerf forgotten, in both',
		({ bar, piece }) => whole(bar / piece),
		bare,
		'noKerf',
		'chipsKept',
		'other-step:bar'
	),
	...miscounted(
		common,
		'one kerf only taken off the bar, then none',
		({ bar, piece, kerf }) => whole((bar - kerf) / piece),
		bare,
		'noKerf',
		'oneKerfOff',
		'chipsKept'
	),
	worked(
		'used',
		common,
		'part of a piece counted: rounded up',
		({ bar, piece, kerf }) => up((bar + kerf) / (piece + kerf), 1),
		withKerf,
		'up',
		'nearest'
	),
	worked(
		'used',
		rare,
		'rounded to the nearest',
		({ bar, piece, kerf }) => Math.round((bar + kerf) / (piece + kerf)),
		withKerf,
		'up',
		'nearest'
	),
	common('count', 'not rounded at all', ({ bar, piece, kerf }, { count }) =>
		off(bar / (piece + kerf), count, (value) => value.toFixed(2))
	),
	...miscounted(
		common,
		'a kerf on both sides of each piece',
		({ bar, piece, kerf }) => whole(bar / (piece + 2 * kerf)),
		({ piece, kerf }) => piece + 2 * kerf,
		'kerfBothSides',
		'usedTwoKerfs'
	),
	...miscounted(
		rare,
		'the kerf taken off each piece',
		({ bar, piece, kerf }) => whole(bar / (piece - kerf)),
		({ piece, kerf }) => piece - kerf,
		'kerfOff',
		'kerfsOff'
	),
	...miscounted(rare, 'cuts counted, not pieces', (_, { count }) => count - 1, withKerf, 'cuts'),
	...miscounted(
		rare,
		'half a kerf: to the middle of the cut',
		({ bar, piece, kerf }) => whole(bar / (piece + kerf / 2)),
		({ piece, kerf }) => piece + kerf / 2,
		'halfKerf',
		'usedHalfKerf'
	),
	...miscounted(
		rare,
		'no kerf, and rounded up',
		({ bar, piece }) => up(bar / piece, 1),
		bare,
		'upNoKerf',
		'chipsKept',
		'noKerf'
	),
	...miscounted(
		rare,
		'the kerf read as 1/16 in',
		({ bar, piece }) => fit({ bar, piece, kerf: 1 / 16 }),
		({ piece }) => piece + 1 / 16,
		'kerfSixteenth',
		'usedSixteenth'
	),
	...miscounted(
		rare,
		'the kerf read as 1/8 in',
		({ bar, piece }) => fit({ bar, piece, kerf: 1 / 8 }),
		({ piece }) => piece + 1 / 8,
		'kerfEighth',
		'usedEighth'
	),
	rare('count', 'a bar of 12 ft taken for one of 10', (given, { count }) =>
		given.bar === 144 ? off(fit({ ...given, bar: 120 }), count, number) : null
	),
	common(
		'remnant',
		'no kerf taken off',
		({ bar, piece }, { count, remnant }) => off(bar - count * piece, remnant, fraction),
		'chipsKept'
	),
	common(
		'remnant',
		'the part of a piece left over, as a number',
		(given, { remnant }) => {
			const pieces = given.bar / (given.piece + given.kerf);
			return off(pieces - whole(pieces), remnant, decimal);
		},
		'partAsInches'
	),
	rare(
		'remnant',
		'one kerf fewer: as many cuts as gaps',
		(given, { count, remnant }) =>
			off(given.bar - count * given.piece - (count - 1) * given.kerf, remnant, fraction),
		'lastKerfKept'
	),
	rare(
		'remnant',
		'one kerf more',
		(given, { remnant }) => off(remnant - given.kerf, remnant, fraction),
		'oneKerfMore'
	),
	common(
		'remnant',
		'what is used, not what is left',
		(_, { used, remnant }) => off(used, remnant, fraction),
		'other-step:used'
	),
	rare(
		'remnant',
		'the kerfs only: all that turns to chips',
		({ kerf }, { count, remnant }) => off(count * kerf, remnant, fraction),
		'kerfsForRemnant'
	),
	rare(
		'remnant',
		'in sixteenths without the bar under it',
		(_, { remnant }) =>
			Number.isInteger(remnant * 16) && remnant * 16 > 1 ? number(remnant * 16) : null,
		'unit'
	),
	rare(
		'remnant',
		'a whole number is near enough',
		(_, { remnant }) => off(Math.round(remnant), remnant, number),
		'rounding'
	),
	rare(
		'remnant',
		'to one decimal',
		(_, { remnant }) => off(Math.round(remnant * 10) / 10, remnant, number),
		'rounding'
	),
	common(
		'used',
		'the pieces without the kerfs',
		({ piece }, { count, used }) => off(count * piece, used, fraction),
		'chipsKept'
	),
	rare(
		'used',
		'one kerf for all',
		({ piece, kerf }, { count, used }) => off(count * piece + kerf, used, fraction),
		'oneKerf'
	),
	rare(
		'used',
		'one kerf fewer than pieces',
		({ piece, kerf }, { count, used }) => off(count * piece + (count - 1) * kerf, used, fraction),
		'lastKerfKept'
	),
	common(
		'used',
		'what is left, not what is used',
		(_, { used, remnant }) => off(remnant, used, fraction),
		'other-step:remnant'
	),
	common(
		'used',
		'the kerfs only',
		({ kerf }, { count, used }) => off(count * kerf, used, fraction),
		'kerfsOnly'
	),
	rare(
		'used',
		'the whole bar',
		({ bar }, { used }) => off(bar, used, number),
		'chipsKept+noKerf',
		'other-step:bar',
		'wholeBar'
	),
	rare(
		'used',
		'kerfs taken off the pieces',
		({ piece, kerf }, { count, used }) => off(count * (piece - kerf), used, fraction),
		'kerfsOff'
	),
	common(
		'count',
		'no kerf, in count and remnant',
		({ bar, piece }, { count }) => {
			const pieces = whole(bar / piece);
			const left = bar - pieces * piece;
			return pieces === count || left === 0
				? null
				: { count: number(pieces), remnant: fraction(left) };
		},
		'noKerf',
		'chipsKept'
	),
	common(
		'count',
		'no kerf: it comes out even, nothing left',
		({ bar, piece }, { count }) => {
			const pieces = whole(bar / piece);
			return pieces === count ? null : { count: number(pieces), used: number(bar), remnant: '0' };
		},
		'noKerf',
		'chipsKept'
	),
	common(
		'remnant',
		'count right, no kerf in the remnant',
		({ bar, piece }, { count }) => ({
			count: number(count),
			remnant: fraction(bar - count * piece)
		}),
		'chipsKept'
	),
	common(
		'used',
		'count right, no kerf in what is used',
		({ bar, piece }, { count }) => filled(count, count * piece, bar - count * piece),
		'chipsKept'
	),
	common(
		'count',
		'cuts for pieces, carried on correctly',
		(given, { count }) => {
			const used = (count - 1) * (given.piece + given.kerf);
			return filled(count - 1, used, given.bar - used);
		},
		'cuts'
	),
	common(
		'used',
		'used and left each in the field of the other',
		(_, { count, used, remnant }) => filled(count, remnant, used),
		'other-step'
	),
	rare(
		'count',
		'count and remnant changed places',
		(_, { count, remnant }) => ({
			count: fraction(remnant),
			remnant: number(count)
		}),
		'other-step'
	)
];

const counted = ({ count }: Right): Typed => ({ count: number(count) });

export const rules = behind<Right>('used', counted, behind<Right>('remnant', counted, written));
