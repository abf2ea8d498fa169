import { expect, test } from 'vitest';
import { lastMade, type SlipLine, timesWords } from '../../../src/lib/ui/progress/slip-line.ts';

const line: SlipLine = {
	skill: 'rivet-length/shank',
	slip: 'noShank',
	says: 'The stack alone.',
	label: 'Shank for the shop head',
	topic: 'rivets',
	times: 3,
	lastDay: 20_521,
	rightSince: 0
};

test('how often, in words', () => {
	expect([1, 2, 3, 12].map(timesWords)).toEqual(['once', 'twice', '3 times', '12 times']);
});

test('the last time, and what went right since', () => {
	expect(lastMade(line, 20_522)).toBe('Last made yesterday.');
	expect(lastMade({ ...line, rightSince: 1 }, 20_524)).toBe(
		'Last made on Monday, right once since.'
	);
	expect(lastMade({ ...line, rightSince: 4 }, 20_621)).toBe(
		'Last made on 9 Mar, right 4 times since.'
	);
});
