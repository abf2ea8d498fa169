import { compiledOf, type StepWork } from '../solver/compiled.ts';
import { givenRows } from './given-rows.ts';
import { stepsOf, type Task } from './task.ts';

/** What makes a task hard, counted. */
export interface Features {
	/** Steps that are worked to answer it, and answers asked for. */
	readonly steps: number;
	/** Tables read on the way. */
	readonly lookUps: number;
	/** Steps that go over to another scale: 32nds, a whole number, a stocked size. */
	readonly conversions: number;
	/** Significant digits of all given numbers, in tens. */
	readonly digits: number;
	/** What is told and not computed with. */
	readonly distractors: number;
}

export function featuresOf(task: Task): Features {
	const { method, drawn } = task;
	const worked = stepsOf(task);
	const { steps: works } = compiledOf(method);
	const steps = worked.flatMap((key) => works[key] ?? []);
	return {
		steps: worked.length + drawn.asked.length,
		lookUps: steps.filter(({ lookUp }) => lookUp).length,
		conversions: steps.filter(({ conversion }) => conversion).length,
		digits: digitsIn(task) / 10,
		distractors: idleGivens(task, steps) + (drawn.told ?? []).length
	};
}

/** How hard a task is, as one number: the sum of what makes it hard. */
export function difficultyOf(features: Features): number {
	return Object.values(features).reduce((sum: number, one: number) => sum + one, 0);
}

/** Givens that no step on the way to what is asked reads. */
function idleGivens({ method, drawn }: Task, steps: readonly StepWork[]): number {
	const read = new Set(steps.flatMap(({ needs }) => needs));
	return Object.keys(drawn.given).filter(
		(key) => Object.hasOwn(method.given, key) && !read.has(key)
	).length;
}

function digitsIn(task: Task): number {
	const rows = givenRows(task, 'in').slice(0, -(task.drawn.told?.length ?? 0) || undefined);
	return rows.reduce((sum, [, value]) => sum + significant(value), 0);
}

/** Digits that are worked with: `0.032 in` has two, `1/8 in (−4)` too. */
export function significant(value: string): number {
	const plain = value.replace(/\(.*?\)/g, '').replace(/^[^\d]*/, '');
	return (plain.match(/[\d./]+/g) ?? []).reduce(
		(sum, number) => sum + number.replace(/^[0.]+/, '').replace(/\D/g, '').length,
		0
	);
}

/** What a task takes in the middle: of this difficulty, two minutes, as the plan starts from. */
const middle = { difficulty: 8.5, seconds: 120 };

export const averageSeconds = middle.seconds;

/** Seconds that a task of a difficulty takes, about, as long as nobody has been timed. */
export function secondsFor(difficulty: number): number {
	return (middle.seconds * difficulty) / middle.difficulty;
}
