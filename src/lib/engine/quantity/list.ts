import type { Exact } from './exact.ts';
import { unitPattern } from './measure.ts';
import { oneReading } from './read-one.ts';
import type { Field, OneReading, Reading } from './reading.ts';
import { unread } from './wanted.ts';

const semicolons = 'Separate the values with semicolons.';

/** Nobody writes more equal values in one field. */
const mostTimes = 99;

/**
 * Several values, from plain text: separated by semicolons, lines, commas or `and`. Equal values
 * may be given once: `3 x 0.119` is three of them, `0.119 at each` a list of one that stands for
 * as many as are wanted.
 */
export function listReading(entry: string, field: Field): Reading<readonly Exact[]> {
	const { one, each } = atEach(entry);
	const texts = separated(one);
	if (!texts) return unread(semicolons);
	const items = sharedUnit(texts);
	if (!items) return unread('Give every value its unit, or only the last one for all.');
	if (each && items.length > 1) return unread('Write one value that is the same at each.');
	const values: Exact[] = [];
	const said: string[] = [];
	const notes = new Set<string>();
	let grain = 0;
	for (const [i, item] of items.entries()) {
		const { times, text } = repeated(item);
		const reading = text && oneReading(text, field);
		if (reading && reading.state === 'read' && reading.times) {
			return unread(`Value ${i + 1}: write the size itself, worked out.`);
		}
		if (reading === '' || reading.state !== 'read') {
			const fault = faultOf(reading);
			return unread(items.length > 1 ? `Value ${i + 1}: ${fault}` : fault);
		}
		values.push(...Array<Exact>(times).fill(reading.value));
		said.push((times > 1 ? `${times} × ` : '') + reading.said + (each ? ' at each' : ''));
		if (reading.note) notes.add(reading.note);
		grain = Math.max(grain, reading.grain);
	}
	const note = [...notes].join('; ');
	return { state: 'read', value: values, said: said.join('; '), grain, ...(note && { note }) };
}

/** An entry without the words that give one value for all: `0.119 at each`, `all 0.119`. */
function atEach(entry: string): { one: string; each: boolean } {
	const one = entry.replace(/^(?:at )?(?:each|all):? | (?:at |for )?(?:each|all)$/g, '');
	return { one, each: one !== entry };
}

/** `3*0.119`, which was typed as 3 x 0.119: how many times, and the value. */
function repeated(item: string): { times: number; text: string } {
	const [, times, text = item] = /^(\d\d?) ?[*x] ?(?=[^\d]*\d)(.+)$/.exec(item) ?? [];
	const count = Number(times ?? 1);
	return count > 0 && count <= mostTimes ? { times: count, text } : { times: 1, text: item };
}

function faultOf(reading: Exclude<OneReading, { state: 'read' }> | ''): string {
	if (reading === '') return 'Write a value between every two semicolons.';
	switch (reading.state) {
		case 'which':
			return reading.question.replace(/^Do you mean (.*)\?$/, 'Write which you mean, $1.');
		case 'arithmetic':
			return 'Write the result of the sum.';
		case 'unread':
			return reading.why;
	}
}

/** Decimals, or fractions with or without a whole number, parted by nothing but spaces. */
const value = String.raw`(?:(?:\d+[ -])?\d+\/\d+|\d*\.\d+)`;
const spaced = new RegExp(String.raw`^(?:${value} )+${value}(?! ?[\d/])`);
const values = new RegExp(value, 'g');

/** The texts of the values; null when a comma may also be a decimal point or a thousands mark. */
function separated(entry: string): string[] | null {
	if (/[;\n]/.test(entry)) return split(entry, /[;\n]/);
	const [row] = spaced.exec(entry) ?? [];
	if (row) {
		const unit = entry.slice(row.length);
		const all = row.match(values) ?? [];
		return all.map((one, i) => (i === all.length - 1 ? one + unit : one));
	}
	// `1 and 1/2` may be one mixed number or two values.
	if (/\d and \d+\/\d/.test(entry) && !/\/\d+,? and/.test(entry)) return null;
	const commas = entry.replace(/,? (?:and|&) /g, ', ');
	if (/(?:^|[^\d./])\d+,\d+(?![\d./])/.test(commas)) return null;
	return split(commas, /,/);
}

function split(text: string, mark: RegExp): string[] {
	const texts = text.split(mark).map((part) => part.trim());
	return texts.at(-1) === '' ? texts.slice(0, -1) : texts;
}

const lastUnit = new RegExp(String.raw`^[\d.,/ _e+*-]*\d\.? ?((?:${unitPattern})\.?(?: [a-z]+)*)$`);

/** A unit behind the last value alone is everyone's; null when only some others have one. */
function sharedUnit(items: readonly string[]): readonly string[] | null {
	const hasUnit = (item: string) => /\d\.?[ -]?[a-z"'°]/.test(item.replace(/\de[-+]?\d/g, ''));
	const without = items.filter((item) => !hasUnit(item));
	if (without.length === 0 || without.length === items.length) return items;
	const unit = lastUnit.exec(items.at(-1) ?? '')?.[1];
	const onlyLast = without.length === items.length - 1 && unit;
	return onlyLast ? items.map((item) => (hasUnit(item) ? item : `${item} ${unit}`)) : null;
}
