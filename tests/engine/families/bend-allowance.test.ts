import { expect, test } from 'vitest';
import { bendTasks, expectDrawn, expectStocked } from './bend-draws.ts';
import { familyOf } from './family-of.ts';

const bendAllowanceTasks = await familyOf('bend-allowance');

const tasks = bendTasks(bendAllowanceTasks);

test('sheets, bars and drawings of many tasks', () => {
	for (const task of tasks) {
		expectStocked(task);
		expectDrawn(task, ['allowance']);
	}
});

test('every task names the formula it wants', () => {
	for (const { drawn } of tasks) expect(drawn.basis).toContain('0.01743 and 0.0078');
});

test('the mid-thickness answer is told apart in the thicker sheets', () => {
	const thick = tasks.filter(
		({ drawn }) => Number(drawn.given.T) >= 0.063 && drawn.given.angle === 90
	);
	expect(thick.length).toBeGreaterThan(15);
	for (const { slips } of thick) expect([...slips.keys()]).toContain('middle');
});
