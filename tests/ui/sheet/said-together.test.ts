import { expect, test } from 'vitest';
import { saidTogether } from '../../../src/lib/ui/sheet/said-together.ts';

const line = (key: string, says: string, choices: readonly unknown[] = []) => ({
	...{ key, label: key, entered: '1', says, saysOfAll: `Of all: ${says}`, choices }
});

test('entries of which the same is said are told together, in their order', () => {
	const [a, b, c] = [line('a', 'One less.'), line('b', 'Rounded.'), line('c', 'One less.')];
	expect(saidTogether([a, b, c])).toEqual([
		{ first: a, all: [a, c], says: 'Of all: One less.' },
		{ first: b, all: [b], says: 'Rounded.' }
	]);
});

test('where there is something to choose, each stands alone', () => {
	const [a, b] = [line('a', 'One of two.', [1, 2]), line('b', 'One of two.', [1, 2])];
	expect(saidTogether([a, b]).map(({ all, says }) => [all.length, says])).toEqual([
		[1, 'One of two.'],
		[1, 'One of two.']
	]);
});
