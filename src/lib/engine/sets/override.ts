import * as v from 'valibot';
import { mostMarks, mostTasks } from './set.ts';
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
