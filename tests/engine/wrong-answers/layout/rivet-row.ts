import { behind, rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	cutTo,
	decimal,
	down,
	fraction,
	list,
	nearest,
	number,
	off,
	swapped,
	up
} from '../typed.ts';

interface Given {
	readonly length: number;
	readonly endMargin: number;
	readonly greatestPitch: number;
}

interface Right {
	readonly run: number;
	readonly spaces: number;
	readonly count: number;
	readonly pitch: number;
	readonly positions: readonly number[];
}

const { common, rare } = rulesOf<Given, Right>('rivet-row');

const whole = (value: number): number => up(value, 1);

/** Rivets from the first one on, so many, so far apart. */
const marks = (from: number, pitch: number, many: number): readonly number[] =>
	Array.from({ length: many }, (_, at) => from + at * pitch);

/** A count and a pitch in one check, where they differ from the right ones. */
const pair = (count: number, pitch: number, right: Right): Typed | null =>
	off(count, right.count) === null && off(pitch, right.pitch) === null
		? null
		: { count: number(count), pitch: decimal(pitch) };

/** All three fields filled in for these marks, unless they are the right ones. */
function row(count: number, pitch: number, at: readonly number[], right: Right): Typed | null {
	if (off(count, right.count) === null && off(pitch, right.pitch) === null) {
		if (at.length === right.positions.length && at.every((mark, i) => same(mark, right, i)))
			return null;
	}
	return { count: number(count), pitch: decimal(pitch), positions: list(at, decimal) };
}

const same = (mark: number, { positions }: Right, at: number): boolean =>
	Math.abs(mark - (positions[at] ?? Number.NaN)) < 1 / 1000;

/** A run and a count, as the shortest task asks for, where they differ from the right ones. */
const start = (run: number, count: number, right: Right): Typed | null =>
	off(run, right.run) === null && off(count, right.count) === null
		? null
		: { run: fraction(run), count: number(count) };

/** A wrong run, and the rivets for it. */
const started = (run: number, { greatestPitch }: Given, right: Right): Typed | null =>
	start(run, whole(run / greatestPitch) + 1, right);

/** A count and a pitch worked from a run and its spaces. */
const spaced = (run: number, spaces: number, right: Right): Typed | null =>
	pair(spaces + 1, run / spaces, right);

