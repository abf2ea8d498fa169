import type { SkillId } from '../schedule/skill.ts';
import type { MissedStep } from './missed-steps.ts';

/*
 * How the report hands on what a class missed: `/sets/new/?missed=piece/grip,rivet-row/run`, the
 * skills of the steps that most students missed, with commas between, most missed first.
 */

/** Steps that are taken up again at most. */
export const stepsAgain = 3;

/** The skills to take up again, as they stand in the address; empty where nothing was missed. */
export function writeMissed(missed: readonly Pick<MissedStep, 'skill'>[]): string {
	return missed
		.slice(0, stepsAgain)
		.map(({ skill }) => skill)
		.join(',');
}

/** The skills in an address; what is none is left out. */
export function readMissed(text: string): SkillId[] {
	return text.split(',').filter((skill) => /^[\w-]+\/[\w-]+$/.test(skill));
}
