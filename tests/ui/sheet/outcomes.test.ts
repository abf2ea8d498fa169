import { expect, test } from 'vitest';
import { edgeDistance } from '../../../src/lib/engine/methods/edge-distance.ts';
import { outcomesOf } from '../../../src/lib/ui/sheet/outcomes.ts';
import type { Check } from '../../../src/lib/ui/sheet/task-work.svelte.ts';
import { cardByCode, loadFamily } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { entriesOf, verdictsOn } from '../../engine/marking/typed-answers.ts';

const card = cardByCode('ED');
if (!card) throw new Error('no family of edge distances');
const task = drawTask(await loadFamily(card), 1, 0);
const [key = ''] = task.drawn.asked;
const rightText = textAt(edgeDistance, key, task.right[key] ?? '');

function checkOf(text: string): Check {
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
	// Too near the edge, and the sentence tells the least.
	const near = `${Number(task.right[key]) * 0.8} in`;
	const [first] = outcomesOf(task, checkOf(near), 'in', false, true);
	const [second] = outcomesOf(task, checkOf(near), 'in', false, false);
	expect(second?.outcome.says).toContain(rightText);
	expect(first?.outcome).toEqual({ ...second?.outcome, says: '' });
	const [known] = outcomesOf(task, checkOf(near), 'in', true, true);
	expect(known?.outcome.says).toContain(rightText);
});

test('a factor is not drawn as a size', () => {
	expect(outcomesOf(task, checkOf('2D'), 'in', false, true)).toEqual([]);
});
