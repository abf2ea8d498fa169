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

function cutTo(value: number, parts: number): number {
	return Math.floor(value * parts + 1e-9) / parts;
}

/** The unit in which an answer is the right value. */
export function unitSlipIn<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V
): UnitSlip | null {
	const { units } = kind.mistakes;
	return units.find(({ factor }) => kind.isWritten(kind.scaled(entry, factor), right)) ?? null;
}

/** Whether an answer is the right value rounded too coarsely, or cut off instead of rounded. */
export function roundingIn<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	right: V
): 'end' | 'cut' | null {
	const { coarse } = kind.mistakes;
	const isCut = (parts: number) =>
		isVery(
			kind,
			entry,
			kind.map(right, (one) => cutTo(one, parts))
		);
	const isNear = (parts: number) =>
		isVery(
			kind,
			entry,
			kind.map(right, (one) => roundedTo(one, parts))
		);
	if (coarse.some(isNear)) return 'end';
	const tenths = [kind.fine, kind.fine / 10, kind.fine / 100];
	return coarse.length > 0 && tenths.some(isCut) ? 'cut' : null;
}

/** Whether the entry is this very value and not merely near it. */
function isVery<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	value: V
): boolean {
	return (
		kind.isWritten({ ...entry, grain: 0 }, value) &&
		kind.isWritten({ ...entry, grain: 1e-6 }, value)
	);
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
	if (moved) return 'point';
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
export function roundingSays({ mistakes }: Kind, how: 'end' | 'way' | 'cut'): string {
	return mistakes.stocked ? 'Rounded off: give the stocked size itself.' : roundingWords[how];
}

const roundingWords: Readonly<Record<'end' | 'way' | 'cut', string>> = {
	end: 'Rounded too coarsely: keep thousandths.',
	way: 'Rounded on the way: carry thousandths from step to step and round once, at the end.',
	cut: 'Cut off instead of rounded: a 5 or more raises the digit before it.'
};

/** How far a value may be from one that was rounded on every step as the shop carries it. */
export function carriedRoom({ fine }: Kind): Exact {
	return ratio(1n, BigInt(2 * fine));
}
