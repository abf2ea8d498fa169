import * as v from 'valibot';
import { TaskNumberError } from '../tasks/task-number.ts';
import { type Task, taskFromNumber } from '../tasks/task.ts';
import { type Option, type OptionCause, together } from './options.ts';
import type { Question } from './rehearsal.ts';

const id = v.pipe(v.string(), v.minLength(1), v.maxLength(80));

/** What leads to an option: null at the right one, else its slips. */
const cause = v.nullable(
	v.object({
		kind: v.picklist(['slip', 'either']),
		slips: v.pipe(v.array(id), v.minLength(1), v.maxLength(4))
	})
);

export const keptOptions = v.pipe(
	v.array(cause),
	v.minLength(2),
	v.maxLength(8),
	v.check((options) => options.filter((one) => one === null).length === 1)
);

/**
 * A question as it is kept: its task by number, the step asked for, and its options in order by
 * what leads to them. Neither the dealing nor the choice of options is needed to read it.
 */
export const keptQuestion = v.object({
	task: v.pipe(v.string(), v.maxLength(30)),
	key: id,
	options: keptOptions
});

export type KeptQuestion = v.InferOutput<typeof keptQuestion>;

export function kept({ task, key, options }: Question): KeptQuestion {
	return { task: task.number, key, options: optionsOf({ options }) };
}

/** What leads to each option, in order. */
export function optionsOf({ options }: Pick<Question, 'options'>): KeptQuestion['options'] {
	return options.map(({ cause: own }) => own && { kind: own.kind, slips: [...own.slips] });
}

/** The question as it was asked; null where its family is gone or draws and explains otherwise. */
export async function reopened(question: KeptQuestion): Promise<Question | null> {
	const task = await taskOrNone(question.task);
	return task && reopenedOn(task, question);
}

/** The same on a task that is drawn already. */
export function reopenedOn(
	task: Task,
	{ key, options }: Pick<KeptQuestion, 'key' | 'options'>
): Question | null {
	if (!task.drawn.asked.includes(key)) return null;
	const again = options.map((own) => optionBy(task, key, own)).filter((option) => option !== null);
	if (again.length < options.length) return null;
	return { task, key, options: again, right: options.indexOf(null) };
}

async function taskOrNone(number: string): Promise<Task | null> {
	try {
		return await taskFromNumber(number);
	} catch (error) {
		if (error instanceof TaskNumberError) return null;
		throw error;
	}
}

function optionBy(task: Task, key: string, own: OptionCause | null): Option | null {
	if (!own) return { value: task.right[key] ?? '', cause: null };
	const { slips } = task.method;
	if (own.slips.some((slip) => !Object.hasOwn(slips, slip))) return null;
	const [first = ''] = own.slips;
	const made = together(task, key, own.kind === 'slip' ? own.slips : [first]);
	return made && { ...made, cause: own };
}
