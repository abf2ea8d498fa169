import { type Exact, ratio } from '../exact.ts';
import type { ReadValue } from '../reading.ts';
import type { Value } from '../value.ts';
import type { Entry, Kind } from './kind.ts';
import type { UnitSlip } from './mistakes.ts';
import { roundedTo } from './rounding.ts';

/*
 * What may be wrong with the writing of an answer, whatever the method: its unit, its rounding,
 * its digits. Loaded with the diagnosis, not with the kinds.
 */

/** The right value, rounded too coarsely: `parts` of the base unit are left of it. */
export interface Rounding {
	readonly how: 'end' | 'cut' | 'metric';
	readonly parts?: number;
}

/** A value rounded away by more than this share of itself is another value. */
const mostLost = 0.3;

/** The unit in which an answer is the right value. A zero is one in every unit. */
export function unitSlipIn<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V
): UnitSlip | null {
	if (kind.numbers(right).every((one) => one === 0)) return null;
	const { units } = kind.mistakes;
	return units.find(({ factor }) => kind.isWritten(kind.scaled(entry, factor), right)) ?? null;
}

/** How an answer may be the right value, rounded too coarsely. */
export function roundingIn<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V
): Rounding | null {
	const made = (change: (one: number) => number) => isVery(kind, entry, kind.map(right, change));
	const keepsMost = (parts: number) =>
		kind
			.numbers(right)
			.every((one) => Math.abs(roundedTo(one, parts) - one) <= mostLost * Math.abs(one));
	const { coarse } = kind.mistakes;
	const near = coarse.find((parts) => keepsMost(parts) && made((one) => roundedTo(one, parts)));
	if (near !== undefined) return { how: 'end', ...(onRule(near) && { parts: near }) };
	const isCut = coarse.length > 0 && places(kind).some((parts) => made((one) => cutTo(one, parts)));
	if (isCut) return { how: 'cut' };
	return kind.dimension.formula === 'in' && isMetric(kind, entry, right) ? { how: 'metric' } : null;
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
function cutTo(value: number, parts: number): number {
	const left = Math.floor(value * parts + 1e-9);
	return left < 10 ? NaN : left / parts;
}

/** Whether every value is the right one to whole millimetres, or to tenths of one. */
function isMetric<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V
): boolean {
	return [1, 2, 10].some((perMm) => {
		const rounded = kind.map(right, (one) => roundedTo(one, 25.4 * perMm));
		// What comes to hundredths of an inch as well was hardly measured in millimetres.
		const inches = kind.numbers(rounded).some((one) => Math.abs(roundedTo(one, 1000) - one) < 1e-7);
		return !inches && isVery(kind, entry, rounded);
	});
}

/** Whether the entry is this very value and not merely near it. */
function isVery<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	value: V
): boolean {
	return kind.isSound(value) && kind.isWritten(entry, value, 'very');
}

/** Whether an answer has the right digits with the point or two neighbours misplaced. */
export function digitsIn(
	kind: Kind,
	entry: Entry<ReadValue>,
	right: Value
): 'point' | 'swapped' | null {
	// A fraction or a whole number has no digits to misplace.
	if (!kind.mistakes.digits || entry.grain === 0) return null;
	const moved = [10, 100, 0.1, 0.01].some((factor) =>
		kind.isWritten(
			{ ...entry, grain: entry.grain * factor },
			kind.map(right, (one) => one * factor)
		)
	);
	if (moved && kind.numbers(right).some((one) => one !== 0)) return 'point';
	const typed = kind.toValue(entry, right);
	return typeof right === 'number' && typeof typed === 'number' && isSwapped(typed, right)
		? 'swapped'
		: null;
}

/** Whether one is the other to three or four places with two neighbouring digits swapped. */
function isSwapped(typed: number, right: number): boolean {
	return [3, 4].some((places) => {
		const text = right.toFixed(places);
		return [...text].some((digit, i) => {
			const next = text[i + 1];
			if (next === undefined || digit === next || digit === '.' || next === '.') return false;
			const swapped = Number(text.slice(0, i) + next + digit + text.slice(i + 2));
			return Math.abs(swapped - typed) < 1e-9;
		});
	});
}

/** What is said of a value rounded off at the end, on the way, or cut off. */
export function roundingSays(
	{ mistakes }: Kind,
	{ how, parts }: { readonly how: Rounding['how'] | 'way'; readonly parts?: number }
): string {
	if (how === 'metric') return roundingWords.metric;
	if (mistakes.stocked) return 'Rounded off: give the stocked size itself.';
	return parts === undefined
		? roundingWords[how]
		: `Right to the nearest 1/${parts} in, which is too coarse here: keep thousandths.`;
}

const roundingWords: Readonly<Record<Rounding['how'] | 'way', string>> = {
	end: 'Rounded too coarsely: keep thousandths.',
	way: 'Rounded on the way: carry thousandths from step to step and round once, at the end.',
	cut: 'Cut off instead of rounded: a 5 or more raises the digit before it.',
	metric: 'Rounded in millimetres: the rule here goes by inches; keep hundredths of a millimetre.'
};

/** How far a value may be from one that was rounded on every step as the shop carries it. */
export function carriedRoom({ fine }: Kind): Exact {
	return ratio(1n, BigInt(2 * fine));
}
