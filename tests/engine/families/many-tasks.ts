import type { Family, Outcome } from '../../../src/lib/engine/families/family.ts';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { type Level, levels } from '../../../src/lib/engine/families/level.ts';
import { boundsOf } from '../../../src/lib/engine/figures/to-svg.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { exactly } from '../../../src/lib/engine/quantity/exact.ts';
import { howMany } from './how-many.ts';
import type { Value } from '../../../src/lib/engine/quantity/value.ts';

/** The tasks of the family asked for last: a test file asks for the same ones again and again. */
let drawn: { readonly family: Family; readonly tasks: Map<Level, readonly Task[]> } | null = null;

/** Many tasks of a family at a level; more where something rare must be among them. */
export function manyTasks(family: Family, level: Level, count = howMany): readonly Task[] {
	if (drawn?.family !== family) drawn = { family, tasks: new Map() };
	const known = drawn.tasks.get(level) ?? [];
	const more = Array.from({ length: Math.max(count - known.length, 0) }, (_, i) =>
		drawTask(family, level, (known.length + i) * 3491)
	);
	const tasks = [...known, ...more];
	drawn.tasks.set(level, tasks);
	return tasks.slice(0, count);
}

/** Many tasks of every level. */
export function allTasks(family: Family): Task[] {
	return levels.flatMap((level) => manyTasks(family, level));
}

/** A given of a task as a number. */
export function givenAt(task: Task, key: string): number {
	return Number((task.drawn.given as Readonly<Record<string, Value>>)[key]);
}

/** What an answer does to the metal, in inches; null where the family draws nothing. */
export function outcomeOf(task: Task, key: string, entered: Value): Outcome | null {
	return effectOf(task, key, entered)?.entered ?? null;
}

/** Width and height of an outcome's drawing, lettering included, in drawing units. */
export function sizeOf({ drawing }: Outcome): { width: number; height: number } {
	const { left, top, right, bottom } = boundsOf(drawing.shapes);
	return { width: right - left, height: bottom - top };
}

/**
 * Slips named for a value typed to six places: one, two together, or two of which either may be
 * it. None when the value is right or no slip explains it.
 */
export function slipsNamed(task: Task, key: string, value: number): readonly string[] {
	return slipsOf(task, { [key]: value }, key);
}

/** The same for one of several values typed. */
export function slipsOf(
	task: Task,
	typed: Readonly<Record<string, number>>,
	key: string
): readonly string[] {
	const entries = Object.entries(typed).map(([at, value]) => [
		at,
		{ value: exactly(value), grain: 5e-7 }
	]);
	const verdict = mark(task, Object.fromEntries(entries))[key];
	if (verdict?.kind !== 'rework') return [];
	const { cause } = verdict;
	return cause.kind === 'slip' || cause.kind === 'either' ? cause.slips : [];
}
