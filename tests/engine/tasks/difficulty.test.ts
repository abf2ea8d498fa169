import { expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { compiledOf, setReady } from '../../../src/lib/engine/solver/compiled.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { featuresOf } from '../../../src/lib/engine/tasks/difficulty.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';

/** The method as a page has it, whose build leaves out the text of formulas. */
function onPage(method: Method): Method {
	const steps = Object.entries(method.steps).map(([key, step]) => [key, { ...step, formula: '' }]);
	const there = { ...method, steps: Object.fromEntries(steps) };
	setReady(there, compiledOf(method));
	return there;
}

test('a task is as hard on a page as where its formulas can be read', async () => {
	for (const family of await loadFamilies()) {
		for (const level of levels) {
			const task = drawTask(family, level, 0);
			const there = { ...task, method: onPage(task.method) };
			expect(featuresOf(there), task.number).toEqual(featuresOf(task));
		}
	}
});

test('tables read, values taken to another scale and givens without use are counted', async () => {
	const families = await loadFamilies();
	const features = (code: string) => {
		const family = families.find((one) => one.code === code);
		return family && featuresOf(drawTask(family, 1, 0));
	};
	expect(features('RN')).toMatchObject({ lookUps: 2, conversions: 2, distractors: 0 });
	expect(features('HR')).toMatchObject({ lookUps: 0, conversions: 0, distractors: 2 });
});
