import { kindAt } from '../../../src/lib/engine/solver/kind-at.ts';
import { expect, test } from 'vitest';
import { outcomesOf } from '../../../src/lib/ui/sheet/outcomes.ts';
import type { Check } from '../../../src/lib/ui/sheet/task-work.svelte.ts';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { wholeKinds } from '../../browser/keyboard.ts';
import { entriesOf, verdictsOn } from '../../engine/marking/typed-answers.ts';

const families = await loadFamilies();
const tasks = families.flatMap((family) =>
	Array.from({ length: 20 }, (_, seed) => drawTask(family, 1, seed))
);

function checkOf(task: Task, key: string, text: string): Check {
	const typed = { [key]: text };
	return {
		typed,
		entries: entriesOf(task, typed),
		verdicts: verdictsOn(task, typed),
		accepted: false,
		holds: false,
		opened: [],
		byStep: false
	};
}

test('the sentence of an outcome gives no right value away at the first try', () => {
	let silenced = 0;
	for (const task of tasks) {
		const [key = ''] = task.drawn.asked;
		// A slip may come to half a rivet, which nobody types.
		if (wholeKinds.has(kindAt(task.method, key))) continue;
		const right = textAt(task.method, key, task.right[key] ?? '').replace(/ \(.*/, '');
		for (const values of task.slips.values()) {
			const typed = textAt(task.method, key, values[key] ?? '').replaceAll(', ', '; ');
			// A slip may come out below zero, which nobody types either.
			if (typed.startsWith('−')) continue;
			const check = checkOf(task, key, typed);
			if (check.verdicts[key]?.kind !== 'rework') continue;
			const [first] = outcomesOf(task, check, 'in', false, true);
			const [second] = outcomesOf(task, check, 'in', false, false);
			if (first?.outcome.says !== '') continue;
			silenced++;
			expect(second?.outcome.says, task.number).toContain(right);
			expect(first.outcome.drawing).toEqual(second?.outcome.drawing);
			const [known] = outcomesOf(task, check, 'in', true, true);
			expect(known?.outcome.says).toContain(right);
		}
	}
	expect(silenced).toBeGreaterThan(0);
});

test('a factor is not drawn as a size', () => {
	const [task] = tasks.filter(({ id }) => id.code === 'ED');
	if (!task) throw new Error('no task of edge distances');
	const [key = ''] = task.drawn.asked;
	expect(outcomesOf(task, checkOf(task, key, '2D'), 'in', false, true)).toEqual([]);
});

test('of right numbers, the last one is told on the metal: the others lead to it', () => {
	const [bend] = tasks.filter(({ id }) => id.code === 'BS');
	if (!bend) throw new Error('no task of setback');
	const typed = Object.fromEntries(
		['K', 'setback'].map((key) => [key, textAt(bend.method, key, bend.right[key] ?? '')])
	);
	const check = { entries: entriesOf(bend, typed), verdicts: verdictsOn(bend, typed) };
	const [shown] = outcomesOf(bend, check, 'in', true, false);
	expect(shown?.outcome.says).toContain('for the setback');
});
