import { expect, test } from 'vitest';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { noseRadii } from '../../../src/lib/engine/trade/stock.ts';
import { minimumRadius } from '../../../src/lib/engine/trade/tables/least-radius.ts';
import { bendTasks, expectDrawn, expectEveryBend, expectStocked, partOf } from './bend-draws.ts';
import { familyOf } from './family-of.ts';

const sightLineTasks = await familyOf('sight-line');

const tasks = bendTasks(sightLineTasks);

test('sheets, bars and drawings of many tasks', () => {
	for (const task of tasks) {
		expectStocked(task);
		expectDrawn(task, ['tangentLine', 'sightLine']);
	}
});

test('many tasks tell the middle of the allowance from the sight line, and all the tangent line', () => {
	for (const level of levels) {
		const own = tasks.filter(({ id }) => id.level === level);
		// The middle of a square bend lies near the sight line unless the radius is wide.
		const least = level === 1 ? 0.15 : 0.6;
		expect(partOf(own, ({ slips }) => slips.has('middle'))).toBeGreaterThan(least);
		expect(partOf(own, ({ slips }) => slips.has('atTangent'))).toBe(1);
		expect(partOf(own, ({ slips }) => slips.has('noT'))).toBeGreaterThan(0.6);
	}
});

test('every bend is drawn, and none in every second task', () => {
	for (const level of [2, 3] as const)
		expectEveryBend(tasks, level, [30, 45, 60, 75, 80, 100, 105, 120, 135]);
});

test('the bar is one of the two sharpest that the sheet stands', () => {
	for (const { number, drawn } of tasks) {
		const { R, T } = drawn.given;
		const alloy = drawn.told?.find(([label]) => label === 'Material')?.[1].split(',')[0] ?? '';
		const least = Math.round(minimumRadius.run(alloy, Number(T)) * 32) / 32;
		const sharper = noseRadii.filter((bar) => bar >= least && bar < Number(R));
		expect(sharper.length, number).toBeLessThan(2);
		if (drawn.story.includes('rib clip')) expect(T, number).toBeLessThanOrEqual(0.05);
	}
});

test('a line on the tangent line makes the leg under the nose too short', () => {
	for (const task of tasks.slice(0, 50)) {
		const effect = effectOf(task, 'sightLine', task.right.tangentLine ?? NaN);
		expect(effect?.entered.says).toMatch(/the leg under the nose comes out .* too short/);
		expect(effect?.right.says).toMatch(/both legs come out to their mold lines[.]$/);
	}
});

test('the leg under the nose has a flat that the brake can clamp', () => {
	for (let seed = 0; seed < 1500; seed++) {
		const { number, right } = drawTask(sightLineTasks, seed % 2 === 0 ? 2 : 3, seed);
		expect(Number(right.tangentLine), number).toBeGreaterThanOrEqual(1 / 4);
	}
});
