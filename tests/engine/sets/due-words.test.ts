import { expect, test } from 'vitest';
import { dueWords } from '../../../src/lib/engine/sets/due-words.ts';

test.each([
	['2026-12-04', 'Fri 4 Dec 2026'],
	['2026-12-04T16:00', 'Fri 4 Dec 2026, 16:00'],
	['2028-02-29', 'Tue 29 Feb 2028'],
	['1969-12-31', 'Wed 31 Dec 1969']
])('%s is %s', (due, words) => {
	expect(dueWords(due)).toBe(words);
});
