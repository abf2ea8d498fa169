import { type Exact, ratio } from '../exact.ts';
import type { ReadValue } from '../reading.ts';
import type { Value } from '../value.ts';
import type { Entry, Kind } from './kind.ts';
import type { UnitSlip } from './mistakes.ts';
import { cutTo, roundedTo } from './rounding.ts';

/*
 * What may be wrong with the writing of an answer, whatever the method: its unit, its rounding,
 * its digits. Loaded with the diagnosis, not with the kinds.
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
function isTimes<V extends Value, R extends ReadValue>(
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
function isRoundedTimes(kind: Kind, entry: Entry<ReadValue>, right: Value, factor: Exact): boolean {
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
function isVery<V extends Value, R extends ReadValue>(
	kind: Kind<V, R>,
	entry: Entry<R>,
	value: V
): boolean {
	return kind.isSound(value) && kind.isWritten(entry, value, 'very');
}

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
	const places = placesOf(entry);
	const isLong = numbersTyped(kind, entry, right).some(
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
	const [typed = NaN] = numbersTyped(kind, entry, right);
	return typeof right === 'number' && swaps(right.toFixed(0)).includes(String(typed))
		? 'swapped'
		: null;
}

/** Whether two digits of a size's number have changed places: No. 12 for No. 21. */
function isTurnedName(kind: Kind, entry: Entry<ReadValue>, right: Value): boolean {
	const [typed] = numbersTyped(kind, entry, right);
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

function numbersTyped(kind: Kind, entry: Entry<ReadValue>, right: Value): readonly number[] {
	const typed = kind.toValue(entry, right);
	return typed === null ? [] : kind.numbers(typed);
}

/** How many decimal places were typed. */
function placesOf({ grain }: Entry<ReadValue>): number {
	return grain > 0 ? Math.max(0, Math.round(-Math.log10(2 * grain))) : 0;
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
	const places = entry.grain > 0 ? Math.round(-Math.log10(2 * entry.grain)) : 0;
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
