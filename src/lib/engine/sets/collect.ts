import { loadReader } from '../quantity/reader.ts';
import { stepsOf, type Task } from '../tasks/task.ts';
import { type Aside, type Choice, chooseEach, type Chosen, type Found } from './choose-hand-ins.ts';
import { type HandIn, type HandInAnswer, noAnswer } from './hand-in.ts';
import { type AnswerMark, markAnswer } from './mark-answer.ts';
import type { OpenSet, SetTask } from './open-set.ts';
import { type Override, overridden } from './override.ts';
import { totalOf } from './set.ts';
import { SetError } from './set-error.ts';
import type { StepState } from './step-marks.ts';

/** One task of a hand-in, marked. */
export interface TaskMark {
	/** Place in the set, from 1. */
	readonly place: number;
	/** Number of the task that this student had. */
	readonly task: string;
	readonly marks: number;
	readonly of: number;
	/** Set where an instructor changed the marks: what they were, and why. */
	readonly changed?: { readonly from: number; readonly note: string };
	readonly answers: readonly AnswerMark[];
	/** Every step of the task, in order. */
	readonly steps: readonly StepState[];
	/** Steps whose working was seen before it was handed in. */
	readonly opened: readonly string[];
	/** Answers of which the student had been told that they were wrong, by step. */
	readonly told: readonly string[];
	readonly charts: readonly string[];
	readonly seconds: number | null;
}

/** A hand-in, marked. */
export interface MarkedHandIn {
	readonly code: string;
	readonly name: string;
	readonly version: number;
	readonly promised: boolean;
	readonly at: string | null;
	/** The files that hold it, each the same. */
	readonly files: readonly string[];
	readonly marks: number;
	readonly of: number;
	/** In the order of the set. */
	readonly tasks: readonly TaskMark[];
}

export interface Collected {
	/** By code. */
	readonly handIns: readonly MarkedHandIn[];
	readonly aside: readonly Aside[];
}

interface CollectOptions {
	readonly overrides?: readonly Override[];
	/** Which hand-in of a code to mark, where several stand under it. */
	readonly choices?: readonly Choice[];
	/** How answers are marked; one that remembers makes collecting again quick. */
	readonly marking?: typeof markAnswer;
	/** Told after every hand-in how many are marked. */
	readonly progress?: (done: number, of: number) => void;
}

/**
 * Marks hand-ins of a set again from its numbers. Equal ones count once, of several by one code
 * the newest version counts, and what cannot be marked is set aside with one sentence.
 */
export async function collect(
	open: OpenSet,
	found: readonly Found[],
	{ overrides = [], choices = [], marking = markingOnce(), progress }: CollectOptions = {}
): Promise<Collected> {
	await loadReader();
	const own = found.filter(({ handIn }) => handIn.hash === open.hash);
	const foreign = found.filter(({ handIn }) => handIn.hash !== open.hash);
	const { chosen, aside } = chooseEach(own, choices);
	const handIns: MarkedHandIn[] = [];
	const unfit: Aside[] = [];
	for (const [i, one] of chosen.entries()) {
		const fault = faultIn(open, one.handIn);
		if (fault === null) handIns.push(overridden(await marked(open, one, marking), overrides));
		else unfit.push(...one.files.map((file) => ({ file, ...fault })));
		progress?.(i + 1, chosen.length);
	}
	return {
		handIns: handIns.sort((a, b) => byCode(a.code, b.code)),
		aside: [
			...foreign.map(({ file, handIn }) => ({
				file,
				why: `Belongs to another set, ${handIn.hash}; this one is ${open.hash}.`,
				elsewhere: handIn.set
			})),
			...aside,
			...unfit
		]
	};
}

export function byCode(one: string, other: string): number {
	return one.localeCompare(other, 'en', { numeric: true });
}

/** Why a hand-in of this set cannot be marked all the same, or null. */
function faultIn(open: OpenSet, handIn: HandIn): Omit<Aside, 'file'> | null {
	const tasks = tasksOf(open, handIn.code);
	// Restored from a backup, what is kept of its numbers may be there.
	if (typeof tasks === 'string') return { why: tasks, again: true };
	for (const { place, entries } of handIn.answers) {
		const own = tasks[place - 1];
		if (!own) return { why: `It answers task ${place}, and the set has ${tasks.length}.` };
		const steps = stepsOf(own.task);
		const stray = Object.keys(entries).find((key) => !steps.includes(key));
		if (stray !== undefined)
			return { why: `Task ${place} has no step ${stray}; it was not made by Bucktail.` };
	}
	return null;
}

/** The tasks of a code, or one sentence where they cannot be drawn any more. */
export function tasksOf(open: OpenSet, code: string): readonly SetTask[] | string {
	try {
		return open.for(code);
	} catch (error) {
		if (error instanceof SetError) return error.message;
		throw error;
	}
}

async function marked(
	open: OpenSet,
	{ handIn, files }: Chosen,
	marking: typeof markAnswer
): Promise<MarkedHandIn> {
	const tasks: TaskMark[] = [];
	for (const [i, own] of open.for(handIn.code).entries()) {
		const answer = handIn.answers.find(({ place }) => place === i + 1) ?? noAnswer(i + 1);
		tasks.push(await taskMark(own, answer, marking));
	}
	const { code, name, version, promised, at } = handIn;
	return {
		code,
		name,
		version,
		promised,
		at,
		files: [...files].sort(),
		marks: totalOf(tasks.map(({ marks }) => marks)),
		of: open.of,
		tasks: tasks.sort((a, b) => a.place - b.place)
	};
}

/** Marks what several students entered alike only once: most of a class has the same right ones. */
export function markingOnce(): typeof markAnswer {
	const known = new Map<string, Promise<AnswerMark[]>>();
	return (own, answer) => {
		const { entries, picked, units } = answer;
		const key = JSON.stringify([own.place, own.task.number, entries, picked, units]);
		const marks = known.get(key) ?? markAnswer(own, answer);
		known.set(key, marks);
		return marks;
	};
}

async function taskMark(
	own: SetTask,
	answer: Omit<HandInAnswer, 'place'>,
	marking: typeof markAnswer
): Promise<TaskMark> {
	const answers = await marking(own, answer);
	const { opened, told = [], charts, seconds } = answer;
	return {
		place: own.place,
		task: own.task.number,
		marks: totalOf(answers.map(({ marks }) => marks)),
		of: totalOf(own.marks),
		answers,
		steps: inOrder(own.task, answers),
		opened,
		told,
		charts,
		seconds
	};
}

function inOrder(task: Task, answers: readonly AnswerMark[]): StepState[] {
	const order = stepsOf(task);
	const steps = answers.flatMap((answer) => answer.steps);
	return steps.sort((a, b) => order.indexOf(a.key) - order.indexOf(b.key));
}
