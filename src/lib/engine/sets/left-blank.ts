import type { MarkedHandIn } from './collect.ts';
import type { OpenSet } from './open-set.ts';

/** A task that students left blank altogether: whether they could do it nobody knows. */
export interface LeftBlank {
	readonly place: number;
	/** What its kind is called. */
	readonly name: string;
	/** Its kind: `RL2`. */
	readonly kind: string;
	readonly codes: readonly string[];
}

/** The tasks that somebody left blank, most students first. */
export function leftBlank(open: OpenSet, handIns: readonly MarkedHandIn[]): LeftBlank[] {
	return open.tasks
		.map(({ place, task }) => ({
			place,
			name: task.family.name,
			kind: `${task.id.code}${task.id.level}`,
			codes: handIns.filter((one) => isBlankAt(one, place)).map(({ code }) => code)
		}))
		.filter(({ codes }) => codes.length > 0)
		.sort((a, b) => b.codes.length - a.codes.length);
}

function isBlankAt({ tasks }: MarkedHandIn, at: number): boolean {
	const mark = tasks.find(({ place }) => place === at);
	return mark !== undefined && mark.answers.every(({ entry }) => entry.trim() === '');
}

/** Those to take up again with the class: left blank by half of it, or by more. */
export function blankAgain(blank: readonly LeftBlank[], students: number): LeftBlank[] {
	return blank.filter(({ codes }) => 2 * codes.length >= students);
}
