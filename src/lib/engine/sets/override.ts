import * as v from 'valibot';
import type { MarkedHandIn, TaskMark } from './collect.ts';
import { mostMarks, mostTasks, totalOf } from './set.ts';
import { readCode } from './student-code.ts';

const overrideSchema = v.strictObject({
	code: v.pipe(
		v.string(),
		v.transform((typed) => readCode(typed)),
		v.check((reading) => reading.ok),
		v.transform((reading) => (reading.ok ? reading.code : ''))
	),
	/** Place of the task in the set, from 1. */
	task: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostTasks)),
	marks: v.pipe(v.number(), v.minValue(0), v.maxValue(mostMarks * 30)),
	/** Why. */
	note: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(400))
});

/** Marks of one task that an instructor has changed. */
export type Override = Readonly<v.InferOutput<typeof overrideSchema>>;

/** Reads overrides from plain data; null where they are none. */
export function readOverrides(data: unknown): readonly Override[] | null {
	const read = v.safeParse(v.pipe(v.array(overrideSchema), v.maxLength(20_000)), data);
	return read.success ? read.output : null;
}

/** A hand-in with the marks that were changed; of several changes of one task the last holds. */
export function overridden(handIn: MarkedHandIn, overrides: readonly Override[]): MarkedHandIn {
	const own = overrides.filter(({ code }) => code === handIn.code);
	if (own.length === 0) return handIn;
	const tasks = handIn.tasks.map((mark) => {
		const last = own.filter(({ task }) => task === mark.place).at(-1);
		return last ? changedBy(mark, last) : mark;
	});
	return { ...handIn, tasks, marks: totalOf(tasks.map(({ marks }) => marks)) };
}

function changedBy(mark: TaskMark, { marks, note }: Override): TaskMark {
	return { ...mark, marks: Math.min(marks, mark.of), changed: { from: mark.marks, note } };
}
