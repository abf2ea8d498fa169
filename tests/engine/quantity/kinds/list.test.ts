import { describe, expect, test } from 'vitest';
import { ratio } from '../../../../src/lib/engine/quantity/exact.ts';
import { length } from '../../../../src/lib/engine/quantity/kinds/length.ts';
import { listOf } from '../../../../src/lib/engine/quantity/kinds/list.ts';
import { rivetLength } from '../../../../src/lib/engine/quantity/kinds/rivet-length.ts';
import { loadReader } from '../../../../src/lib/engine/quantity/reader.ts';

await loadReader();

const lengths = listOf(length);
const thousandth = ratio(1n, 1000n);

function entryOf(text: string) {
	const reading = lengths.read(text);
	if (reading.state !== 'read') throw new Error(`${text}: ${JSON.stringify(reading)}`);
	return reading;
}

const once = [
	'0.119',
	'0.119 at each',
	'0.119 each',
	'each 0.119',
	'at each: 0.119',
	'all 0.119',
	'0.119 in at each',
	'0.119 all'
];
const threeTimes = ['3 x 0.119', '3 × 0.119', '3x.119', '3 × 0.119 in'];

describe('equal values given once', () => {
	test.each([...once, ...threeTimes, '0.119; 0.119; 0.119', '2 x 0.119; 0.119'])(
		'%s counts as three of them',
		(text) => {
			expect(lengths.judge(entryOf(text), [0.119, 0.119, 0.1194], thousandth)).toEqual({
				is: 'right'
			});
			expect(lengths.toValue(entryOf(text), [0, 0, 0])).toEqual([0.119, 0.119, 0.119]);
		}
	);

	test.each(once)('%s is one value where unlike ones are wanted', (text) => {
		expect(lengths.judge(entryOf(text), [0.119, 0.238, 0.119], thousandth)).toEqual({
			is: 'miscounted',
			wanted: 3,
			got: 1,
			part: true
		});
		expect(lengths.judge(entryOf(text), [0.238, 0.119, 0.238], thousandth)).toEqual({
			is: 'miscounted',
			wanted: 3,
			got: 1
		});
	});

	test.each(once)('%s is just off where all wanted are another value', (text) => {
		expect(lengths.judge(entryOf(text), [0.2, 0.2], thousandth)).toEqual({ is: 'off' });
	});

	test.each(threeTimes)('%s is three values, not two', (text) => {
		const entry = entryOf(text);
		expect(lengths.judge(entry, [0.119, 0.119], thousandth)).toEqual({
			is: 'miscounted',
			wanted: 2,
			got: 3
		});
		expect(lengths.toValue(entry, [0, 0])).toBeNull();
	});

	test('what was taken is said', () => {
		expect(entryOf('0.119 each').said).toBe('0.119 in at each');
		expect(entryOf('3 x 0.119; 0.2').said).toBe('3 × 0.119 in; 0.2 in');
		expect(entryOf('2 x 1/2, 3/4 in').value.map(Number)).toEqual([0.5, 0.5, 0.75]);
		expect(listOf(rivetLength).read('2 x -5')).toMatchObject({
			said: '2 × 5/16 in, a −5 length'
		});
	});

	test.each([
		['0.1; 0.2 each', 'Write one value that is the same at each.'],
		['0 x 0.119', 'Write the result of the sum.'],
		['1.5 x 0.119', 'Write the result of the sum.']
	])('%s: %s', (text, why) => {
		expect(lengths.read(text)).toEqual({ state: 'unread', why });
	});
});

describe('values in order', () => {
	test('the same values in another order are off, fewer or more are miscounted', () => {
		const judged = (text: string) => lengths.judge(entryOf(text), [0.1, 0.2], thousandth).is;
		expect(judged('0.1; 0.2')).toBe('right');
		expect(judged('0.101; 0.199')).toBe('right');
		expect(judged('0.2; 0.1')).toBe('off');
		expect(judged('0.1; 0.2; 0.3')).toBe('miscounted');
	});

	test('the first of them or the last, each right, are a part', () => {
		const isPart = (text: string) => {
			const judgement = lengths.judge(entryOf(text), [0.1, 0.2, 0.3, 0.4], thousandth);
			return judgement.is === 'miscounted' && judgement.part === true;
		};
		expect(isPart('0.1; 0.2; 0.3')).toBe(true);
		expect(isPart('0.101; 0.2')).toBe(true);
		expect(isPart('0.1; 0.3')).toBe(false);
		expect(isPart('0.2; 0.3; 0.4')).toBe(true);
		expect(isPart('0.4')).toBe(false);
		expect(isPart('0.1; 0.2; 0.3; 0.4; 0.5')).toBe(false);
	});

	test('differ when one member does, or their number', () => {
		expect(lengths.differs([0.1, 0.2], [0.1, 0.2005], 0.001)).toBe(false);
		expect(lengths.differs([0.1, 0.2], [0.1, 0.202], 0.001)).toBe(true);
		expect(lengths.differs([0.1, 0.2], [0.1], 0.001)).toBe(true);
	});

	test('are told to scripts one by one', () => {
		expect(lengths.plain([0.5, 0.75])).toEqual([
			{ number: 0.5, unit: 'in' },
			{ number: 0.75, unit: 'in' }
		]);
	});
});
