import { cardByCode, loadFamily } from '../families/catalogue.ts';
import type { Card } from '../families/topics.ts';
import type { Level } from '../families/level.ts';
import { stepsOf, type Task } from '../tasks/task.ts';
import { drawDealt, type Place } from './deal.ts';
import { mostTasks, readSet, type TaskSet } from './set.ts';
import { SetError } from './set-error.ts';

/** So many tasks of a family at a level. */
export interface Wish {
	readonly code: string;
	readonly level: Level;
	readonly count: number;
	/** Marks of the steps in order, or one number for the whole task; a mark a step unless told. */
	readonly marks?: readonly number[];
}

/** What an instructor settles about a set besides its tasks. */
export type Terms = Omit<TaskSet, 'tasks'>;

/** The terms of a set. */
export function termsOf(set: TaskSet): Terms {
	const { title, seed, order, numbers, answers, help, due, within, tolerance, note } = set;
	const own = within ? { within } : {};
	return { title, seed, order, numbers, answers, help, due, ...own, tolerance, note };
}

/** Terms where nothing else is said. */
export function plainTerms(title: string): Terms {
	return {
		title,
		seed: title,
		order: 'fixed',
		numbers: 'same',
		answers: 'typed',
		help: true,
		due: null,
		tolerance: '',
		note: ''
	};
}

/**
 * Reads a wish: `RL2*3` is three tasks of family RL at level 2, `RL2` one; `RL2*3=1,2,1` gives the
 * marks of their steps, `RL2*3=6` those of each whole task.
 *
 * @throws SetError
 */
export function readWish(typed: string): Wish {
	const parts = /^([A-Z]{2})([1-3])(?:[*×X](\d{1,3}))?(?:=(\d{1,3}(?:,\d{1,3})*))?$/.exec(
		typed.trim().toUpperCase()
	);
	if (!parts) {
		throw new SetError('Write tasks as family, level and how many, such as RL2*3.');
	}
	const [, code = '', level, count = '1', marks] = parts;
	cardOf(code);
	const wish: Wish = {
		code,
		level: Number(level) as Level,
		count: Number(count),
		...(marks === undefined ? {} : { marks: marks.split(',').map(Number) })
	};
	if (wish.count < 1 || wish.count > mostTasks) {
		throw new SetError(`A set has 1 to ${mostTasks} tasks; ${code}${level} asks for ${count}.`);
	}
	return wish;
}

/** @throws SetError when no family has the code */
function cardOf(code: string): Card {
	const card = cardByCode(code);
	if (!card) throw new SetError(`No family of tasks has the code ${code}.`);
	return card;
}

/**
 * A set with fresh tasks for the wishes, in their order; a mark for every step. The same seed text
 * and wishes give the same tasks, whatever other wishes or families there are.
 *
 * @throws SetError where the wishes or terms cannot be met
 */
export async function composeSet(terms: Terms, wishes: readonly Wish[]): Promise<TaskSet> {
	const count = wishes.reduce((sum, wish) => sum + wish.count, 0);
	if (count < 1 || count > mostTasks) throw new SetError(`A set has 1 to ${mostTasks} tasks.`);
	const places = await placesFor(wishes);
	const tasks = drawDealt(terms.seed === '' ? terms.title : terms.seed, places, (task) => task);
	const marks = wishes.flatMap((wish) => Array.from({ length: wish.count }, () => wish.marks));
	const reading = readSet({ ...terms, tasks: tasks.map((task, i) => markedTask(task, marks[i])) });
	if (!reading.ok) throw new SetError(reading.sentence);
	return reading.set;
}

async function placesFor(wishes: readonly Wish[]): Promise<Place[]> {
	const places: Place[] = [];
	const copies = new Map<string, number>();
	for (const { code, level, count } of wishes) {
		const family = await loadFamily(cardOf(code));
		for (let i = 0; i < count; i++) {
			const copy = copies.get(code + level) ?? 0;
			copies.set(code + level, copy + 1);
			places.push({ family, level, copy });
		}
	}
	return places;
}

/**
 * A task as a set holds it, a mark for every step unless told.
 *
 * @throws SetError where there are marks for another number of steps
 */
function markedTask(task: Task, marks?: readonly number[]): TaskSet['tasks'][number] {
	const steps = stepsOf(task);
	const [whole = 0] = marks ?? [];
	if (!marks) return plainTask(task);
	if (marks.length === 1) return { number: task.number, marks: spreadMarks(whole, steps.length) };
	if (marks.length === steps.length) return { number: task.number, marks: [...marks] };
	const { code, level } = task.id;
	throw new SetError(
		`${code}${level} has ${steps.length} steps, ${steps.join(', ')}: give a mark for each, or one number for the task.`
	);
}

/** A task as a set holds it, a mark for every step. */
export function plainTask(task: Task): TaskSet['tasks'][number] {
	return { number: task.number, marks: stepsOf(task).map(() => 1) };
}

/** The marks of a whole task over its steps, as evenly as can be; what is over goes to the last. */
export function spreadMarks(whole: number, steps: number): number[] {
	const each = Math.floor(whole / steps);
	const over = whole - each * steps;
	return Array.from({ length: steps }, (_, i) => each + Number(i >= steps - over));
}
