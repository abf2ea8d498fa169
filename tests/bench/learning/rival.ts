import type { Timetable } from './timetable.ts';

/** One learner's practice under a policy: it is asked for the next skill and told every answer. */
export interface Tutor {
	open(day: number): void;
	/** The next skill to try; undefined when the day is done. */
	next(): number | undefined;
	saw(skill: number, right: boolean, day: number): void;
}

/** A policy: a way to spend so many problems before the exam. */
export interface Rival {
	readonly id: string;
	readonly label: string;
	tutor(problems: number, timetable: Timetable): Tutor;
	/** The days it works on, where they are not the timetable's. */
	days?(timetable: Timetable): readonly number[];
}

/** Problems due by the end of the day at `index`, when they are dealt evenly over the days. */
export function dealtBy(index: number, days: number, problems: number): number {
	return Math.round((problems * (index + 1)) / days);
}
