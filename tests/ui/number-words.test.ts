import { expect, test } from 'vitest';
import { rightAtFirst } from '../../src/lib/ui/number-words.ts';

test.each([
	[0, 'None right at first'],
	[1, 'One right at first'],
	[13, '13 right at first']
])('%i tasks: %s', (count, words) => {
	expect(rightAtFirst(count)).toBe(words);
});
