import { minutesOf } from './words.ts';

/** What was done on a day. */
export interface Done {
	readonly tasks: number;
	/** Seconds of practice. */
	readonly seconds: number;
}

export interface PracticeDay {
	readonly day: number;
	readonly tasks: number;
	readonly minutes: number;
}

const length = 28;

/** Every day of the last four weeks; after a longer pause, of the four up to the last practice. */
export function fourWeeks(days: ReadonlyMap<number, Done>, today: number): PracticeDay[] {
	const newest = Math.max(0, ...[...days.keys()].filter((day) => day <= today));
	const last = newest === 0 || newest > today - length ? today : newest;
	return Array.from({ length }, (_, i) => {
		const day = last - length + 1 + i;
		const { tasks, seconds } = days.get(day) ?? { tasks: 0, seconds: 0 };
		return { day, tasks, minutes: minutesOf(seconds) };
	});
}
