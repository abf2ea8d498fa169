import { chanceOf } from './chance.ts';
import { SKILLS, ground } from './ground.ts';
import type { Learner, World } from './learner.ts';
import type { Rival } from './rival.ts';
import { timetableOf } from './timetable.ts';

/** Days from the exam to the later look. */
export const LATER = 28;

/** One cell of a table: a world under a policy. */
export interface Cell {
	readonly world: World;
	readonly rival: Rival;
	readonly problems: number;
	readonly exam: number;
	/** Share of study days missed, at equal total work. */
	readonly missed: number;
	readonly firstSeed: number;
	readonly learners: number;
}

/** Expected share right, 0 to 1, for each learner. */
export interface Outcome {
	readonly atExam: number[];
	readonly later: number[];
}

/** Every learner of the cell, in the order of the seeds. */
export function simulateCell(cell: Cell): Outcome {
	const outcome: Outcome = { atExam: [], later: [] };
	for (let i = 0; i < cell.learners; i++) {
		const learner = practise(cell, cell.firstSeed + i);
		outcome.atExam.push(shareRight(learner, cell.exam));
		outcome.later.push(shareRight(learner, cell.exam + LATER));
	}
	return outcome;
}

function practise({ world, rival, problems, exam, missed }: Cell, seed: number): Learner {
	const learner = world.learner(chanceOf(`${world.id} ${seed}`), ground);
	const timetable = timetableOf(seed, exam, missed);
	const tutor = rival.tutor(problems, timetable);
	let done = 0;
	for (const day of rival.days?.(timetable) ?? timetable.days) {
		tutor.open(day);
		for (let skill = tutor.next(); skill !== undefined; skill = tutor.next()) {
			tutor.saw(skill, learner.answer(skill, day), day);
			done++;
		}
	}
	// the comparison is worth nothing unless everyone works the same number of problems
	if (done !== problems) throw new Error(`${rival.id}: ${done} problems of ${problems}`);
	return learner;
}

/** Mean chance over all skills that a fresh task is right on that day. */
export function shareRight(learner: Learner, day: number): number {
	let sum = 0;
	for (let skill = 0; skill < SKILLS; skill++) sum += learner.chance(skill, day);
	return sum / SKILLS;
}
