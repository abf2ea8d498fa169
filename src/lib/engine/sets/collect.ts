import * as v from 'valibot';
import { loadReader } from '../quantity/reader.ts';
import { stepsOf } from '../tasks/task.ts';
import { type HandIn, type HandInAnswer, isSameHandIn } from './hand-in.ts';
import { type AnswerMark, markAnswer } from './mark-answer.ts';
import type { OpenSet, SetTask } from './open-set.ts';
import { mostMarks, mostTasks, totalOf } from './set.ts';
import { readCode } from './student-code.ts';

/** A hand-in and the file or text it came in. */
export interface Found {
	readonly file: string;
	readonly handIn: HandIn;
}

/** What was not marked, and why. */
export interface Aside {
	readonly file: string;
	readonly why: string;
}

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
	readonly opened: readonly string[];
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
	{ overrides = [], progress }: CollectOptions = {}
): Promise<Collected> {
	await loadReader();
	const own = found.filter(({ handIn }) => handIn.hash === open.hash);
	const foreign = found.filter(({ handIn }) => handIn.hash !== open.hash);
	const { chosen, aside } = chooseEach(own);
	const handIns: MarkedHandIn[] = [];
	const unfit: Aside[] = [];
	for (const [i, one] of chosen.entries()) {
		const fault = faultIn(open, one.handIn);
		if (fault === null) handIns.push(await marked(open, one, overrides));
		else unfit.push(...one.files.map((file) => ({ file, why: fault })));
		progress?.(i + 1, chosen.length);
	}
	return {
		handIns: handIns.sort((a, b) => byCode(a.code, b.code)),
		aside: [
			...foreign.map(({ file, handIn }) => ({
				file,
				why: `Belongs to another set, ${handIn.hash}; this one is ${open.hash}.`
			})),
			...aside,
			...unfit
		]
	};
}

export function byCode(one: string, other: string): number {
	return one.localeCompare(other, 'en', { numeric: true });
}

interface Chosen {
	readonly handIn: HandIn;
	readonly files: readonly string[];
}

/** For every code the hand-in to mark, and what is set aside for it. */
function chooseEach(found: readonly Found[]): { chosen: Chosen[]; aside: Aside[] } {
	const codes = [...new Set(found.map(({ handIn }) => handIn.code))];
	const each = codes.map((code) => chooseOne(found.filter(({ handIn }) => handIn.code === code)));
	return {
		chosen: each.flatMap(({ chosen }) => chosen),
		aside: each.flatMap(({ aside }) => aside)
	};
}

function chooseOne(found: readonly Found[]): { chosen: Chosen[]; aside: Aside[] } {
	const unlike: { handIn: HandIn; files: string[] }[] = [];
	for (const { file, handIn } of found) {
		const same = unlike.find((one) => isSameHandIn(one.handIn, handIn));
		if (same) same.files.push(file);
		else unlike.push({ handIn, files: [file] });
	}
	const newest = Math.max(...unlike.map(({ handIn }) => handIn.version));
	const top = unlike.filter(({ handIn }) => handIn.version === newest);
	const older = unlike.filter(({ handIn }) => handIn.version < newest);
	const aside = older.flatMap(({ handIn, files }) =>
		files.map((file) => ({
			file,
			why: `${handIn.code} handed in again: version ${newest} is marked in place of version ${handIn.version}.`
		}))
	);
	const [first] = top;
	if (top.length === 1 && first) return { chosen: [first], aside };
	const why = `${found[0]?.handIn.code ?? ''} stands on ${top.length} different hand-ins of version ${newest}: find out whose each is, and have one handed in under another code.`;
	const twice = top.flatMap(({ files }) => files.map((file) => ({ file, why })));
	return { chosen: [], aside: [...aside, ...twice] };
}

/** Why a hand-in of this set cannot be marked all the same, or null. */
function faultIn(open: OpenSet, handIn: HandIn): string | null {
	const tasks = open.for(handIn.code);
	for (const { place, entries } of handIn.answers) {
		const own = tasks[place - 1];
		if (!own) return `It answers task ${place}, and the set has ${tasks.length}.`;
		const steps = stepsOf(own.task);
		const stray = Object.keys(entries).find((key) => !steps.includes(key));
		if (stray !== undefined)
			return `Task ${place} has no step ${stray}; it was not made by Bucktail.`;
	}
	return null;
}

async function marked(
	open: OpenSet,
	{ handIn, files }: Chosen,
	overrides: readonly Override[]
): Promise<MarkedHandIn> {
	const tasks: TaskMark[] = [];
	for (const [i, own] of open.for(handIn.code).entries()) {
		const answer = handIn.answers.find(({ place }) => place === i + 1) ?? noAnswer;
		const mark = await taskMark(own, answer);
		// What was changed last holds.
		const override = overrides
			.filter(({ code, task }) => code === handIn.code && task === own.place)
			.at(-1);
		tasks.push(override ? changedBy(mark, override) : mark);
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

const noAnswer: Omit<HandInAnswer, 'place'> = {
	entries: {},
	picked: {},
	units: 'in',
	opened: [],
	charts: [],
	seconds: null
};

async function taskMark(own: SetTask, answer: Omit<HandInAnswer, 'place'>): Promise<TaskMark> {
	const answers = await markAnswer(own, answer);
	const { opened, charts, seconds } = answer;
	return {
		place: own.place,
		task: own.task.number,
		marks: totalOf(answers.map(({ marks }) => marks)),
		of: totalOf(own.marks),
		answers,
		opened,
		charts,
		seconds
	};
}

function changedBy(mark: TaskMark, { marks, note }: Override): TaskMark {
	return { ...mark, marks: Math.min(marks, mark.of), changed: { from: mark.marks, note } };
}
