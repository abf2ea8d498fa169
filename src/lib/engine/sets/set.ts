import * as v from 'valibot';
import { readTaskNumber, TaskNumberError, writeTaskNumber } from '../tasks/task-number.ts';
import { hashOf } from './hash.ts';
import { ownTolerances } from './own-tolerance.ts';

/*
 * A set of tasks that an instructor hands out, as plain data. It holds its task numbers, so that
 * what is dealt later changes nothing in it.
 */

/** Most tasks in a set. */
export const mostTasks = 60;

/** Most marks for one step. */
export const mostMarks = 20;

/** Most characters of a title, of a seed text, and of what an instructor writes. */
export const longest = { title: 80, seed: 80, tolerance: 160, note: 400 } as const;

/** One line of plain text: nothing in it that cannot be seen. */
function line(most: number) {
	return v.pipe(
		v.string(),
		v.maxLength(most, `has more than ${most} characters`),
		v.check(
			(text) => !/[\p{Cc}\p{Cs}\u2028\u2029]/u.test(text),
			'has characters that cannot be shown'
		)
	);
}

const number = v.pipe(
	v.string(),
	v.maxLength(30),
	v.rawTransform(({ dataset, addIssue, NEVER }) => {
		try {
			return writeTaskNumber(readTaskNumber(dataset.value));
		} catch (error) {
			if (!(error instanceof TaskNumberError)) throw error;
			addIssue({ message: 'is no task number' });
			return NEVER;
		}
	})
);

const marks = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(mostMarks));

const setTask = v.strictObject({
	number,
	/** Marks of every step up to the last one asked, in order. */
	marks: v.pipe(v.array(marks), v.minLength(1), v.maxLength(30))
});

/** A day, or a day and a time of day where the class is: `2026-12-04`, `2026-12-04T16:00`. */
const due = v.pipe(
	v.string(),
	v.regex(/^\d{4}-\d\d-\d\d(T\d\d:\d\d)?$/, 'is no date like 2026-12-04 or 2026-12-04T16:00'),
	v.check(isOnCalendar, 'is no day of the calendar')
);

export const setSchema = v.strictObject({
	title: v.pipe(line(longest.title), v.trim(), v.minLength(1, 'is empty')),
	/** The text that the tasks were dealt from. */
	seed: line(longest.seed),
	tasks: v.pipe(v.array(setTask), v.minLength(1, 'are none'), v.maxLength(mostTasks)),
	/** Whether every student gets the tasks in an order of their own. */
	order: v.picklist(['fixed', 'mixed']),
	/** Whether every student gets numbers of their own. */
	numbers: v.picklist(['same', 'own']),
	/** Whether answers are typed, or chosen from options where a task has enough. */
	answers: v.picklist(['typed', 'options']),
	/** Whether steps and working may be opened. A promise, not a lock. */
	help: v.boolean(),
	due: v.nullable(due),
	/**
	 * How far off answers may be where the school does not go by the tool, in inches; left out where
	 * it does, so that sets without it keep their hash.
	 */
	within: v.optional(
		v.strictObject({
			rule: v.optional(v.picklist(ownTolerances.rule)),
			micrometer: v.optional(v.picklist(ownTolerances.micrometer))
		})
	),
	/** More on tolerances for the student to read; nothing is computed with it. */
	tolerance: line(longest.tolerance),
	/** For the student. */
	note: line(longest.note)
});

export type TaskSet = Readonly<v.InferOutput<typeof setSchema>>;

export type SetReading =
	| { readonly ok: true; readonly set: TaskSet }
	| { readonly ok: false; readonly sentence: string };

/** Reads a set from plain data; never throws. */
export function readSet(data: unknown): SetReading {
	const read = v.safeParse(setSchema, data, { abortEarly: true });
	if (read.success) return { ok: true, set: read.output };
	const [issue] = read.issues;
	const at = v.getDotPath(issue) ?? 'set';
	return { ok: false, sentence: `The set cannot be used: its ${at} ${saying(issue.message)}.` };
}

function saying(message: string): string {
	return /^(has|is|are) /.test(message) ? message : 'is not as it should be';
}

/** Eight base-32 digits that stand for the whole set: one mark more, and they are others. */
export function setHash(set: TaskSet): string {
	const digits = hashOf(JSON.stringify(v.parse(setSchema, set)), 8);
	return `${digits.slice(0, 4)}-${digits.slice(4)}`;
}

/** Marks that can be had in the set. */
export function marksOf({ tasks }: Pick<TaskSet, 'tasks'>): number {
	return tasks.reduce((sum, task) => sum + totalOf(task.marks), 0);
}

/** Whether a student’s sheet has numbers or an order of its own, so that no one sheet is for all. */
export function hasOwnSheets({ numbers, order }: Pick<TaskSet, 'numbers' | 'order'>): boolean {
	return numbers === 'own' || order === 'mixed';
}

export function totalOf(all: readonly number[]): number {
	return all.reduce((sum, one) => sum + one, 0);
}

function isOnCalendar(text: string): boolean {
	const [date = '', time = '00:00'] = text.split('T');
	const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
	const [hour = 0, minute = 0] = time.split(':').map(Number);
	const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
	const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
	return day >= 1 && day <= days && hour < 24 && minute < 60;
}
