import type { Family } from '../families/family.ts';
import { drawTask } from '../tasks/task.ts';
import { type Level, levels } from '../families/level.ts';
import type { Method } from '../solver/method.ts';
import type { Skill, SkillId, Syllabus, TaskKind } from './skill.ts';

/** Draws looked at to see what a family asks for at a level; it may vary from draw to draw. */
const samples = 6;

/** The skill of one step of a method. */
export function skillOf(method: Method, step: string): SkillId {
	return `${method.id}/${step}`;
}

/** Method id and step of a skill. */
export function partsOf(skill: SkillId): { readonly method: string; readonly step: string } {
	const [method = '', step = ''] = skill.split('/');
	return { method, step };
}

/**
 * All that can be practised, from the families themselves: a skill for every step that is asked
 * or leads to what is asked, and a kind of task for every family and level, easy ones first. A
 * step needs the earlier steps that its formula uses.
 */
export function syllabusOf(families: readonly Family[]): Syllabus {
	const kinds = levels.flatMap((level) => families.map((family) => kindOf(family, level)));
	const exercised = new Set(kinds.flatMap((kind) => kind.skills));
	const skills = new Map<SkillId, Skill>();
	for (const { method, topic } of families) {
		for (const step of Object.keys(method.steps)) {
			const id = skillOf(method, step);
			const needs = needsOf(method, step).map((need) => skillOf(method, need));
			if (exercised.has(id)) skills.set(id, { id, topic, needs });
		}
	}
	return { skills: [...skills.values()], kinds };
}

function kindOf(family: Family, level: Level): TaskKind {
	const { method, code } = family;
	const draws = Array.from({ length: samples }, (_, seed) => drawTask(family, level, seed).drawn);
	const asked = new Set(draws.flatMap((drawn) => drawn.asked));
	const leading = new Set([...asked].flatMap((key) => leadingTo(method, key)));
	const steps = Object.keys(method.steps).filter((step) => leading.has(step));
	const skills = steps.map((step) => skillOf(method, step));
	return { id: `${code}${level}`, family: code, aim: skills.at(-1) ?? '', skills };
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
	const names = method.steps[step]?.formula.match(/[A-Za-z]\w*/g) ?? [];
	return [...new Set(names)].filter((name) => earlier.has(name));
}
