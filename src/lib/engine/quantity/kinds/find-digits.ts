import { ratio } from '../exact.ts';
import type { ReadValue } from '../reading.ts';
import type { Value } from '../value.ts';
import { isRoundedTimes, isTimes, isVery } from './find-mistakes.ts';
import type { Entry, Kind } from './kind.ts';
import { numbersIn } from './numbers-in.ts';
import { roundedTo } from './rounding.ts';

/* What may be wrong with the digits of an answer, whatever the method. */

const powersOfTen = [ratio(10n), ratio(100n), ratio(1n, 10n), ratio(1n, 100n)];

/** Whether an answer has the right digits with the point or two neighbours misplaced. */
export function digitsIn(
	kind: Kind,
	entry: Entry<ReadValue>,
	right: Value
): 'point' | 'swapped' | null {
	if (typeof right === 'string' && typeof entry.value === 'string') {
		return swaps(right).includes(entry.value) ? 'swapped' : null;
	}
	if (kind.isList) return digitsOfOneIn(kind, entry, right);
	if (kind.mistakes.digits && kind.mistakes.coarse.length === 0) {
		return isWithoutPoint(kind, entry, right) ? 'point' : isTurned(kind, entry, right);
	}
	if (isTurnedName(kind, entry, right)) return 'swapped';
	// A fraction has no digits to misplace.
	if (!kind.mistakes.digits || entry.grain === 0) return null;
	// One digit is right of many a number.
	const places = Math.max(0, placesOf(entry));
	const isLong = numbersIn(kind, entry, right).some(
		(one) => digitsOf(one.toFixed(places)) >= fewestLeft
	);
	const moved = powersOfTen.some(
		(factor) =>
			(isLong && isTimes(kind, entry, right, factor)) ||
			isVery(kind, kind.scaled(entry, factor), right) ||
			isRoundedTimes(kind, entry, right, factor)
	);
	if (moved && kind.numbers(right).some((one) => one !== 0)) return 'point';
	const typed = kind.toValue(entry, right);
	return typeof right === 'number' && typeof typed === 'number' && isSwapped(typed, right)
		? 'swapped'
		: null;
}

/** What is wrong with the digits of the only one in a list that is wrong at all. */
function digitsOfOneIn(
	{ member }: Kind,
	{ value, grain }: Entry<ReadValue>,
	right: Value
): 'point' | 'swapped' | null {
	if (!Array.isArray(value) || !Array.isArray(right) || value.length !== right.length) return null;
	const wrong = (right as readonly (string | number)[]).flatMap((wanted, at) => {
		const one: Entry<ReadValue> = { value: value[at] as ReadValue, grain };
		return member.isWritten(one, wanted) ? [] : [{ one, wanted }];
	});
	const [only, ...more] = wrong;
	return only && more.length === 0 && right.length > 1
		? digitsIn(member, only.one, only.wanted)
		: null;
}

/** Whether two digits of a whole number have changed places: 15 for 51. */
function isTurned(kind: Kind, entry: Entry<ReadValue>, right: Value): 'swapped' | null {
	const [typed = NaN] = numbersIn(kind, entry, right);
	return typeof right === 'number' && swaps(right.toFixed(0)).includes(String(typed))
		? 'swapped'
		: null;
}

/** Whether two digits of a size's number have changed places: No. 12 for No. 21. */
function isTurnedName(kind: Kind, entry: Entry<ReadValue>, right: Value): boolean {
	const [typed] = numbersIn(kind, entry, right);
	if (typeof right !== 'number' || typed === undefined) return false;
	const [other, wanted] = [typed, right].map((one) => /No\. (\d+)/.exec(kind.write(one))?.[1]);
	return wanted !== undefined && other !== undefined && swaps(wanted).includes(other);
}

/** Whether a whole number is one with a decimal that was still to be rounded, and its point lost: 1027. */
function isWithoutPoint(kind: Kind, entry: Entry<ReadValue>, right: Value): boolean {
	const typed = kind.toValue(entry, right);
	if (typeof right !== 'number' || typeof typed !== 'number') return false;
	return right >= 10 && typed % 10 !== 0 && Math.abs(typed / 10 - right) < 1;
}

/** How many decimal places were typed; fewer than none of what is coarser than whole numbers. */
function placesOf({ grain }: Entry<ReadValue>): number {
	return grain > 0 ? Math.round(-Math.log10(2 * grain)) : 0;
}

/** Whether one is the other to one to four places with two neighbouring digits swapped. */
function isSwapped(typed: number, right: number): boolean {
	return [1, 2, 3, 4].some((places) => {
		const text = roundedTo(right, 10 ** places).toFixed(places);
		return swaps(text).some((swapped) => Math.abs(Number(swapped) - typed) < 1e-9);
	});
}

/**
 * Whether an answer is the right one as written but for one digit, left out, typed twice or another. The
 * last digit left out is one cut off, and one that is hardly off was rounded otherwise. Of whole numbers so few are met that only a digit too many tells.
 */
export function mistypedIn(
	kind: Kind,
	entry: Entry<ReadValue>,
	right: Value
): 'dropped' | 'doubled' | 'one' | null {
	const typed = kind.toValue(entry, right);
	if (typeof right !== 'number' || typeof typed !== 'number' || !kind.mistakes.digits) return null;
	const places = placesOf(entry);
	if (places === 0 && !(Number.isInteger(right) && Number.isInteger(typed))) return null;
	const text = typed.toFixed(Math.max(0, places));
	// Of so few digits any number is short of.
	if (places > 0 && digitsOf(text) < fewestLeft) return null;
	const written = places === 0 ? [right.toFixed(0)] : [2, 3, 4, 5].map((to) => right.toFixed(to));
	const long = written.filter((one) => digitsOf(one) > 1);
	if (places > 0 && long.some((one) => lessOne(one).includes(text))) return 'dropped';
	if (long.some((one) => lessOne(text, isTwice).includes(one))) return 'doubled';
	return places > 0 && isButOne(text, right.toFixed(places)) ? 'one' : null;
}

/** Whether all of three digits or more are the same but for one. */
function isButOne(text: string, right: string): boolean {
	if (text.length !== right.length || digitsOf(right) < 3) return false;
	const other = [...text].flatMap((sign, at) => (sign === right[at] ? [] : [at]));
	const [at = 0] = other;
	const by = Math.abs(Number(text[at]) - Number(right[at]));
	return other.length === 1 && (at < text.length - 1 || by > 2);
}

/** Digits that must be left of a number for one of them to be missed. */
const fewestLeft = 2;

/** How many digits a number has, noughts in front left out. */
function digitsOf(text: string): number {
	return text.replace(/^0?[.]0*|[.]/g, '').length;
}

/** A text without one of its digits, in every way; the last one stays, and a nought before the point. */
function lessOne(text: string, isOut = (_: string, at: number): boolean => at < text.length - 1) {
	return [...text].flatMap((sign, at) => {
		const stays = sign === '.' || (at === 0 && text.startsWith('0.')) || !isOut(text, at);
		return stays ? [] : [text.slice(0, at) + text.slice(at + 1)];
	});
}

const isTwice = (text: string, at: number): boolean => at > 0 && text[at] === text[at - 1];

/** A text with two neighbouring digits swapped, in every way; a point between them stays. */
export function swaps(text: string): string[] {
	return [...text.matchAll(/(?=(\d)([.]?)(\d))/g)]
		.filter(([, digit, , next]) => digit !== next)
		.map(({ index, 1: digit = '', 2: point = '', 3: next = '' }) => {
			const rest = text.slice(index + point.length + 2);
			return text.slice(0, index) + next + point + digit + rest;
		});
}
