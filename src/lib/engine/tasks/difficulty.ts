import { functionPlaces } from '../trade/functions.ts';
import type { Step } from '../solver/method.ts';
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
	const steps = worked.flatMap((key) => method.steps[key] ?? []);
	return {
		steps: worked.length + drawn.asked.length,
		lookUps: steps.filter(({ formula }) => namesIn(formula).some(isLookUp)).length,
		conversions: steps.filter(isConversion).length,
		digits: digitsIn(task) / 10,
		distractors: idleGivens(task, steps) + (drawn.told ?? []).length
	};
}

/** How hard a task is, as one number: the sum of what makes it hard. */
export function difficultyOf(features: Features): number {
	return Object.values(features).reduce((sum: number, one: number) => sum + one, 0);
}

const lookUps = new Set(
	[...functionPlaces].flatMap(([name, { file }]) => (file.startsWith('./tables/') ? [name] : []))
);

function isLookUp(name: string): boolean {
	return lookUps.has(name);
}

/** Rounding to a size or a whole number, and counting in a unit that the formula names. */
function isConversion({ formula }: Step): boolean {
	const rounds = namesIn(formula).some((name) => ['upTo', 'downTo', 'nearest'].includes(name));
	return rounds || /[*/] \([\d/.]+ in\)/.test(formula);
}

function namesIn(formula: string): string[] {
	return formula.match(/[A-Za-z]\w*/g) ?? [];
}

/** Givens that no step on the way to what is asked reads. */
function idleGivens({ method, drawn }: Task, steps: readonly Step[]): number {
	const read = new Set(steps.flatMap(({ formula }) => namesIn(formula)));
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
