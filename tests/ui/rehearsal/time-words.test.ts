import { describe, expect, test } from 'vitest';
import {
	leftWords,
	minutesWords,
	toldWords,
	usedWords
} from '../../../src/lib/ui/rehearsal/time-words.ts';

test.each([
	[3600, '60 minutes left'],
	[2280, '38 minutes left'],
	[2279.2, '38 minutes left'],
	[2220, '37 minutes left'],
	[121, '3 minutes left'],
	[120, '120 seconds left'],
	[59.1, '60 seconds left'],
	[1, '1 second left'],
	[0, '0 seconds left']
])('%s s: %s', (seconds, words) => {
	expect(leftWords(seconds)).toBe(words);
});

test('one minute is one', () => {
	expect(minutesWords(12)).toBe('1 minute');
	expect(minutesWords(61)).toBe('2 minutes');
});

test.each([
	[4, '1 minute'],
	[89, '1 minute'],
	[91, '2 minutes'],
	[2465, '41 minutes']
])('%s s used are %s', (seconds, words) => {
	expect(usedWords(seconds)).toBe(words);
});

describe('what a screen reader is told', () => {
	test('changes a few times in an hour and not every second', () => {
		const told = Array.from({ length: 3601 }, (_, i) => toldWords(3600 - i, 3600));
		const changes = told.filter((words, i) => i > 0 && words !== told[i - 1]);
		expect(changes).toEqual([
			'30 minutes left.',
			'20 minutes left.',
			'10 minutes left.',
			'5 minutes left.',
			'1 minute left.',
			''
		]);
	});

	test('leaves out the times that are as long as the whole', () => {
		expect(toldWords(600, 600)).toBe('');
		expect(toldWords(300, 600)).toBe('5 minutes left.');
	});
});
