import { type Reader, readWith, workWith } from '../reader.ts';
import type { Reading } from '../reading.ts';
import type { Judgement, Kind } from './kind.ts';
import { wordsMathml } from './answers/words.ts';
import { wordsOnly } from './worded.ts';

/** What is put in order. */
interface Parts {
	readonly id: string;
	/** `the order of the work`. */
	readonly noun: string;
	/** The things, as they are listed in the task: the first is A or 1. At most 26. */
	readonly things: readonly string[];
	/**
	 * Pairs of which the first must stand before the second. With them, any order that keeps them
	 * all is right; without, only the very one that the method gives.
	 */
	readonly before?: readonly (readonly [first: string, second: string])[];
}

type Order = readonly string[];

/** Several things put in order: entered by their names, or by their letters or numbers in a row. */
export function order({ id, noun, things, before }: Parts): Kind<Order, Order> {
	const example = `${letters(things)} or ${things.slice(0, 2).join(', ')}, …`;
	const readBy =
		(typed: string) =>
		(reader: Reader): Reading<Order> =>
			reader.unopened(typed, example) ?? orderRead(typed, things, example, reader);
	const inPlace = (given: Order, right: Order) =>
		before
			? before.every(([one, other]) => given.indexOf(one) < given.indexOf(other))
			: isSame(given, right);
	const kind: Kind<Order, Order> = {
		id,
		noun,
		...wordsOnly,
		hint: `Names, letters or numbers in a row, like ${letters(things)}.`,
		options: {
			fits: (value) => value.length === things.length,
			compare: (one, other) => (kind.write(one) < kind.write(other) ? -1 : 1),
			standsOut: () => 0,
			parted: true
		},
		get member() {
			return kind;
		},
		example: () => example,
		read: (typed) => readWith(typed, readBy(typed)),
		work: (typed) => workWith(readBy(typed)),
		judge: ({ value }, right) => judged(value, right, inPlace),
		isWritten: ({ value }, other) => isSame(value, other),
		differs: (one, other) => one.length !== other.length || !inPlace(other, one),
		toValue: ({ value }, right) => (right && right.length !== value.length ? null : value),
		scaled: (entry) => entry,
		members: (value) => value,
		write: (value) => value.join(', '),
		mathml: (value) => wordsMathml(value.join(', '))
	};
	return kind;
}

function judged(
	given: Order,
	right: Order,
	inPlace: (given: Order, right: Order) => boolean
): Judgement {
	const [wanted, got] = [right.length, given.length];
	if (got !== wanted) return { is: 'miscounted', wanted, got };
	return inPlace(given, right) ? { is: 'right' } : { is: 'off' };
}

function isSame(one: Order, other: Order): boolean {
	return one.length === other.length && one.every((thing, i) => thing === other[i]);
}

function letters(things: readonly string[]): string {
	return things.map((_, i) => letterAt(i)).join('');
}

function letterAt(place: number): string {
	return String.fromCharCode('A'.charCodeAt(0) + place);
}

function orderRead(
	typed: string,
	things: readonly string[],
	example: string,
	reader: Reader
): Reading<Order> {
	const found = byMark(typed, things) ?? byName(typed, things, reader);
	if (!found) return { state: 'unread', why: `Write the order like ${example}` };
	const twice = found.find((thing, i) => found.indexOf(thing) !== i);
	if (twice !== undefined) return { state: 'unread', why: `Write each once; ${twice} is twice.` };
	return { state: 'read', value: found, said: found.join(', '), grain: 0 };
}

/** Letters or numbers in a row, parted or not: `BAC`, `b a c`, `2, 1, 3`. */
function byMark(typed: string, things: readonly string[]): string[] | null {
	const row = typed.trim().toUpperCase();
	const parted = row.split(/[\s,;>→-]+/);
	const marks = parted.length > 1 ? parted : [...row];
	const found = marks.map((mark) =>
		things.find((_, i) => mark === letterAt(i) || mark === String(i + 1))
	);
	return all(found);
}

/** Names, or the beginnings of them, parted by commas, semicolons, lines or arrows. */
function byName(typed: string, things: readonly string[], { begunBy }: Reader): string[] | null {
	const names = typed.split(/[,;\n>→]| then /i).map((name) => name.trim());
	return all(names.map((name) => (name === '' ? null : begunBy(name, things))));
}

function all(found: readonly (string | null | undefined)[]): string[] | null {
	const names = found.filter((name) => typeof name === 'string');
	return names.length === found.length ? names : null;
}
