import type { Skill, Syllabus, TaskKind } from '../../../src/lib/engine/schedule/skill.ts';

/** Number of skills, and which skills each one rests on. Skills are numbers in the bench. */
export interface Ground {
	readonly skills: number;
	readonly needs: readonly (readonly number[])[];
}

/** Six topics of four skills; each skill after the first of its topic rests on the one before. */
export const TOPICS = 6;
export const LEVELS = 4;
export const SKILLS = TOPICS * LEVELS;

/** Skill numbers run level by level: counting up meets needs first and changes topic each time. */
export const ground: Ground = {
	skills: SKILLS,
	needs: Array.from({ length: SKILLS }, (_, s) => (s < TOPICS ? [] : [s - TOPICS]))
};

const skills: Skill[] = ground.needs.map((needs, s) => ({
	id: String(s),
	topic: String(s % TOPICS),
	needs: needs.map(String)
}));

const kinds: TaskKind[] = skills.map(({ id, topic }) => ({
	id,
	family: topic,
	aim: id,
	skills: [id]
}));

/** The same ground as the planner sees it: one kind of task a skill, one family a topic. */
export const syllabus: Syllabus = { skills, kinds };
