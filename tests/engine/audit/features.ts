import type { Family } from '../../../src/lib/engine/families/family.ts';
import type { Level } from '../../../src/lib/engine/families/level.ts';
import type { Step } from '../../../src/lib/engine/solver/method.ts';
import { givenRows } from '../../../src/lib/engine/tasks/given-rows.ts';
import { drawTask, stepsOf, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { functionPlaces } from '../../../src/lib/engine/trade/functions.ts';

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

/** One level of a family over many draws. */
export interface LevelAudit {
	readonly code: string;
	readonly level: Level;
	/** Tasks that differ in their numbers, in what is told or in what is asked. */
	readonly tasks: number;
	readonly stories: number;
	/** Means over the draws. */
	readonly features: Features;
	readonly difficulty: number;
	/** Whether every draw names chief slips. */
	readonly chief: boolean;
}

export const fewestTasks = 60;
export const fewestStories = 6;

/** A smaller rise from level to level is chance of the draws. */
export const leastRise = 0.25;

const drawsEach = 600;

export function auditOf(family: Family, level: Level): LevelAudit {
	const tasks = Array.from({ length: drawsEach }, (_, i) => drawTask(family, level, i * 1747));
	const features = meanOf(tasks.map(featuresOf));
	const { method } = family;
	return {
		code: family.code,
		level,
		tasks: new Set(
			tasks.map(({ drawn: { given, asked, told, question, labels } }) =>
				JSON.stringify([method.id, given, asked, told ?? [], question, labels ?? {}])
			)
		).size,
		stories: new Set(tasks.map(({ drawn }) => drawn.story)).size,
		features,
		difficulty: Object.values(features).reduce((sum: number, one: number) => sum + one, 0),
		chief: tasks.every(({ drawn }) => Object.keys(drawn.chief ?? {}).length > 0)
	};
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

function meanOf(all: readonly Features[]): Features {
	const mean = (key: keyof Features) =>
		all.reduce((sum, features) => sum + features[key], 0) / Math.max(1, all.length);
	return {
		steps: mean('steps'),
		lookUps: mean('lookUps'),
		conversions: mean('conversions'),
		digits: mean('digits'),
		distractors: mean('distractors')
	};
}
