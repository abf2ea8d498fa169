import { expect, test } from 'vitest';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { cardByCode, loadFamily } from '../../../src/lib/engine/families/catalogue.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { loadOf } from '../../../src/lib/ui/sets/task-load.ts';

async function taskOf(code: string) {
	const card = cardByCode(code);
	if (!card) throw new Error(`no family ${code}`);
	return drawTask(await loadFamily(card), 2, 7);
}

test('few answers stand beside one another, of many the last with what it is', async () => {
	const few = await taskOf('ED');
	expect(few.drawn.asked).toHaveLength(2);
	expect(loadOf(few, 'in').answer.split('; ')).toHaveLength(2);
	const many = await taskOf('PN');
	const { method, drawn, right } = many;
	const last = drawn.asked.at(-1) ?? '';
	expect(loadOf(many, 'in').answer).toBe(
		`${method.steps[last]?.label} ${textAt(method, last, right[last] ?? '')}, the last of ${drawn.asked.length}`
	);
});
