import { describe, expect, test } from 'vitest';
import { layOut, momentOf } from '../../../src/lib/engine/time-plan/lay-out.ts';
import type { TimeStep } from '../../../src/lib/engine/time-plan/steps.ts';
import { boundsOf } from '../../../src/lib/engine/figures/to-svg.ts';
import { timeFigure } from '../../../src/lib/ui/time-plan/time-figure.ts';
import { duration, paceWords, standing, whatIfLate } from '../../../src/lib/ui/time-plan/words.ts';

const day = '2026-11-26';
const due = { day, time: 1440 };
const step = (id: string, left: number, canWait = false): TimeStep => ({
	...{ id, name: `Step ${id}`, guess: left, minutes: left, left, state: 'open' },
	...{ isOwn: false, canWait, isOut: false }
});
const steps = [step('1', 60), step('2', 30), step('3', 10, true)];
const numberOf = Number;
const laid = (minutes: number, all = steps) =>
	layOut(all, { due, times: [{ day, from: 540, to: 540 + minutes }] }, momentOf(day, 0));
const stand = { isDue: true, hasTimes: true };

describe('how a time plan stands', () => {
	test.each([
		[135, '35 minutes to spare'],
		[100, 'just enough time'],
		[99, '1 minute short'],
		[10, '1\u00a0h\u00a030 short'],
		[300, '3\u00a0h\u00a020 to spare']
	])('%i minutes at the bench: %s', (minutes, words) => {
		expect(standing(laid(minutes), stand)).toBe(words);
	});

	test('without times, and with nothing left', () => {
		expect(standing(laid(0), { isDue: false, hasTimes: false })).toBe('1\u00a0h\u00a040 of work');
		expect(standing(laid(60, []), stand)).toBe('every step is done');
	});

	test.each([
		[135, 'If it gets late, step 3 can wait.'],
		[92, '8 minutes are missing: leave step 3 until after the hand-in.'],
		[80, 'leave step 3 until after the hand-in, and find 10 min more at the bench or ask'],
		[80, 'Never drop the coupon, deburring or the inspection.']
	])('%i minutes: %s', (minutes, words) => {
		expect(whatIfLate(laid(minutes), numberOf)).toContain(words);
	});

	test('minutes and pace', () => {
		expect([35, 60, 345].map(duration)).toEqual(['35 min', '1 h', '5\u00a0h\u00a045']);
		expect(paceWords({ factor: 1.171, steps: 2 })).toBe(
			'Your steps took 1.17 times the first guess; the rest is stretched by that.'
		);
		expect(paceWords({ factor: 1, steps: 0 })).toBe('');
	});
});

test('the drawing stays inside its width, with a number or the name at every step', () => {
	for (const width of [240, 900]) {
		for (const minutes of [80, 135, 600]) {
			const { shapes } = timeFigure(laid(minutes), width, numberOf);
			const { left, right } = boundsOf(shapes);
			expect(left).toBeGreaterThan(-12);
			expect(right).toBeLessThan(width + 12);
			const words = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
			for (const { id, name, left: min } of steps) {
				expect(words).toContain(width < 480 ? id : `${id}. ${name}, ${duration(min)}`);
			}
		}
	}
});
