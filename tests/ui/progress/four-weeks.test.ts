import { expect, test } from 'vitest';
import { fourWeeks } from '../../../src/lib/ui/progress/four-weeks.ts';

const today = 20_532;
const done = { tasks: 3, seconds: 300 };

test('the last four weeks end today, with a place for every day', () => {
	const days = fourWeeks(new Map([[today - 27, done]]), today);
	expect(days.map(({ day }) => day)).toEqual(Array.from({ length: 28 }, (_, i) => today - 27 + i));
	expect(days[0]).toEqual({ day: today - 27, tasks: 3, minutes: 5 });
	expect(days[27]).toEqual({ day: today, tasks: 0, minutes: 0 });
});

test('after a longer pause they end with the last practice', () => {
	const days = fourWeeks(
		new Map([
			[today - 28, done],
			[today - 90, done]
		]),
		today
	);
	expect(days.at(-1)).toEqual({ day: today - 28, tasks: 3, minutes: 5 });
});

test('days that a wrong clock put ahead are not waited for', () => {
	expect(fourWeeks(new Map([[today + 400, done]]), today).at(-1)?.day).toBe(today);
	const both = new Map([
		[today + 400, done],
		[today - 40, done]
	]);
	expect(fourWeeks(both, today).at(-1)?.day).toBe(today - 40);
});
