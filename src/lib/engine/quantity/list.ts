import { oneReading } from './read-one.ts';
import type { Exact } from './exact.ts';
import type { Expected, OneReading, Reading } from './reading.ts';
import { unread } from './wanted.ts';

const semicolons = 'Separate the values with semicolons.';

/** Several values, from plain text: separated by semicolons, lines, commas or `and`. */
export function listReading(entry: string, expected: Expected): Reading {
	const texts = separated(entry);
	if (!texts) return unread(semicolons);
	const items = sharedUnit(texts);
	if (!items) return unread('Give every value its unit, or only the last one for all.');
	const one = { ...expected, list: false };
	const values: Exact[] = [];
	const said: string[] = [];
	const notes = new Set<string>();
	let grain = 0;
	for (const [i, item] of items.entries()) {
		const reading = item && oneReading(item, one);
		if (reading === '' || reading.state !== 'read') {
			const fault = faultOf(reading);
			return unread(items.length > 1 ? `Value ${i + 1}: ${fault}` : fault);
		}
		values.push(reading.value);
		said.push(reading.said);
		if (reading.note) notes.add(reading.note);
		grain = Math.max(grain, reading.grain);
	}
	const note = [...notes].join('; ');
	return { state: 'read', value: values, said: said.join('; '), grain, ...(note && { note }) };
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

/** The texts of the values; null when a comma may also be a decimal point or a thousands mark. */
function separated(entry: string): string[] | null {
	if (/[;\n]/.test(entry)) return split(entry, /[;\n]/);
	// `1 and 1/2` may be one mixed number or two values.
	if (/\d and \d+\/\d/.test(entry) && !/\/\d+,? and/.test(entry)) return null;
	const commas = entry.replace(/,? and /g, ', ');
	if (/(?:^|[^\d./])\d+,\d+(?![\d./])/.test(commas)) return null;
	return split(commas, /,/);
}

function split(text: string, mark: RegExp): string[] {
	const texts = text.split(mark).map((part) => part.trim());
	return texts.at(-1) === '' ? texts.slice(0, -1) : texts;
}

/** A unit behind the last value alone is everyone's; null when only some others have one. */
function sharedUnit(items: readonly string[]): readonly string[] | null {
	const hasUnit = (item: string) => /\d\.?[ -]?[a-z"'°]/.test(item.replace(/\de[-+]?\d/g, ''));
	const without = items.filter((item) => !hasUnit(item));
	if (without.length === 0 || without.length === items.length) return items;
	const unit = /^[\d.,/ _e+-]*\d\.? ?([a-z"'°³/^\d]+\.?)$/.exec(items.at(-1) ?? '')?.[1];
	const onlyLast = without.length === items.length - 1 && unit;
	return onlyLast ? items.map((item) => (hasUnit(item) ? item : `${item} ${unit}`)) : null;
}
