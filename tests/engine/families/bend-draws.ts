import { expect } from 'vitest';
import type { Family } from '../../../src/lib/engine/families/family.ts';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { type Level, levels } from '../../../src/lib/engine/families/level.ts';
import { boundsOf } from '../../../src/lib/engine/figures/to-svg.ts';
import type { Drawing } from '../../../src/lib/engine/figures/drawing.ts';
import type { LengthUnit, Value } from '../../../src/lib/engine/quantity/value.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { noseRadii, sheetThicknesses } from '../../../src/lib/engine/trade/stock.ts';
import { howMany } from './how-many.ts';
import { minimumRadius } from '../../../src/lib/engine/trade/tables/least-radius.ts';

/** Many tasks of each level. */
export function bendTasks(family: Family): Task[] {
	return levels.flatMap((level) =>
		Array.from({ length: howMany }, (_, seed) => drawTask(family, level, seed))
	);
}

/** The sheet is stocked, and the bar that bends it is in the rack and not too sharp for the material told. */
export function expectStocked({ number, drawn }: Task): void {
	const { R, T } = drawn.given;
	const alloy = drawn.told?.find(([label]) => label === 'Material')?.[1].split(',')[0];
	expect(sheetThicknesses, number).toContain(T);
	expect(noseRadii, number).toContain(R);
	if (alloy === undefined) return;
	expect(Number(R) * 32, number).toBeGreaterThanOrEqual(
		Math.round(minimumRadius.run(alloy, Number(T)) * 32)
	);
}

export function partOf(tasks: readonly Task[], is: (task: Task) => boolean): number {
	return tasks.filter(is).length / tasks.length;
}

/** These bends and no others are drawn at a level, none seldom and none in every third task or more. */
export function expectEveryBend(tasks: readonly Task[], level: Level, angles: number[]): void {
	const own = tasks.filter(({ id }) => id.level === level);
	const drawn = new Set(own.map(({ drawn: { given } }) => Number(given.angle)));
	expect([...drawn].sort((a, b) => a - b)).toEqual(angles);
	for (const angle of angles) {
		const part = partOf(own, ({ drawn: { given } }) => given.angle === angle);
		expect(part, `${level}: ${angle}°`).toBeGreaterThan(0.03);
		expect(part, `${level}: ${angle}°`).toBeLessThan(0.36);
	}
}

/** Figure and effects are finite, fit their sheet, and say something; the right value has one. */
export function expectDrawn(task: Task, effectOn: readonly string[]): void {
	const { family, drawn, right, slips } = task;
	// Every 20th task is looked at closely: in millimetres, and with every wrong value.
	const closely = task.id.seed % 20 === 0;
	for (const units of closely ? (['in', 'mm'] as const) : (['in'] as const)) {
		expectFits(family.figure(drawn.given, sayIn(task, units)), 560);
	}
	for (const key of effectOn) {
		const wrong = closely ? [...slips.values()].map((values) => values[key] ?? NaN) : [];
		for (const entered of [right[key] ?? NaN, ...wrong]) {
			const effect = effectOf(task, key, entered);
			expect(effect, `${task.number} ${key}`).toBeTruthy();
			if (!effect) continue;
			expectFits(effect.entered.drawing, 900);
			expectFits(effect.right.drawing, 420);
			expect(effect.entered.says).toMatch(/^[A-Z0-9].*[.]$/);
		}
	}
}

export function sayIn({ method }: Task, units: LengthUnit) {
	return (key: string, value: Value) => textAt(method, key, value, units);
}

function expectFits({ title, shapes }: Drawing, width: number): void {
	expect(title).toMatch(/[.]$/);
	const box = boundsOf(shapes);
	expect(box.right - box.left).toBeGreaterThan(20);
	expect(box.right - box.left).toBeLessThanOrEqual(width);
	expect(box.bottom - box.top).toBeLessThanOrEqual(900);
}
