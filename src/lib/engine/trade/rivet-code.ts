import { TradeError } from '../solver/trade-function.ts';
import { keyWith } from './table/key-with.ts';
import { cellAt } from './table/reading.ts';
import type { Cell, Table } from './table/table.ts';
import { letters, rivetAlloys } from './tables/rivet-alloys.ts';
import { headNumber as numberOfHead, rivetHeads } from './tables/rivet-heads.ts';

/** Number of the head standard: 470 for `universal`, 426 for `countersunk`. */
export const headNumber = numberOfHead.run;

/** Letters of a rivet alloy, `AD` for 2117. */
export const lettersOf = letters.run;

/** Both tables as the choices of a question: row → cell. */
export const headNumbers = choices(rivetHeads);
export const alloyLetters = choices(rivetAlloys);

/** What the shop says for a head (common practice). */
export const headsSaid = {
	universal: ['protruding', 'protruding head', 'uni head'],
	countersunk: ['csk', "c'sunk", 'flush', 'flush head', 'counter sunk']
} as const;

function choices<V extends Cell>(table: Table<string, string, V>): Readonly<Record<string, V>> {
	return Object.fromEntries(
		table.rows.keys.map(([name = ''], row) => [name, cellAt(table, row, 0)])
	);
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

/**
 * Head, alloy and dash numbers of a rivet number such as `MS20426AD5-8`, or the older `AN426AD5-8`, as
 * `quantity/part-number.ts` writes them.
 */
export function rivetNumberParts(number: string): RivetNumberParts {
	if (latest?.number !== number) latest = { number, parts: takenApart(number) };
	return latest.parts;
}

function takenApart(number: string): RivetNumberParts {
	const [, head = '', code = '', diameter = '', length = ''] =
		/^(?:MS20|AN)(\d{3})([A-Z]+)(\d+)-([\d.]+)$/.exec(number) ?? [];
	if (!length) {
		throw new TradeError('That is not a rivet number; write it like MS20470AD4-5.');
	}
	return {
		head: keyWith(rivetHeads, 'number', Number(head)),
		alloy: keyWith(rivetAlloys, 'letters', code),
		diameterDash: Number(diameter),
		lengthDash: Number(length)
	};
}
