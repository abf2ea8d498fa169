import { expect, test } from 'vitest';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { bendTasks, expectDrawn, expectStocked } from './bend-draws.ts';
import { familyOf } from './family-of.ts';

const sightLineTasks = await familyOf('sight-line');

const tasks = bendTasks(sightLineTasks);

test('sheets, bars and drawings of many tasks', () => {
	for (const task of tasks) {
		expectStocked(task);
		expectDrawn(task, ['tangentLine', 'sightLine']);
	}
});

test('every task tells the middle of the allowance from the sight line', () => {
	for (const { number, slips } of tasks) expect(slips.has('middle'), number).toBe(true);
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
