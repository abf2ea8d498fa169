import { randomFrom } from '../families/random.ts';
import { givensOf, numbersIn } from '../tasks/givens.ts';
import { seedCount, TaskNumberError } from '../tasks/task-number.ts';
import { drawTask, stepsOf, type Task, taskFromNumber } from '../tasks/task.ts';
import { heldTo } from './own-tolerance.ts';
import { type Question, questionOn } from './rehearsal.ts';
import { marksOf, setHash, type TaskSet } from './set.ts';
import { SetError } from './set-error.ts';
import { shuffled } from './shuffled.ts';

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
 * Draws the tasks of a set.
 *
 * @throws SetError where a task is gone or of another revision
 */
export async function openSet(set: TaskSet): Promise<OpenSet> {
	const hash = setHash(set);
	const tasks: SetTask[] = [];
	for (const [i, { number, marks }] of set.tasks.entries()) {
		const task = await taskAt(i + 1, number);
		if (marks.length !== stepsOf(task).length) {
			throw new SetError(
				`Task ${i + 1} of the set has ${stepsOf(task).length} steps and marks for ${marks.length}; make the set again.`
			);
		}
		const question = questionIn(set, task);
		tasks.push({ place: i + 1, task: heldTo(task, set.within), marks, question });
	}
	const forCode = (code: string) => {
		const own = set.numbers === 'own' ? ownNumbers(set, hash, tasks, code) : tasks;
		if (set.order === 'fixed') return own;
		const random = randomFrom(`order ${hash} ${code}`);
		return shuffled(own, (limit) => random.int(0, limit - 1));
	};
	const drawn = new Map<string, readonly SetTask[]>();
	const once = (code: string) => {
		const own = drawn.get(code) ?? forCode(code);
		drawn.set(code, own);
		return own;
	};
	return { set, hash, of: marksOf(set), tasks, for: once };
}

async function taskAt(place: number, number: string): Promise<Task> {
	try {
		return await taskFromNumber(number);
	} catch (error) {
		if (!(error instanceof TaskNumberError)) throw error;
		throw new SetError(`Task ${place} of the set, ${number}: ${error.message}`);
	}
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
	code: string
): readonly SetTask[] {
	const used = new Set<string>();
	return tasks.map((base) => {
		const { id, family } = base.task;
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

function asksAlike(one: Task, other: Task): boolean {
	const asked = (task: Task) => [...task.drawn.asked, '', ...stepsOf(task)].join(' ');
	return asked(one) === asked(other);
}
