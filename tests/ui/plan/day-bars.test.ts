import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../src/lib/engine/schedule/day.ts';
import type { ForecastDay } from '../../../src/lib/engine/schedule/forecast.ts';
import {
	barsOf,
	fitting,
	inTwoRows,
	rehearsalDay,
	usualMinutes
} from '../../../src/lib/ui/plan/day-bars.ts';

// a Wednesday
const today = dayOf('2026-11-25');
const exam = dayOf('2026-12-11');
const on = (day: number, tasks = 8, phase: ForecastDay['phase'] = 'build'): ForecastDay => {
	return { day, phase, tasks, minutes: tasks * 2.5 };
};

describe('bars', () => {
	test('a day each, days off among them, up to the day before the exam', () => {
		const { each, bars } = barsOf([on(today), on(exam - 1, 20, 'sweep')], today, exam);
		expect(each).toBe('day');
		expect(bars).toHaveLength(16);
		expect(bars[0]).toEqual({
			from: today,
			to: today,
			tasks: 8,
			minutes: 20,
			days: 1,
			sweep: false
		});
		expect(bars[1]).toMatchObject({ tasks: 0, days: 0 });
		expect(bars.at(-1)).toMatchObject({ from: exam - 1, tasks: 20, sweep: true });
	});

	test('a week each when the exam is far: Monday to Sunday, the first and last cut short', () => {
		const { each, bars } = barsOf([on(today), on(today + 1), on(today + 5)], today, today + 100);
		expect(each).toBe('week');
		expect(bars[0]).toMatchObject({ from: today, to: dayOf('2026-11-29'), tasks: 16, days: 2 });
		expect(bars[1]).toMatchObject({ from: dayOf('2026-11-30'), to: dayOf('2026-12-06'), tasks: 8 });
		expect(bars.at(-1)?.to).toBe(today + 99);
	});

	test('hold every day and every task once', () => {
		const days = fc.uniqueArray(fc.nat(200), { maxLength: 60 });
		fc.assert(
			fc.property(days, fc.integer({ min: 201, max: 400 }), (offsets, length) => {
				const planned = offsets.map((offset) => on(today + offset, offset % 9));
				const { bars } = barsOf(planned, today, today + length);
				const sum = bars.reduce((all, { tasks }) => all + tasks, 0);
				expect(sum).toBe(planned.reduce((all, { tasks }) => all + tasks, 0));
				bars.forEach(({ from }, i) => {
					expect(from).toBe(i === 0 ? today : (bars[i - 1]?.to ?? NaN) + 1);
				});
			})
		);
	});

	test('there are none on the day of the exam', () => {
		expect(barsOf([], today, today).bars).toEqual([]);
	});
});

test('the usual minutes leave out the last look and days without a task', () => {
	const days = [on(1, 4), on(2, 8), on(3, 0), on(4, 16, 'sweep')];
	expect(usualMinutes(days)).toEqual({ sweep: 40, other: 15 });
	expect(usualMinutes([])).toEqual({ sweep: 0, other: 0 });
});

describe('the rehearsal', () => {
	test.each([
		{ days: [0, 5, 14, 15], is: 14, why: 'two days before the exam' },
		{ days: [0, 5, 13, 15], is: 13, why: 'the last study day before that' },
		{ days: [0, 15], is: null, why: 'none when only today is left' }
	])('$why', ({ days, is }) => {
		const planned = days.map((offset) => on(today + offset));
		expect(rehearsalDay(planned, today, exam)).toBe(is === null ? null : today + is);
	});

	test('without an exam', () => expect(rehearsalDay([on(today + 3)], today, null)).toBeNull());
});

describe('labels', () => {
	test('the first ones win, and what would touch them is left out', () => {
		const labels = ['exam', 'rehearsal', 'today'].map((text, i) => ({
			x: [290, 270, 10][i] ?? 0,
			text
		}));
		expect(fitting(labels, 300).map(({ text }) => text)).toEqual(['exam', 'today']);
	});

	test('stay inside and apart', () => {
		const some = fc.array(
			fc.record({ x: fc.integer({ min: 0, max: 600 }), text: fc.constantFrom('exam', '30 Nov') })
		);
		fc.assert(
			fc.property(some, (labels) => {
				const placed = fitting(labels, 600).sort((a, b) => a.x - b.x);
				for (const { x, text } of placed) {
					expect(x - text.length * 3).toBeGreaterThanOrEqual(0);
					expect(x + text.length * 3).toBeLessThanOrEqual(600);
				}
				placed.slice(1).forEach(({ x, text }, i) => {
					const before = placed[i] ?? { x: 0, text: '' };
					expect(x - before.x).toBeGreaterThan((text.length + before.text.length) * 3);
				});
			})
		);
	});
});

test('on a narrow rule the nearest days are lettered in a second row', () => {
	const labels = [
		{ x: 18, text: '14 tasks' },
		{ x: 250, text: 'rehearsal' },
		{ x: 110, text: 'two return' },
		{ x: 48, text: 'three return' },
		{ x: 78, text: 'five return' }
	];
	const { first, second } = inTwoRows(labels, 336);
	expect(first.map(({ text }) => text)).toEqual(['14 tasks', 'rehearsal', 'two return']);
	expect(second.map(({ text }) => text)).toEqual(['three return']);
});
