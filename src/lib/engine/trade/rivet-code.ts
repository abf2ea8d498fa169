import { normalPartNumber } from '../quantity/part-number.ts';
import { TradeError } from '../solver/trade-function.ts';
import { source } from './source.ts';

/** Heads and their standards. */
export const headSource = source('general', 'ch. 7, pp. 7-52 to 7-56');
export const headNumbers = { universal: 470, countersunk: 426 } as const;

/** Alloy letters of solid rivets; the drop of 3003 under A is left out, it shares the letter. */
export const alloyLetterSource = source('airframe', 'ch. 4, p. 4-33, Fig. 4-77');
export const alloyLetters = { 1100: 'A', 2117: 'AD', 2017: 'D', 2024: 'DD', 5056: 'B' } as const;

function lookUp<T>(table: Readonly<Record<string, T>>, name: string, what: string): T {
	const found = Object.hasOwn(table, name) ? table[name] : undefined;
	if (found !== undefined) return found;
	throw new TradeError(
		`No ${what} is called ${name.slice(0, 20)}; choose ${Object.keys(table).join(', ')}.`
	);
}

/** Number of the head standard: 470 for `universal`, 426 for `countersunk`. */
export function headNumber(head: string): number {
	return lookUp<number>(headNumbers, head, 'head');
}

/** Letters of a rivet alloy, `AD` for 2117. */
export function lettersOf(alloy: string): string {
	return lookUp<string>(alloyLetters, alloy.split('-')[0] ?? '', 'rivet alloy');
}

/** `MS20470AD4-5` from its parts; the two dashes count 32nds and 16ths of an inch. */
export function rivetNumber(
	head: number,
	letters: string,
	diameterDash: number,
	lengthDash: number
): string {
	return `MS20${head}${letters}${tidy(diameterDash)}-${tidy(lengthDash)}`;
}

/** The designation before the MS standard: `AN470AD4-5` (AC 43.13-1B, par. 4-57a(4), p. 4-16). */
export function olderRivetNumber(
	head: number,
	letters: string,
	diameterDash: number,
	lengthDash: number
): string {
	return rivetNumber(head, letters, diameterDash, lengthDash).replace('MS20', 'AN');
}

function tidy(value: number): string {
	return String(Math.round(value * 1000) / 1000);
}

interface RivetNumberParts {
	readonly head: string;
	readonly alloy: string;
	readonly diameterDash: number;
	readonly lengthDash: number;
}

/** The number taken apart last: the steps of one task ask for its parts one by one. */
let latest: { readonly number: string; readonly parts: RivetNumberParts } | undefined;

/** Head, alloy and dash numbers of a rivet number such as `MS20426AD5-8`. */
export function rivetNumberParts(number: string): RivetNumberParts {
	if (latest?.number !== number) latest = { number, parts: takenApart(number) };
	return latest.parts;
}

function takenApart(number: string): RivetNumberParts {
	const [, head = '', letters = '', diameter = '', length = ''] =
		/^MS20(\d{3})([A-Z]+)(\d+)-([\d.]+)$/.exec(normalPartNumber(number) ?? '') ?? [];
	if (!length) {
		throw new TradeError('That is not a rivet number; write it like MS20470AD4-5.');
	}
	return {
		head: nameOf(headNumbers, Number(head), 'head'),
		alloy: nameOf(alloyLetters, letters, 'rivet alloy'),
		diameterDash: Number(diameter),
		lengthDash: Number(length)
	};
}

function nameOf<T>(table: Readonly<Record<string, T>>, code: T, what: string): string {
	const found = Object.entries(table).find(([, value]) => value === code);
	if (found) return found[0];
	throw new TradeError(
		`No ${what} here goes by ${code}; choose ${Object.values(table).join(', ')}.`
	);
}