const written = [
	common(
		'run',
		'spaces for rivets: one too few',
		(_, right) => start(right.run, right.spaces, right),
		'spacesForRivets',
		'other-step:spaces'
	),
	common(
		'run',
		'the margins not taken off',
		(given, right) => started(given.length, given, right),
		'noMargin'
	),
	common(
		'run',
		'the length by the pitch, no margins, no one more',
		({ length, greatestPitch }, right) => start(length, whole(length / greatestPitch), right),
		'noMargin',
		'spacesForRivets'
	),
	common(
		'run',
		'one margin only taken off',
		(given, right) => started(given.length - given.endMargin, given, right),
		'oneMargin'
	),
	rare(
		'run',
		'one more for each end',
		(_, right) => start(right.run, right.spaces + 2, right),
		'oneSpaceMore',
		'oneRivetMore'
	),
	rare(
		'run',
		'one fewer: the ends do not count',
		(_, right) => start(right.run, right.spaces - 1, right),
		'oneRivetLess'
	),
	rare(
		'run',
		'the margins added to the length',
		(given, right) => started(given.length + 2 * given.endMargin, given, right),
		'marginsAdded'
	),
	rare(
		'run',
		'twice the margins taken off: two at each end',
		(given, right) => started(given.length - 4 * given.endMargin, given, right),
		'fourMargins'
	),
	rare(
		'run',
		'the row divided by the margin',
		({ endMargin }, right) => start(right.run, whole(right.run / endMargin) + 1, right),
		'byMargin'
	),
	rare(
		'run',
		'the pitch in the field of the count',
		({ greatestPitch }, right) => ({ run: fraction(right.run), count: fraction(greatestPitch) }),
		'other-step'
	),
	common(
		'count',
		'spaces to the nearest whole number, in both',
		({ greatestPitch }, right) => spaced(right.run, Math.round(right.run / greatestPitch), right),
		'spacesDown'
	),
	rare(
		'count',
		'one more for each end',
		(_, right) => pair(right.spaces + 2, right.pitch, right),
		'oneRivetMore'
	),
	rare(
		'count',
		'one fewer: the ends do not count',
		(_, right) => pair(right.spaces - 1, right.pitch, right),
		'oneRivetLess'
	),
	rare('count', 'the spaces not rounded', ({ greatestPitch }, { run, pitch, count }) => {
		const spaces = off(run / greatestPitch, count, (value) => value.toFixed(2));
		return spaces && { count: spaces, pitch: decimal(pitch) };
	}),
	rare(
		'count',
		'the margins added to the length, in both',
		({ length, endMargin, greatestPitch }, right) => {
			const run = length + 2 * endMargin;
			return spaced(run, whole(run / greatestPitch), right);
		},
		'marginsAdded'
	),
	rare(
		'count',
		'two margins at each end, in both',
		({ length, endMargin, greatestPitch }, right) => {
			const run = length - 4 * endMargin;
			return spaced(run, whole(run / greatestPitch), right);
		},
		'fourMargins'
	),
	rare(
		'count',
		'the row divided by the margin, in both',
		({ endMargin }, right) => spaced(right.run, whole(right.run / endMargin), right),
		'byMargin'
	),
	common(
		'count',
		'the whole length by the pitch, no one more, and the pitch from it',
		({ length, greatestPitch }, right) => {
			const spaces = whole(length / greatestPitch);
			return pair(spaces, length / spaces, right);
		},
		'noMargin',
		'spacesForRivets'
	),
	rare(
		'count',
		'two mistakes: no margins, and part of a space dropped',
		({ length, greatestPitch }, right) => spaced(length, down(length / greatestPitch, 1), right),
		'noMargin+spacesDown',
		'wholeLength'
	),
	rare(
		'count',
		'two mistakes: part of a space dropped, spaces for rivets',
		({ greatestPitch }, right) => {
			const spaces = down(right.run / greatestPitch, 1);
			return pair(spaces, right.run / spaces, right);
		},
		'spacesDown+spacesForRivets',
		'spacesDown',
		'oneRivetLess'
	),
	common(
		'pitch',
		'the run by the rivets, not by the spaces',
		(_, { run, count, pitch }) => off(run / count, pitch),
		'byRivets'
	),
	common(
		'pitch',
		'the whole length by the spaces',
		({ length }, { spaces, pitch }) => off(length / spaces, pitch),
		'wholeLength'
	),
	common(
		'pitch',
		'the whole length by the rivets',
		({ length }, { count, pitch }) => off(length / count, pitch),
		'lengthByRivets'
	),
	common(
		'pitch',
		'the greatest pitch as it stands',
		({ greatestPitch }, { pitch }) => off(greatestPitch, pitch, fraction),
		'pitchNotDivided'
	),
	common(
		'pitch',
		'one margin only taken off',
		({ length, endMargin }, { spaces, pitch }) => off((length - endMargin) / spaces, pitch),
		'oneMargin',
		'oneMarginDivided'
	),
	rare(
		'pitch',
		'one space fewer: part of a space dropped',
		({ greatestPitch }, { run, pitch }) => off(run / down(run / greatestPitch, 1), pitch),
		'spacesDown',
		'bySpacesLessOne'
	),
	rare(
		'pitch',
		'the run by one space fewer',
		(_, { run, spaces, pitch }) => off(run / (spaces - 1), pitch),
		'spacesDown',
		'bySpacesLessOne'
	),
	common(
		'pitch',
		'to the nearest sixteenth of the scale',
		(_, { pitch }) => off(nearest(pitch, 16), pitch, fraction),
		'pitchToSixteenths',
		'rounding'
	),
	common(
		'pitch',
		'to the nearest 32nd of the scale',
		(_, { pitch }) => off(nearest(pitch, 32), pitch, fraction),
		'rounding'
	),
	rare(
		'pitch',
		'to one decimal',
		(_, { pitch }) => off(nearest(pitch, 10), pitch, number),
		'rounding'
	),
	common(
		'pitch',
		'cut off behind two digits',
		(_, { pitch }) => off(down(pitch, 100), pitch, cutTo(2)),
		'rounding'
	),
	rare(
		'pitch',
		'two digits changed places',
		(_, { pitch }) => swapped(pitch, decimal, 1),
		'digits'
	),
	rare(
		'pitch',
		'millimetres, typed without the unit',
		(_, { pitch }) => bareMillimetres(pitch),
		'unit'
	),
	rare(
		'pitch',
		'the end margin for the pitch',
		({ endMargin }, { pitch }) => off(endMargin, pitch, fraction),
		'marginForPitch'
	),
	rare(
		'pitch',
		'the count in the field of the pitch',
		(_, { count }) => number(count),
		'other-step:count'
	),
	common(
		'positions',
		'measured from the first rivet',
		(_, { pitch, count }) => list(marks(0, pitch, count), decimal),
		'firstOnEdge'
	),
	common(
		'positions',
		'the second mark one margin after the first',
		({ endMargin }, right) =>
			list([endMargin, ...marks(2 * endMargin, right.pitch, right.count - 1)], decimal),
		'marginTwice'
	),
	rare(
		'positions',
		'the margin for the first mark only, the others by the pitch alone',
		({ endMargin }, right) =>
			list([endMargin, ...marks(right.pitch, right.pitch, right.count - 1)], decimal),
		'marginOnce'
	),
	common(
		'positions',
		'steps off the greatest pitch',
		({ endMargin, greatestPitch }, right) =>
			off(greatestPitch, right.pitch) &&
			list(marks(endMargin, greatestPitch, right.count), decimal),
		'pitchNotDivided'
	),
	common(
		'positions',
		'the first three only: the rest goes on alike',
		(_, { positions }) => (positions.length > 3 ? list(positions.slice(0, 3), decimal) : null),
		'half-list',
		'order'
	),
	common(
		'positions',
		'the first half, the rest is the mirror of it',
		(_, { positions }) => list(positions.slice(0, Math.floor(positions.length / 2)), decimal),
		'half-list',
		'order'
	),
	common(
		'positions',
		'the last one left out: it is the margin',
		(_, { positions }) => list(positions.slice(0, -1), decimal),
		'half-list',
		'order'
	),
	rare(
		'positions',
		'the first one left out',
		(_, { positions }) => list(positions.slice(1), decimal),
		'half-list',
		'order'
	),
	common(
		'positions',
		'the gaps between the rivets, not the marks',
		(_, { pitch, spaces }) => list(Array(spaces).fill(pitch), decimal),
		'other-step:pitch'
	),
	common(
		'positions',
		'the pitch rounded to a sixteenth, then added up',
		({ endMargin }, right) =>
			off(nearest(right.pitch, 16), right.pitch) &&
			list(marks(endMargin, nearest(right.pitch, 16), right.count), fraction),
		'pitchToSixteenths',
		'rounding'
	),
	rare(
		'positions',
		'the pitch cut to two digits, then added up',
		({ endMargin }, right) =>
			off(down(right.pitch, 100), right.pitch) &&
			list(marks(endMargin, down(right.pitch, 100), right.count), decimal),
		'rounding'
	),
	rare(
		'positions',
		'a mark at the edge itself as well',
		({ length }, { positions }) => list([0, ...positions, length], decimal),
		'order'
	),
	rare('positions', 'starts half a pitch from the edge', ({ length }, { count }) =>
		list(marks(length / count / 2, length / count, count), decimal)
	),
	common(
		'positions',
		'rows from edge to edge, the margins forgotten',
		({ length }, right) => list(marks(0, length / right.spaces, right.count), decimal),
		'firstOnEdge+noMargin',
		'firstOnEdge+wholeLength'
	),
	common(
		'positions',
		'the first mark only',
		(_, { positions }) => decimal(positions[0] ?? 0),
		'half-list',
		'order'
	),
	rare('positions', 'one mark slipped while adding up', (_, { positions, pitch }) =>
		positions.length < 5
			? null
			: list([...positions.slice(0, 2), ...positions.slice(2).map((at) => at + pitch / 2)], decimal)
	),
	common(
		'count',
		'spaces for rivets, the pitch right',
		(_, right) => pair(right.spaces, right.pitch, right),
		'spacesForRivets',
		'other-step:spaces'
	),
	common(
		'count',
		'spaces for rivets, and one space fewer in the pitch',
		(_, right) => pair(right.spaces, right.run / (right.spaces - 1), right),
		'spacesForRivets',
		'spacesDown'
	),
	common(
		'count',
		'no margins taken off, in both',
		({ length, greatestPitch }, right) => {
			const spaces = whole(length / greatestPitch);
			return pair(spaces + 1, length / spaces, right);
		},
		'noMargin'
	),
	common(
		'count',
		'part of a space dropped, in both',
		({ greatestPitch }, right) => {
			const spaces = down(right.run / greatestPitch, 1);
			return pair(spaces + 1, right.run / spaces, right);
		},
		'spacesDown'
	),
	common(
		'count',
		'one margin only, in both',
		({ length, endMargin, greatestPitch }, right) => {
			const spaces = whole((length - endMargin) / greatestPitch);
			return pair(spaces + 1, (length - endMargin) / spaces, right);
		},
		'oneMargin'
	),
	rare(
		'count',
		'count and pitch each in the field of the other',
		(_, right) => ({
			count: decimal(right.pitch),
			pitch: number(right.count)
		}),
		'other-step'
	),
	common(
		'count',
		'spaces for rivets, then all of it carried on',
		({ endMargin }, right) => {
			const pitch = right.run / (right.spaces - 1);
			return row(right.spaces, pitch, marks(endMargin, pitch, right.spaces), right);
		},
		'spacesForRivets',
		'spacesDown'
	),
	common(
		'pitch',
		'pitch by the rivets, and the marks from it',
		({ endMargin }, right) => {
			const pitch = right.run / right.count;
			return row(right.count, pitch, marks(endMargin, pitch, right.count), right);
		},
		'byRivets'
	),
	common(
		'positions',
		'count and pitch right, the marks from the first rivet',
		(_, right) => row(right.count, right.pitch, marks(0, right.pitch, right.count), right),
		'firstOnEdge'
	),
	common(
		'count',
		'no margins anywhere',
		({ length, greatestPitch }, right) => {
			const spaces = whole(length / greatestPitch);
			return row(spaces + 1, length / spaces, marks(0, length / spaces, spaces + 1), right);
		},
		'noMargin',
		'firstOnEdge'
	)
];

export const rules = behind<Right>('pitch', ({ count }) => ({ count: number(count) }), written);
