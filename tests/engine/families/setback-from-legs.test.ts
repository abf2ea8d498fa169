import { expect, test } from 'vitest';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { bendTasks, expectDrawn, expectStocked, sayIn } from './bend-draws.ts';
import { familyOf } from './family-of.ts';

const setbackFromLegsTasks = await familyOf('setback-from-legs');

const tasks = bendTasks(setbackFromLegsTasks);

test('sheets, bars and drawings of many tasks', () => {
	for (const task of tasks) {
		expectStocked(task);
		expectDrawn(task, ['angle', 'K', 'setback']);
	}
});

test('the figure shows the angle between the legs and not the bend angle', () => {
	for (const task of tasks) {
		const figure = task.family.figure(task.drawn.given, sayIn(task, 'in'));
		const words = figure.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
		const { betweenLegs } = task.drawn.given;
		expect(words).toContain(`${betweenLegs}°`);
		if (betweenLegs !== 90) expect(words).not.toContain(`${task.right.angle}°`);
	}
});

test('a sheet bent by the angle between the legs is said to stand wrong', () => {
	const task = tasks.find(({ drawn }) => drawn.given.betweenLegs === 60);
	const says = task && effectOf(task, 'angle', 60)?.entered.says;
	expect(says).toBe('Bent 60° from flat, the legs stand 120° apart; 60° is wanted.');
});
