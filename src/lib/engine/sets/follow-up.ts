import { readWish, type Wish } from './compose.ts';
import type { MissedStep } from './missed-steps.ts';
import type { OpenSet } from './open-set.ts';
import { SetError } from './set-error.ts';

/*
 * What a class is given again: tasks of the families and levels in which it missed most. The page
 * that composes sets reads it from its address: `?missed=RL2*2,LR3*2`, wishes as the command line
 * takes them, with commas between. That is the whole format, and it stands here alone.
 */

/** Steps that are taken up again: those that most students missed. */
export const stepsAgain = 3;

/** Tasks for the step that most missed, and for those after it. */
const tasksEach = [4, 2, 2];

/** The tasks that ask for what was missed; none where nothing was. */
export function followUp(open: OpenSet, missed: readonly MissedStep[]): Wish[] {
	const wishes = new Map<string, Wish>();
	for (const [i, { places }] of missed.slice(0, stepsAgain).entries()) {
		const count = tasksEach[i] ?? 0;
		for (const [at, place] of places.slice(0, count).entries()) {
			const task = open.tasks[place - 1]?.task;
			if (!task) continue;
			const { code, level } = task.id;
			const own = shareOf(count, Math.min(places.length, count), at);
			const before = wishes.get(code + level)?.count ?? 0;
			wishes.set(code + level, { code, level, count: before + own });
		}
	}
	return [...wishes.values()];
}

/** What the one at `at` gets when `count` are dealt to so many in turn. */
function shareOf(count: number, among: number, at: number): number {
	return Math.floor(count / among) + (at < count % among ? 1 : 0);
}

/** The wishes as they stand in an address. */
export function writeMissed(wishes: readonly Wish[]): string {
	return wishes.map(({ code, level, count }) => `${code}${level}*${count}`).join(',');
}

/** The wishes in an address; null where they are none. */
export function readMissed(text: string): Wish[] | null {
	try {
		return text.split(',').map(readWish);
	} catch (error) {
		if (error instanceof SetError) return null;
		throw error;
	}
}
