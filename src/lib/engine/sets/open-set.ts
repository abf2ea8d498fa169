import { randomFrom } from '../families/random.ts';
import { cardByCode, loadFamily } from '../families/catalogue.ts';
import type { Family } from '../families/family.ts';
import { givensOf, numbersIn } from '../tasks/givens.ts';
import { readTaskNumber, seedCount, TaskNumberError } from '../tasks/task-number.ts';
import { drawTask, stepsOf, type Task, taskFromNumber } from '../tasks/task.ts';
import {
	type KeptDraw,
	type KeptDraws,
	nothingKept,
	questionFromDraw,
	taskFromDraw
} from './kept-draws.ts';
import { inOwnOrder } from './own-order.ts';
import { heldTo } from './own-tolerance.ts';
import { type Question, questionOn } from './rehearsal.ts';
import { marksOf, setHash, type TaskSet } from './set.ts';
import { SetError } from './set-error.ts';

/** One task of a set as one student gets it. */
export interface SetTask {
	/** Its place in the set, from 1; on the student's own sheet it may stand elsewhere. */
	readonly place: number;
	readonly task: Task;
	/** Marks of its steps, in the order of `stepsOf`. */
	readonly marks: readonly number[];
	/** The options to choose from; null where the answers are typed. */
	readonly question: Question | null;
}

/** A set with its tasks drawn. */
export interface OpenSet {
	readonly set: TaskSet;
	readonly hash: string;
	/** Marks that can be had. */
	readonly of: number;
	/** The tasks as the set holds them, in its order. */
	readonly tasks: readonly SetTask[];
	/** The tasks of one student, in the order of that student's sheet. */
	readonly for: (code: string) => readonly SetTask[];
}

/**
 * Draws the tasks of a set, or takes those of an earlier revision as they were kept.
 *
 * @throws SetError where a task is gone, or of another revision and not kept
 */
export async function openSet(set: TaskSet, kept: KeptDraws = nothingKept): Promise<OpenSet> {
	const hash = setHash(set);
	const tasks: SetTask[] = [];
	for (const [i, { number, marks }] of set.tasks.entries()) {
		const before = kept.at(null, i + 1);
		const { task, question } = await drawnOrKept(set, i + 1, number, before);
		if (marks.length !== stepsOf(task).length) {
			throw new SetError(
				`Task ${i + 1} of the set has ${stepsOf(task).length} steps and marks for ${marks.length}; make the set again.`
			);
		}
		tasks.push({ place: i + 1, task: heldTo(task, set.within), marks, question });
	}
	const forCode = (code: string) => {
		const own = set.numbers === 'own' ? ownNumbers(set, hash, tasks, code, kept) : tasks;
		return inOwnOrder(set, hash, code, own);
	};
	const drawn = new Map<string, readonly SetTask[]>();
	const once = (code: string) => {
		const own = drawn.get(code) ?? forCode(code);
		drawn.set(code, own);
		return own;
	};
	return { set, hash, of: marksOf(set), tasks, for: once };
}

/** Whether all its families draw as they did when the set was made, so that nothing kept is needed. */
export function drawsAsMade({ tasks }: Pick<TaskSet, 'tasks'>): boolean {
	return tasks.every(({ number }) => {
		const { code, rev } = readTaskNumber(number);
		return cardByCode(code)?.rev === rev;
	});
}

/** A task with its question as everybody gets it. */
async function drawnOrKept(
	set: TaskSet,
	place: number,
	number: string,
	kept: KeptDraw | undefined
): Promise<Pick<SetTask, 'task' | 'question'>> {
	try {
		const task = await taskFromNumber(number);
		return { task, question: questionIn(set, task) };
	} catch (error) {
		if (!(error instanceof TaskNumberError)) throw error;
		const card = kept?.number === number && cardByCode(readTaskNumber(number).code);
		const again = card && keptTask(set, await loadFamily(card), kept);
		if (again) return again;
		throw new SetError(`Task ${place} of the set, ${number}: ${whyNot(number) ?? error.message}`);
	}
}

/** What to do about a task that is drawn otherwise since; null where it is something else. */
function whyNot(number: string): string | null {
	const { code, rev } = readTaskNumber(number);
	const card = cardByCode(code);
	if (!card || rev >= card.rev) return null;
	return `“${card.name}” draws other numbers since an update. Make the set again; what was handed in is marked on the device that made it.`;
}

/** The task that was kept, with the options that stood on its sheet; null where it is none any more. */
function keptTask({ answers }: TaskSet, family: Family, kept: KeptDraw) {
	const task = taskFromDraw(kept, family);
	if (!task) return null;
	const question = questionFromDraw(task, kept);
	// Without all of its options the letters on the sheet mean something else.
	const isWhole = answers === 'typed' || kept.choice === null || question !== null;
	return isWhole ? { task, question } : null;
}

function questionIn({ answers }: TaskSet, task: Task): Question | null {
	return answers === 'options' ? questionFor(task) : null;
}

/** The options of a task in a set: the same in every set, and for every student with its numbers. */
export function questionFor(task: Task): Question | null {
	return questionOn(task, randomFrom(`set options ${task.number}`));
}

/** How many draws may be unfit before it is given up. */
const tries = 400;

/** For every task another one of its family and level, which asks the same in the same steps. */
function ownNumbers(
	set: TaskSet,
	hash: string,
	tasks: readonly SetTask[],
	code: string,
	kept: KeptDraws
): readonly SetTask[] {
	const used = new Set<string>();
	return tasks.map((base) => {
		const { id, family } = base.task;
		if (id.rev !== family.rev) return keptOwn(set, base, code, kept);
		for (let n = 0; n < tries; n++) {
			const seed = randomFrom(`own ${hash} ${base.place} ${n} ${code}`).int(0, seedCount - 1);
			const task = drawTask(family, id.level, seed);
			const numbers = numbersIn(givensOf(task));
			if (used.has(numbers) || !asksAlike(task, base.task)) continue;
			const question = base.question && questionFor(task);
			if (base.question && question?.key !== base.question.key) continue;
			used.add(numbers);
			return { ...base, task: heldTo(task, set.within), question };
		}
		throw new SetError(
			`Task ${base.place} of the set has too few other numbers; give all students the same.`
		);
	});
}

/** @throws SetError where this device has not kept what the code's task drew */
function keptOwn(set: TaskSet, base: SetTask, code: string, kept: KeptDraws): SetTask {
	const { place, task } = base;
	const before = kept.at(code, place);
	const again = before && keptTask(set, task.family, before);
	if (again && asksAlike(again.task, task)) {
		return { ...base, task: heldTo(again.task, set.within), question: again.question };
	}
	throw new SetError(
		`Task ${place} of ${code}: “${task.family.name}” draws other numbers since an update, and this device has not kept those of ${code}; restore a backup that has them, or mark that sheet by hand.`
	);
}

function asksAlike(one: Task, other: Task): boolean {
	const asked = (task: Task) => [...task.drawn.asked, '', ...stepsOf(task)].join(' ');
	return asked(one) === asked(other);
}
