import { expect, test } from 'vitest';
import { percent } from '../../../src/lib/ui/percent.ts';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import {
	briefDate,
	dateWords,
	minutesOf,
	timeWords,
	topicWords
} from '../../../src/lib/ui/progress/words.ts';

const today = dayOf('2026-03-12');

test('a share is told in whole percent', () => {
	expect([0, 0.716, 1].map(percent)).toEqual(['0\u00a0%', '72\u00a0%', '100\u00a0%']);
});

test.each([
	[0, 0, '0 min'],
	[4, 1, '1 min'],
	[89, 1, '1 min'],
	[91, 2, '2 min'],
	[3600, 60, '1 h'],
	[5430, 91, '1 h 31 min']
])('%i seconds are %i minutes: %s', (seconds, minutes, words) => {
	expect(minutesOf(seconds)).toBe(minutes);
	expect(timeWords(seconds)).toBe(words);
});

test('a day is told with its year only when that is another one', () => {
	expect(dateWords(today - 3, today)).toBe('Mon 9 Mar');
	expect(dateWords(dayOf('2025-12-31'), today)).toBe('Wed 31 Dec 2025');
	expect(briefDate(today - 3, today)).toBe('9 Mar');
	expect(briefDate(dayOf('2025-12-31'), today)).toBe('31 Dec 25');
	expect(briefDate(today, today)).toBe('today');
});

test('a topic has its name', () => {
	expect(topicWords('holes')).toBe('Holes and drills');
});
