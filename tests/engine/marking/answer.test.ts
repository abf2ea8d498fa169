import { describe, expect, test } from 'vitest';
import { entryText, isSameEntry, readWorked } from '../../../src/lib/engine/marking/entries.ts';
import { entryOf, readAnswer } from '../../../src/lib/engine/marking/answer.ts';
import { order } from '../../../src/lib/engine/quantity/kinds/order.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { shelfTask } from './shelf.ts';

const { method } = shelfTask;

function entry(key: string, text: string) {
	const read = entryOf(readAnswer(method, key, text, 'in'));
	if (!read) throw new Error(`not read: ${text}`);
	return read;
}

describe('an answer as it is read', () => {
	test('is worked out where it is arithmetic', async () => {
		const worked = entryOf(await readWorked(method, 'least', '1/8 + 1/4', 'in'));
		expect(Number(worked?.value)).toBe(0.375);
		expect(readAnswer(method, 'least', '1/8 + 1/4', 'in').state).toBe('arithmetic');
		expect(Number(entryOf(await readWorked(method, 'least', '.375', 'in'))?.value)).toBe(0.375);
	});

	test('is none until it can be read', () => {
		expect(entryOf(readAnswer(method, 'least', 'abc', 'in'))).toBe(null);
		expect(entryOf(readAnswer(method, 'least', '1/8 + 1/4', 'in'))).toBe(null);
	});

	test('keeps a factor and its letter, and has none otherwise', () => {
		expect(entry('least', '2D')).toMatchObject({ times: 'D' });
		expect(entry('least', '.375')).not.toHaveProperty('times');
	});
});

describe('an answer as it was understood', () => {
	test.each([
		['least', '3/8', 'in', '0.375 in'],
		['least', '3/8', 'mm', '9.525 mm'],
		['least', '2D', 'in', '2 D'],
		['least', '1.5 d', 'in', '1.5 D'],
		['positions', '.4, 2.3', 'in', '0.400, 2.300 in'],
		['name', 'ms20470ad4-5', 'in', 'MS20470AD4-5']
	] as const)('%s %s in %s: %s', (key, text, units, written) => {
		expect(entryText(method, key, entry(key, text), units)).toBe(written);
	});
});

describe('two readings of a step', () => {
	test.each([
		['least', '3/8', '6/16', true],
		['least', '.375', '0.375 in', true],
		['least', '.375', '.376', false],
		// The places typed tell what was rounded.
		['least', '.375', '.3750', false],
		['least', '.375', '3/8', false],
		['least', '2D', '2', false],
		['least', '2D', '2 D', true],
		['positions', '.4, 2.3', '.4; 2.3', true],
		['positions', '.4, 2.3', '.4', false]
	])('%s: %s and %s come to the same: %s', (key, one, other, same) => {
		expect(isSameEntry(method, key, entry(key, one), entry(key, other))).toBe(same);
		expect(isSameEntry(method, key, entry(key, other), entry(key, one))).toBe(same);
	});

	test('of what has no value to work on with, are the same, and unlike any other', () => {
		const plain = order({ id: 'x', noun: 'x', things: ['drill', 'rivet'] });
		// The drill alone is none.
		const kind = {
			...plain,
			toValue: ({ value }: { value: readonly string[] }) => (value.length === 1 ? null : value)
		};
		const odd = {
			...method,
			steps: { ...method.steps, least: { ...method.steps.least, kind } }
		} as unknown as Method;
		const one = { value: ['drill'], grain: 0 };
		expect(isSameEntry(odd, 'least', one, one)).toBe(true);
		expect(entryText(odd, 'least', one, 'in')).toBe('');
		const both = { value: ['drill', 'rivet'], grain: 0 };
		expect(isSameEntry(odd, 'least', one, both)).toBe(false);
		expect(isSameEntry(odd, 'least', both, one)).toBe(false);
		expect(isSameEntry(odd, 'least', both, both)).toBe(true);
	});
});
