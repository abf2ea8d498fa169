import { expect, test } from 'vitest';
import { listed } from '../../src/lib/ui/listed.ts';

test.each([
	[[], ''],
	[[4], '4'],
	[[4, 10], '4 and 10'],
	[['a', 'b', 'c'], 'a, b and c']
])('%j stand in a sentence as “%s”', (things, words) => {
	expect(listed(things)).toBe(words);
});
