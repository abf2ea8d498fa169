import type { SkillId } from '../schedule/skill.ts';
import type { LeftBlank } from './left-blank.ts';
import type { MissedStep } from './missed-steps.ts';

/*
 * How the report hands on what a class missed: `/sets/new/?missed=piece/grip,rivet-row/run`, the
 * skills of the steps that most students missed, with commas between, most missed first, and the kinds
 * of task that half of the class left blank: `RJ2*2`.
 */

/** Steps that are taken up again at most. */
export const stepsAgain = 3;

/** Tasks of each kind that was left blank. */
const tasksEach = 2;

/** The skills to take up again, as they stand in the address; empty where nothing was missed. */
export function writeMissed(
	missed: readonly Pick<MissedStep, 'skill'>[],
	blank: readonly Pick<LeftBlank, 'kind'>[] = []
): string {
	const skills = missed.slice(0, stepsAgain).map(({ skill }) => skill);
	const kinds = [...new Set(blank.slice(0, stepsAgain).map(({ kind }) => kind))];
	return [...skills, ...kinds.map((kind) => `${kind}*${tasksEach}`)].join(',');
}

/** The skills in an address; what is none is left out. */
export function readMissed(text: string): SkillId[] {
	return text.split(',').filter((skill) => /^[\w-]+\/[\w-]+$/.test(skill));
}
