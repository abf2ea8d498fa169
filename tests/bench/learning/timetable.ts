import { type DaysOff, studyDays } from '../../../src/lib/engine/schedule/calendar.ts';
import { type Chance, chanceOf } from './chance.ts';

/** When one learner practises. */
export interface Timetable {
	readonly exam: number;
	readonly off: DaysOff;
	/** Days turned up on: the study days, less those missed. Nobody knows beforehand which. */
	readonly days: readonly number[];
}

/** Four days of the seven, drawn by seed and the same for every policy, from day 0 to the exam. */
export function timetableOf(seed: number, exam: number, missed = 0): Timetable {
	const chance = chanceOf(`timetable ${seed}`);
	const off = { weekdays: threeOfSeven(chance), dates: [] };
	const all = studyDays(off, 0, exam);
	const days = all.filter(() => chance.uniform() >= missed);
	return { exam, off, days: days.length > 0 ? days : all.slice(0, 1) };
}

function threeOfSeven(chance: Chance): number[] {
	const week = [0, 1, 2, 3, 4, 5, 6].map((weekday) => ({ weekday, draw: chance.uniform() }));
	week.sort((a, b) => a.draw - b.draw);
	return week.slice(0, 3).map((d) => d.weekday);
}
