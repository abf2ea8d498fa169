import { expect, test } from 'vitest';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { kChart } from '../../../src/lib/engine/trade/tables/k-chart.ts';
import { bendTasks, expectDrawn, expectStocked } from './bend-draws.ts';
import { familyOf } from './family-of.ts';

const misprintedK = new Set(kChart.suspect.map(({ row }) => row));
const setbackTasks = await familyOf('setback');

const tasks = bendTasks(setbackTasks);

test('sheets, bars and drawings of many tasks', () => {
	for (const task of tasks) {
		expectStocked(task);
		expectDrawn(task, ['K', 'setback']);
	}
});

test('level 1 is square, levels 2 and 3 are not, and no misprinted K is asked', () => {
	for (const { id, drawn } of tasks) {
		const { angle } = drawn.given;
		if (id.level === 1) expect(angle).toBe(90);
		else expect(angle).not.toBe(90);
		expect(misprintedK.has(Number(angle))).toBe(false);
	}
});

test('a setback without T leaves each leg too long, and a doubled radius too short', () => {
	const task = tasks[0];
	if (!task) throw new Error('no task');
	const { R, T } = task.drawn.given as { R: number; T: number };
	const said = (entered: number) => effectOf(task, 'setback', entered)?.entered.says;
	expect(said(R)).toMatch(/each leg comes out (about|less than) .* too long[.]$/);
	expect(said(2 * R + T)).toMatch(/each leg comes out (about|less than) .* too short[.]$/);
	expect(said(R + T)).toMatch(/both legs come out to their mold lines[.]$/);
});
