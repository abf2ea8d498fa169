import { expect, test } from 'vitest';
import { shuffled } from '../../../src/lib/engine/sets/shuffled.ts';
import { belowFrom } from '../../app/seeded-chance.ts';

test('every order comes up, about as often as any other, and the list stays as it was', () => {
	const below = belowFrom(7);
	const list = ['a', 'b', 'c', 'd'] as const;
	const times = new Map<string, number>();
	for (let n = 0; n < 4800; n++) {
		const order = shuffled(list, below).join('');
		times.set(order, (times.get(order) ?? 0) + 1);
	}
	expect(times.size).toBe(24);
	// Due 200 each, with a standard deviation of 14.
	for (const [order, n] of times) expect(Math.abs(n - 200), order).toBeLessThan(70);
	expect(list.join('')).toBe('abcd');
});

test('none and one stay as they are', () => {
	expect(shuffled([], () => 0)).toEqual([]);
	expect(shuffled([3], () => 0)).toEqual([3]);
});
