import type { Family } from '../families/family.ts';
import { type Level, levels } from '../families/level.ts';
import { compiledOf } from '../solver/compiled.ts';
import type { Method } from '../solver/method.ts';
import { averageSeconds, difficultyOf, featuresOf, secondsFor } from '../tasks/difficulty.ts';
import { drawTask, type Task } from '../tasks/task.ts';
import type { Skill, SkillId, Syllabus, TaskKind } from './skill.ts';

/** Draws looked at to see what a family asks for at a level; it may vary from draw to draw. */
const samples = 6;

/** The skill of one step of a method: its piece, or the step itself. */
export function skillOf(method: Method, step: string): SkillId {
	return method.steps[step]?.skill ?? `${method.id}/${step}`;
}

/**
 * All that can be practised, from the families themselves: a skill for every step that is asked
 * or leads to what is asked, and a kind of task for every family and level, easy ones first. A
 * skill needs the skills of the earlier steps that its formula uses, in every method it is part of.
 */
export function syllabusOf(families: readonly Family[]): Syllabus {
	const drawn = levels.flatMap((level) =>
		families.map((family) => ({ family, level, tasks: tasksOf(family, level) }))
	);
	const sure = new Set(drawn.flatMap(({ tasks }) => inEvery(skillSets(tasks))));
	const kinds = drawn.map(({ family, level, tasks }) => kindOf(family, level, tasks, sure));
	const exercised = new Set(kinds.flatMap((kind) => kind.skills));
	const skills = new Map<SkillId, Skill>();
	for (const family of families) {
		const tasks = drawn.filter((one) => one.family === family).flatMap((one) => one.tasks);
		for (const method of new Set([family.method, ...tasks.map((task) => task.method)])) {
			for (const step of Object.keys(method.steps)) {
				const id = skillOf(method, step);
				const needs = needsOf(method, step).map((need) => skillOf(method, need));
				const before = skills.get(id);
				if (!exercised.has(id)) continue;
				if (!before) skills.set(id, { id, topic: family.topic, needs });
				else
					skills.set(id, { ...before, needs: before.needs.filter((one) => needs.includes(one)) });
			}
		}
	}
	return { skills: [...skills.values()], kinds };
}

function tasksOf(family: Family, level: Level): Task[] {
	return Array.from({ length: samples }, (_, seed) => drawTask(family, level, seed));
}

/**
 * A kind whose tasks come by several methods exercises what each of them does, and of the rest what
 * no kind does in every task: a step that came up by chance only would not be practised when planned.
 */
function kindOf(
	{ code }: Family,
	level: Level,
	tasks: readonly Task[],
	sure: ReadonlySet<SkillId>
): TaskKind {
	const sets = skillSets(tasks);
	const each = new Set(inEvery(sets));
	const some = new Set(sets.flatMap((skills) => [...skills]));
	const skills = [...some].filter((skill) => each.has(skill) || !sure.has(skill));
	const length = lengthOf(tasks);
	const kind = { id: `${code}${level}`, family: code, aim: skills.at(-1) ?? '', skills };
	return length > 1 ? { ...kind, length } : kind;
}

/** As many tasks of average length as these take as long as. */
function lengthOf(tasks: readonly Task[]): number {
	const seconds = tasks.map((task) => secondsFor(difficultyOf(featuresOf(task))));
	const mean = seconds.reduce((sum, one) => sum + one, 0) / seconds.length;
	return Math.floor(mean / averageSeconds);
}

/** The skills that tasks exercise, a set for each method they come by, in the order of steps. */
function skillSets(tasks: readonly Task[]): Set<SkillId>[] {
	return [...new Set(tasks.map((task) => task.method))].map((method) => {
		const own = tasks.filter((task) => task.method === method);
		const asked = new Set(own.flatMap(({ drawn }) => drawn.asked));
		const leading = new Set([...asked].flatMap((key) => leadingTo(method, key)));
		const steps = Object.keys(method.steps).filter((step) => leading.has(step));
		return new Set(steps.map((step) => skillOf(method, step)));
	});
}

function inEvery([first, ...others]: readonly Set<SkillId>[]): SkillId[] {
	return [...(first ?? [])].filter((skill) => others.every((skills) => skills.has(skill)));
}

/** The steps that a right answer to `key` speaks for: those its formula rests on, itself last. */
export function leadingTo(method: Method, key: string): string[] {
	const steps = Object.keys(method.steps);
	const wanted = new Set([key]);
	for (const step of [...steps].reverse()) {
		if (wanted.has(step)) for (const need of needsOf(method, step)) wanted.add(need);
	}
	return steps.filter((step) => wanted.has(step));
}

/** Earlier steps that a step's formula uses. */
export function needsOf(method: Method, step: string): string[] {
	const order = Object.keys(method.steps);
	const earlier = new Set(order.slice(0, order.indexOf(step)));
	const needs = compiledOf(method).steps[step]?.needs ?? [];
	return needs.filter((name) => earlier.has(name));
}
