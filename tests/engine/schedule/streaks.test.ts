import { expect, test } from 'vitest';
import type { Attempt } from '../../../src/lib/engine/schedule/event.ts';
import { streaksIn } from '../../../src/lib/engine/schedule/streaks.ts';
import { dayOf, isoOf } from '../../../src/lib/engine/schedule/day.ts';
import { streakWords } from '../../../src/lib/ui/home/streak-words.ts';

const monday = dayOf('2026-11-23');

/** Attempts on one skill, one a day: `r` right, `h` with help, `w` wrong. */
function attempts(results: string, skill = 'piece/setback'): Attempt[] {
	const words = { r: 'right', h: 'helped', w: 'wrong' } as const;
	return [...results].map((letter, i) => {
		const result = words[letter as keyof typeof words];
		const skills = [{ skill, result }];
		return { day: isoOf(monday + i), skills } as unknown as Attempt;
	});
}

test.each([
	{ results: 'wwwrrrr', right: 4, misses: 3 },
	{ results: 'wwrhrr', right: 3, misses: 2 },
	{ results: 'rrwwrrr', right: 3, misses: 2 },
	{ results: 'wrwrrr', right: 3, misses: 2 }
])('$results: right $right times running after $misses misses', ({ results, right, misses }) => {
	expect(streaksIn(attempts(results))).toMatchObject([{ right, misses }]);
});

test.each(['wwrr', 'wrrr', 'rrrr', 'wwwrrw'])('%s is nothing to tell', (results) => {
	expect(streaksIn(attempts(results))).toEqual([]);
});

test('it is told with the day of the last miss', () => {
	const [streak] = streaksIn(attempts('wwwrrrr'));
	expect(streak && streakWords(streak, 'Setback', monday + 7)).toBe(
		'Setback: right four times running, after three misses, the last on Wednesday.'
	);
});
