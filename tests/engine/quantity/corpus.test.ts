import { describe, expect, test } from 'vitest';
import { Exact, ratio } from '../../../src/lib/engine/quantity/exact.ts';
import type { Reading } from '../../../src/lib/engine/quantity/read.ts';
import { corpus, type Field, fields, read, readArithmetic } from './corpus.ts';

/** A label's number, taken apart without the code under test. */
function labelled(text: string): Exact {
	const [top = '', bottom = '1'] = text.split('/');
	const [whole = '', decimals = ''] = top.split('.');
	return ratio(BigInt(whole + decimals), BigInt(bottom) * 10n ** BigInt(decimals.length));
}

const fractionText = (value: Exact) => `${value.s * value.n}/${value.d}`;

function labelText(label: string): string {
	if (label === 'unread' || label === 'empty') return label;
	const mark = label.includes('|') ? ' | ' : '; ';
	return label
		.split(mark)
		.map((one) => fractionText(labelled(one)))
		.join(mark);
}

function readingText(reading: Reading): string {
	switch (reading.state) {
		case 'read':
			if (typeof reading.value === 'string') return reading.value;
			return [reading.value]
				.flat()
				.filter((one) => one instanceof Exact)
				.map(fractionText)
				.join('; ');
		case 'which':
			return reading.options.map(({ value }) => fractionText(value)).join(' | ');
		default:
			return reading.state;
	}
}

const rows = Object.entries(corpus).flatMap(([field, entries]) =>
	entries.map(([entry, label]) => ({ field: field as Field, entry, label }))
);

test('the corpus holds at least 400 entries, none twice', () => {
	expect(rows.length).toBeGreaterThanOrEqual(400);
	expect(new Set(rows.map(({ field, entry }) => `${field} ${entry}`)).size).toBe(rows.length);
});

describe.each(rows)('$field: $entry', ({ field, entry, label }) => {
	const expected = fields[field];
	const sum = label.startsWith('sum ');
	const meant = label.replace('sum ', '');

	test(`is ${label}`, async () => {
		expect(read(entry, expected).state === 'arithmetic').toBe(sum);
		const reading = await readArithmetic(entry, expected);
		expect(readingText(reading)).toBe(field === 'words' ? meant : labelText(meant));
	});
});
