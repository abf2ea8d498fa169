import { expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';
import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import { markAnswer } from '../../../src/lib/engine/sets/mark-answer.ts';
import { kindAt } from '../../../src/lib/engine/solver/kind-at.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { drawTask, stepsOf, type Task } from '../../../src/lib/engine/tasks/task.ts';

/*
 * A second marker, written from what the mark scheme says and not from the code that marks: a
 * mark a step. It knows which slip was made, which the first has to find from what was typed.
 */

await loadReader();

interface Case {
	readonly task: Task;
	readonly slip: string;
}

/** Every task, and every slip that shows in it. */
const cases = (await loadFamilies()).flatMap((family) =>
	levels.flatMap((level) =>
		[11, 4242].flatMap((seed) => {
			const task = drawTask(family, level, seed);
			const inSteps = stepsOf(task);
			const slips = [...task.slips.keys()].filter((slip) =>
				inSteps.includes(task.method.slips[slip]?.step ?? '')
			);
			// A slip may come to a size below zero, which nobody types.
			return slips.map((slip) => ({ task, slip })).filter((one) => !isBelowZero(one));
		})
	)
);

function typed(task: Task, key: string, value: Value | undefined): string {
	return textAt(task.method, key, value ?? '').replace(/ \(.*\)$/, '');
}

function isBelowZero(one: Case): boolean {
	const values = worked(one);
	return stepsOf(one.task).some((key) =>
		kindAt(one.task.method, key)
			.numbers(values[key] ?? '')
			.some((number) => number < 0)
	);
}

function worked({ task, slip }: Case) {
	const step = task.method.slips[slip]?.step ?? '';
	return evaluate(task.method, task.drawn.given, { slips: { [step]: slip } });
}

async function firstMarker(task: Task, keys: readonly string[], values: ReturnType<typeof worked>) {
	const marks = stepsOf(task).map(() => 1);
	const entries = Object.fromEntries(keys.map((key) => [key, typed(task, key, values[key])]));
	const setTask = { place: 1, task, marks, question: null };
	const rows = await markAnswer(setTask, { entries, picked: {}, units: 'in' });
	return rows.reduce((sum, row) => sum + row.marks, 0);
}

/** Whether two values look alike once they are typed. */
function alike(task: Task, key: string, one: Value | undefined, other: Value | undefined): boolean {
	return typed(task, key, one) === typed(task, key, other);
}

/** Shares of the cases in which both markers agree, and some in which they do not. */
async function compared(
	keysOf: (task: Task) => readonly string[],
	second: (one: (typeof cases)[number]) => number
): Promise<{ share: number; unlike: string[] }> {
	const unlike: string[] = [];
	for (const one of cases) {
		const keys = keysOf(one.task);
		const [own, other] = [await firstMarker(one.task, keys, worked(one)), second(one)];
		if (own !== other) unlike.push(`${one.task.number} ${one.slip}: ${own}, not ${other}`);
	}
	return { share: 1 - unlike.length / cases.length, unlike };
}

test('every step typed: the step of the slip loses its mark, and no other', async () => {
	expect(cases.length).toBeGreaterThan(500);
	const { share, unlike } = await compared(stepsOf, (one) => {
		const { task, slip } = one;
		const at = task.method.slips[slip]?.step ?? '';
		const isSeen = !alike(task, at, worked(one)[at], task.right[at]);
		return stepsOf(task).length - (isSeen ? 1 : 0);
	});
	expect(share, unlike.join('\n')).toBeGreaterThanOrEqual(0.995);
});

test('only what is asked typed: one slip loses one mark, wherever it shows', async () => {
	const { share, unlike } = await compared(
		({ drawn }) => drawn.asked,
		(one) => stepsOf(one.task).length - 1
	);
	expect(share, unlike.join('\n')).toBeGreaterThanOrEqual(0.995);
});
