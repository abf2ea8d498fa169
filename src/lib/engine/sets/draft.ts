import { cardByCode, loadFamily } from '../families/catalogue.ts';
import type { Level } from '../families/level.ts';
import { cards, type TopicId } from '../families/topics.ts';
import { readTaskNumber, writeTaskNumber } from '../tasks/task-number.ts';
import { stepsOf, type Task, taskFromNumber } from '../tasks/task.ts';
import { plainTask, type Terms, type Wish } from './compose.ts';
import { deal, drawDealt, type Place } from './deal.ts';
import { mostTasks, readSet, type SetReading, type TaskSet } from './set.ts';

/** A task of a set that is being composed. */
export interface DraftTask {
	readonly task: Task;
	/** Marks of its steps, in the order of `stepsOf`. */
	readonly marks: readonly number[];
	/** How many of its family and level were drawn before it, those that were swapped among them. */
	readonly copy: number;
}

/** The tasks of a set that is being composed, in order. Changes give a new one. */
export type Draft = readonly DraftTask[];

type Kind = Pick<Wish, 'code' | 'level'>;

/** How many tasks of a family and level there are. */
export function countOf(draft: Draft, kind: Kind): number {
	return draft.filter((one) => isOf(one, kind)).length;
}

function isOf({ task }: DraftTask, { code, level }: Kind): boolean {
	return task.id.code === code && task.id.level === level;
}

/**
 * So many tasks of a family and level: new ones at the end, and the last ones go first.
 *
 * @throws SetError where the family has not so many
 */
export async function withCount(
	draft: Draft,
	seed: string,
	{ code, level, count }: Wish
): Promise<Draft> {
	const own = draft.filter((one) => isOf(one, { code, level }));
	if (count <= own.length) {
		const gone = new Set(own.slice(count));
		return draft.filter((one) => !gone.has(one));
	}
	const room = Math.max(0, mostTasks - draft.length);
	let next = draft;
	for (let n = own.length; n < Math.min(count, own.length + room); n++) {
		next = [...next, await drawn(next, seed, { code, level })];
	}
	return next;
}

/**
 * The tasks of wishes, one wish after the other.
 *
 * @throws SetError where a family has not so many
 */
export async function wishedDraft(wishes: readonly Wish[], seed: string): Promise<Draft> {
	let draft: Draft = [];
	for (const wish of wishes) {
		draft = await withCount(draft, seed, { ...wish, count: countOf(draft, wish) + wish.count });
	}
	return draft;
}

/** Another task of the same family and level in place of one. */
export async function swapped(draft: Draft, seed: string, at: number): Promise<Draft> {
	const old = draft[at];
	if (!old) return draft;
	const fresh = await drawn(draft, seed, old.task.id);
	const marks = fresh.marks.length === old.marks.length ? old.marks : fresh.marks;
	return draft.map((one) => (one === old ? { ...fresh, marks } : one));
}

async function drawn(draft: Draft, seed: string, { code, level }: Kind): Promise<DraftTask> {
	const copies = draft.filter((one) => isOf(one, { code, level })).map(({ copy }) => copy);
	const copy = Math.max(-1, ...copies) + 1;
	const place = { ...(await placeOf({ code, level })), copy };
	const there = draft.map(({ task }) => task);
	const [task] = drawDealt(seed, [place], (one) => one, there);
	if (!task) throw new Error(`no task from ${code}${level}`);
	return { task, marks: plainTask(task).marks, copy };
}

async function placeOf({ code, level }: Kind): Promise<Omit<Place, 'copy'>> {
	const card = cardByCode(code);
	if (!card) throw new Error(`no family ${code}`);
	return { family: await loadFamily(card), level };
}

/** The same families and levels in the same order, with the tasks of another seed text. */
export async function redrawn(draft: Draft, seed: string): Promise<Draft> {
	let next: Draft = [];
	for (const { task, marks } of draft) {
		const fresh = await drawn(next, seed, task.id);
		next = [
			...next,
			{ ...fresh, marks: fresh.marks.length === marks.length ? marks : fresh.marks }
		];
	}
	return next;
}

/** So many tasks of some topics and levels: each topic as often as any other, neighbours unlike. */
export async function dealtDraft(
	seed: string,
	topics: readonly TopicId[],
	levels: readonly Level[],
	count: number
): Promise<Draft> {
	const families = cards.filter(({ topic }) => topics.includes(topic));
	let next: Draft = [];
	for (const { family, level } of deal({ seed, families, count, levels })) {
		next = [...next, await drawn(next, seed, { code: family.code, level })];
	}
	return next;
}

/** One task with other marks for its steps. */
export function marked(
	draft: Draft,
	at: number,
	change: (marks: readonly number[]) => readonly number[]
): Draft {
	return draft.map((one, i) => (i === at ? { ...one, marks: change(one.marks) } : one));
}

export function moved(draft: Draft, from: number, to: number): Draft {
	const one = draft[from];
	const at = Math.min(Math.max(0, to), draft.length - 1);
	if (!one || at === from) return draft;
	const others = draft.filter((_, i) => i !== from);
	return [...others.slice(0, at), one, ...others.slice(at)];
}

/** The set of a draft, or one sentence that says what is still missing. */
export function setOf(terms: Terms, draft: Draft): SetReading {
	if (terms.title.trim() === '') return { ok: false, sentence: 'Give the set a title.' };
	if (draft.length === 0) return { ok: false, sentence: 'Choose what goes into the set.' };
	const tasks = draft.map(({ task, marks }) => ({ number: task.number, marks: [...marks] }));
	if (tasks.every(({ marks }) => marks.every((one) => one === 0))) {
		return { ok: false, sentence: 'Give at least one step a mark.' };
	}
	return readSet({ ...terms, seed: terms.seed.trim() === '' ? terms.title : terms.seed, tasks });
}

/** The draft that makes a set again, from its tasks drawn. */
export function draftOf({ tasks }: Pick<TaskSet, 'tasks'>, drawnTasks: readonly Task[]): Draft {
	let draft: Draft = [];
	for (const [i, task] of drawnTasks.entries()) {
		const plain = stepsOf(task).map(() => 1);
		const own = tasks[i]?.marks;
		const marks = own?.length === plain.length ? own : plain;
		draft = [...draft, { task, marks, copy: countOf(draft, task.id) }];
	}
	return draft;
}

/**
 * The tasks of a set, to be edited, and the places of those that were drawn anew because their
 * family draws other numbers since.
 *
 * @throws TaskNumberError
 */
export async function tasksNow({ tasks }: Pick<TaskSet, 'tasks'>) {
	const drawn: Task[] = [];
	const anew: number[] = [];
	for (const [i, { number }] of tasks.entries()) {
		const id = readTaskNumber(number);
		const rev = Math.max(id.rev, cardByCode(id.code)?.rev ?? 0);
		if (rev !== id.rev) anew.push(i + 1);
		drawn.push(await taskFromNumber(writeTaskNumber({ ...id, rev })));
	}
	return { drawn, anew };
}
