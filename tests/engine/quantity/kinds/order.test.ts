import { describe, expect, test } from 'vitest';
import { ratio } from '../../../../src/lib/engine/quantity/exact.ts';
import { order } from '../../../../src/lib/engine/quantity/kinds/order.ts';
import { loadReader } from '../../../../src/lib/engine/quantity/reader.ts';

await loadReader();

const things = ['drill the pilot', 'drill the final size', 'deburr', 'rivet'];
const work = order({ id: 'work', noun: 'the order of the work', things });
/** The edges may be broken before the holes are drilled or after. */
const loose = order({
	id: 'loose-work',
	noun: 'the order of the work',
	things: ['drill', 'break the edges', 'rivet'],
	before: [
		['drill', 'rivet'],
		['break the edges', 'rivet']
	]
});

function judged(kind: typeof work, text: string, right: readonly string[]) {
	const reading = kind.read(text);
	if (reading.state !== 'read') throw new Error(`not read: ${text}`);
	return kind.judge(reading, right, ratio(0n));
}

test.each([
	'ABCD',
	'a b c d',
	'A, B, C, D',
	'a-b-c-d',
	'1234',
	'1 2 3 4',
	'1; 2; 3; 4',
	'A > B > C > D',
	'drill the pilot, drill the final size, deburr, rivet',
	'Drill the P; drill the f; deb; r',
	'drill the pilot then drill the final size then deburr then rivet'
])('%s is read and right', (text) => {
	expect(work.read(text)).toMatchObject({ state: 'read', said: things.join(', ') });
	expect(judged(work, text, things)).toEqual({ is: 'right' });
});

test('only the very order is right', () => {
	expect(judged(work, 'ACBD', things)).toEqual({ is: 'off' });
	expect(work.differs(things, ['drill the pilot', 'deburr'], 0)).toBe(true);
	expect(work.differs(things, [...things], 0)).toBe(false);
});

test('some left out are miscounted', () => {
	expect(judged(work, 'AB', things)).toEqual({ is: 'miscounted', wanted: 4, got: 2 });
});

describe('with pairs that must keep their order', () => {
	const right = ['drill', 'break the edges', 'rivet'];

	test.each(['ABC', 'BAC'])('%s is right', (text) => {
		expect(judged(loose, text, right)).toEqual({ is: 'right' });
	});

	test.each(['ACB', 'CAB', 'BCA'])('%s is off', (text) => {
		expect(judged(loose, text, right)).toEqual({ is: 'off' });
	});

	test('orders that are as right as one another do not differ', () => {
		expect(loose.differs(right, ['break the edges', 'drill', 'rivet'], 0)).toBe(false);
		expect(loose.differs(right, ['rivet', 'drill', 'break the edges'], 0)).toBe(true);
	});
});

test.each([
	['AABD', 'Write each once; drill the pilot is twice.'],
	['drill', 'Write the order like ABCD or drill the pilot, drill the final size, …'],
	['ABCE', 'Write the order like ABCD or drill the pilot, drill the final size, …'],
	['hammer, rivet', 'Write the order like ABCD or drill the pilot, drill the final size, …']
])('%s: %s', (text, why) => {
	expect(work.read(text)).toEqual({ state: 'unread', why });
});

test('it is empty, hinted, written and exported', () => {
	expect(work.read(' ')).toEqual({ state: 'empty' });
	expect(work.hint).toBe('Names, letters or numbers in a row, like ABCD.');
	expect(work.write(['deburr', 'rivet'])).toBe('deburr, rivet');
	expect(work.plain(['deburr', 'rivet'])).toEqual(['deburr', 'rivet']);
});

test('only whole orders stand beside the right one', () => {
	expect(work.options.fits(['rivet', 'deburr', ...things.slice(0, 2)])).toBe(true);
	expect(work.options.fits(['rivet'])).toBe(false);
});
