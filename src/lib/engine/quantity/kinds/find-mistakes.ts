import { type Exact, ratio } from '../exact.ts';
import type { ReadValue } from '../reading.ts';
import type { Value } from '../value.ts';
import type { Entry, Kind } from './kind.ts';
import type { UnitSlip } from './mistakes.ts';
import { cutTo, roundedTo } from './rounding.ts';

/*
 * What may be wrong with the writing of an answer, whatever the method: its unit and its rounding; of its
 * digits, find-digits.ts. Loaded with the diagnosis, not with the kinds.
 */

/** The right value, rounded too coarsely: `parts` of the base unit are left of it. */
export interface Rounding {
	readonly how: 'end' | 'cut' | 'metric';
	readonly parts?: number;
}

/** What is rounded away by more than this share of the value leaves another value. */
const mostLost = { decimals: 0.3, rule: 0.6 };

/** The unit in which an answer is the right value. A zero is one in every unit, and so in none. */
export function unitSlipIn<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V
): UnitSlip | null {
	const typed = kind.toValue(entry, right);
	if (typed === null || [right, typed].some((value) => isNothing(kind, value))) return null;
	const { units } = kind.mistakes;
	return units.find(({ factor }) => isTimes(kind, entry, right, factor)) ?? null;
}

function isNothing<V extends Value, R extends ReadValue>(kind: Kind<V, R>, value: V): boolean {
	return kind.numbers(value).every((one) => one === 0);
}

/** Whether so many times the answer is the right value, to the places typed. */
export function isTimes<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V,
	factor: Exact
): boolean {
	const inEntry = kind.map(right, (one) => one / factor.valueOf());
	return (
		kind.isWritten(kind.scaled(entry, factor), right, 'exact') ||
		kind.isWritten(entry, inEntry, 'exact')
	);
}

/** The same, with the right value rounded to the places typed, three digits at least: 186 for 18.62. */
export function isRoundedTimes(
	kind: Kind,
	entry: Entry<ReadValue>,
	right: Value,
	factor: Exact
): boolean {
	const parts = 1 / (2 * entry.grain);
	const written = kind.map(right, (one) => roundedTo(one / factor.valueOf(), parts));
	const isLong = kind.numbers(written).every((one) => Math.abs(one) * parts >= 100);
	return isLong && kind.isWritten(entry, written, 'very');
}

/** How an answer may be the right value, rounded too coarsely. */
export function roundingIn<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V
): Rounding | null {
	const made = (change: (one: number) => number) => isVery(kind, entry, kind.map(right, change));
	const { coarse } = kind.mistakes;
	const near = coarse.find(
		(parts) =>
			isWrittenTo(entry, parts) &&
			kind.numbers(right).every((one) => keepsMost(one, parts)) &&
			// Half-way between two lines of a rule, it may be read as either.
			[0, isEither(kind, parts) ? 1e-6 : 0].some((less) =>
				made((one) => roundedTo(one - less, parts))
			)
	);
	if (near !== undefined) return { how: 'end', ...(onRule(near) && { parts: near }) };
	const isCut = (parts: number) => isWrittenTo(entry, parts) && made((one) => cutToTwo(one, parts));
	if (coarse.length > 0 && places(kind).some(isCut)) return { how: 'cut' };
	return kind.dimension.formula === 'in' && isMetric(kind, entry, right) ? { how: 'metric' } : null;
}

/** Whether an entry has no finer places than these parts: `.480` is not rounded to hundredths. */
function isWrittenTo({ grain }: Entry<ReadValue>, parts: number): boolean {
	// Sixteenths may be written in decimals; coarser ones, such as .250, are more often just that.
	return onRule(parts) ? grain === 0 || parts >= 16 : grain * parts > 0.49;
}

function keepsMost(value: number, parts: number): boolean {
	const lost = Math.abs(roundedTo(value, parts) - value);
	return lost <= (onRule(parts) ? mostLost.rule : mostLost.decimals) * Math.abs(value);
}

/** Whether a value half-way between two lines may be read as either; a stocked size is one itself. */
function isEither({ mistakes }: Pick<Kind, 'mistakes'>, parts: number): boolean {
	return onRule(parts) && !mistakes.stocked;
}

/** Whether a rule is divided into so many parts of an inch. */
function onRule(parts: number): boolean {
	return parts > 1 && 64 % parts === 0;
}

/** Parts of the base unit that a value may be cut off to: thousandths, hundredths, tenths. */
function places({ fine }: Kind): number[] {
	return [fine, fine / 10, fine / 100];
}

/** Cut off behind so many parts; no number where fewer than two digits would be left to match. */
function cutToTwo(value: number, parts: number): number {
	const left = cutTo(value, parts);
	return left * parts < 9.5 ? NaN : left;
}

/** Whether every value is the right one to whole or half millimetres, up to one, or to tenths. */
function isMetric<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V
): boolean {
	const up = (value: number) => Math.ceil(value * 25.4 - 1e-9) / 25.4;
	const ways = [1, 2, 10].map((perMm) => (value: number) => roundedTo(value, 25.4 * perMm));
	return [...ways, up].some((way) => {
		const rounded = kind.map(right, way);
		// What comes to hundredths of an inch as well was hardly measured in millimetres.
		const inches = kind.numbers(rounded).some((one) => Math.abs(roundedTo(one, 1000) - one) < 1e-7);
		return !inches && isVery(kind, entry, rounded);
	});
}

/** Whether the entry is this very value and not merely near it. */
export function isVery<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	value: V
): boolean {
	return kind.isSound(value) && kind.isWritten(entry, value, 'very');
}

/** What is said of a value rounded off at the end, on the way, or cut off. */
export function roundingSays(
	{ mistakes, dimension }: Kind,
	{ how, parts }: { readonly how: Rounding['how'] | 'way'; readonly parts?: number }
): string {
	if (how === 'metric') return roundingWords.metric;
	if (mistakes.stocked) return 'Rounded off: give the stocked size itself.';
	if (how === 'end' && dimension.formula !== 'in' && parts === undefined) {
		return 'Rounded too coarsely: keep more decimal places.';
	}
	return parts === undefined
		? roundingWords[how]
		: `Rounded to the nearest 1/${parts} in, which is too coarse here: give it finer.`;
}

const roundingWords: Readonly<Record<Rounding['how'] | 'way', string>> = {
	end: 'Rounded too coarsely: keep thousandths.',
	way: 'Rounded on the way: carry thousandths from step to step and round once, at the end.',
	cut: 'Cut off instead of rounded: a 5 or more raises the digit before it.',
	metric: 'Rounded in millimetres: the rule here goes by inches; keep hundredths of a millimetre.'
};

/** Of a value that is asked for finer than the shop carries, the rounded one alone will do. */
const veryRoom = ratio(1n, 1_000_000n);

/**
 * How far a value may be from one that was rounded on every step as the shop carries it.
 *
 * @param tolerance how far it may be from the one that was not, in base units
 */
export function carriedRoom({ fine }: Kind, tolerance: number): Exact {
	const room = ratio(1n, BigInt(2 * fine));
	return tolerance > 0 && tolerance <= room.valueOf() ? veryRoom : room;
}
