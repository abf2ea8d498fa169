import { isList, type Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { symbolOf } from '../solver/show-step.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Method } from '../solver/method.ts';
import type { Draw } from '../families/family.ts';

/** One given of a lesson, or one member of a list of them, as the reader moves it. */
export interface Hand {
	/** The given. */
	readonly key: string;
	/** Place in its list; null where it is no list. */
	readonly member: number | null;
	/** How it stands in the drawing and the formula: `T`, `layer 1`. */
	readonly symbol: string;
	readonly label: string;
	/** Every value that a task may draw for it, smallest first; words in the order of their kind. */
	readonly values: readonly Value[];
	/** How it is moved: from one stocked size to the next, along a scale, or picked among words. */
	readonly by: 'steps' | 'slide' | 'words';
}

/** More sizes than this are slid along, fewer are stepped through. */
const mostSteps = 24;

/** More words than this are not offered: part numbers have hundreds. */
const mostWords = 16;

/**
 * The givens under the reader's hand, with the values that draws of the method give them.
 *
 * @param start the draw that the lesson begins with: a list keeps as many members as it has there
 */
export function handsOf(method: Method, draws: readonly Draw[], start: Draw): Hand[] {
	const all = Object.keys(method.given).flatMap((key) => {
		const label = start.labels?.[key] ?? method.given[key]?.label ?? key;
		const begun = start.given[key] ?? '';
		const drawn = draws.flatMap(({ given }) => kindAt(method, key).members(given[key] ?? ''));
		if (!isList(begun)) {
			return [handFor({ method, key, member: null, label: String(label) }, drawn, begun)];
		}
		return begun.map((one, member) => {
			const called =
				typeof label === 'string' ? numbered(label, begun.length, member) : label[member];
			return handFor({ method, key, member, label: called ?? key }, drawn, one);
		});
	});
	// What every task gives alike stays as it is.
	return all.filter(({ values }) => values.length > 1);
}

function numbered(label: string, count: number, member: number): string {
	return count === 1 ? label : `${label} ${member + 1}`;
}

interface At {
	readonly method: Method;
	readonly key: string;
	readonly member: number | null;
	readonly label: string;
}

function handFor({ method, ...at }: At, drawn: readonly Value[], begun: Value): Hand {
	const symbol = symbolAt(method, at.key, at.member);
	const numbers = drawn.filter((one) => typeof one === 'number');
	if (numbers.length < drawn.length) {
		const { choices } = kindAt(method, at.key).member;
		return { ...at, symbol, values: wordsOf(drawn, choices, begun), by: 'words' };
	}
	const sizes = [...new Set(numbers)].sort((a, b) => a - b);
	if (sizes.length <= mostSteps) return { ...at, symbol, values: sizes, by: 'steps' };
	return { ...at, symbol, values: scaleOf(sizes), by: 'slide' };
}

/** The symbol of a given, or of a member of it: `R`, `layer 2`, `MLD 1`. */
export function symbolAt(method: Method, key: string, member: number | null): string {
	const symbol = symbolOf(method, key);
	return member === null ? symbol : `${symbol.replace(/(?<=[a-z])s$/, '')} ${member + 1}`;
}

function wordsOf(drawn: readonly Value[], choices: readonly string[], begun: Value): Value[] {
	const seen = new Set(drawn.map(String));
	if (choices.length > 0) return choices.filter((one) => seen.has(one));
	const sorted = [...seen].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
	const apart = Math.ceil(sorted.length / mostWords);
	return sorted.filter((one, i) => i % apart === 0 || one === begun);
}

/** Divisions of a scale, in base units: inches, degrees. The first that all sizes lie on is taken. */
const divisions = [5, 1, 1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 32, 1 / 64, 1 / 100, 1 / 1000];

/** Every division from the least to the greatest; the sizes themselves where they lie on none. */
function scaleOf(sizes: readonly number[]): readonly number[] {
	const lies = (by: number) =>
		sizes.every((size) => Math.abs(size / by - Math.round(size / by)) < 1e-6);
	const division = divisions.find(lies);
	const [least = 0, most = 0] = [sizes[0], sizes.at(-1)];
	if (division === undefined || (most - least) / division > 1000) return sizes;
	const first = Math.round(least / division);
	const count = Math.round(most / division) - first + 1;
	const places = division < 1 ? Math.round(1 / division) : 0;
	return Array.from({ length: count }, (_, i) =>
		places > 0 ? (first + i) / places : (first + i) * division
	);
}

/** The value under a hand. */
export function valueUnder(given: Values, { key, member }: Hand): Value {
	const value = given[key] ?? '';
	return member !== null && isList(value) ? (value[member] ?? '') : value;
}

/** The givens with another value under a hand. */
export function moved(given: Values, { key, member }: Hand, value: Value): Values {
	const before = given[key];
	if (member === null || !isList(before)) return { ...given, [key]: value };
	const list = before.map((one, i) => (i === member && !isObject(value) ? value : one));
	return { ...given, [key]: list };
}

function isObject(value: Value): value is Exclude<Value, number | string> {
	return typeof value === 'object';
}
