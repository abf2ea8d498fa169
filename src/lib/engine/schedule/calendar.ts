import { type Policy, SHIPPED } from './policy.ts';

/** What the learner settled about time. Days are whole numbers, days since 1970-01-01. */
export interface Course {
	/** The day these settings were made; earlier days are not counted. */
	readonly start: number;
	/** The day of the exam; null when there is none. */
	readonly exam: number | null;
	/** Minutes on an average study day. */
	readonly minutes: number;
	readonly off: DaysOff;
	/** Topics the learner leaves out: they are not planned, and not counted. */
	readonly without?: readonly string[];
}

/** Days without practice. */
export interface DaysOff {
	/** Days of the week, 0 = Sunday to 6 = Saturday. */
	readonly weekdays: readonly number[];
	readonly dates: readonly number[];
}

/**
 * Where a day stands: `build` up to the exam, `sweep` on the last study days before it, `keep` when
 * no exam lies ahead, `off` on a day off.
 */
export type Phase = 'build' | 'sweep' | 'keep' | 'off';

/** One day's share of the course. */
export interface Portion {
	readonly day: number;
	readonly phase: Phase;
	/** The most that day's run may take. */
	readonly seconds: number;
}

/** Day of the week, 0 = Sunday. */
export function weekday(day: number): number {
	return (((day + 4) % 7) + 7) % 7; // day 0, 1 January 1970, was a Thursday
}

export function isOff(off: DaysOff, day: number): boolean {
	return off.weekdays.includes(weekday(day)) || off.dates.includes(day);
}

/** Study days from `from` up to, not including, `until`. */
export function studyDays(off: DaysOff, from: number, until: number): number[] {
	const days: number[] = [];
	for (let day = from; day < until; day++) if (!isOff(off, day)) days.push(day);
	return days;
}

/**
 * Days that are looked ahead or back at most: a date slipped in, or a clock set back by decades,
 * must not have a page reckon with millions of days.
 */
export const FARTHEST = 366;

/**
 * The study days until the exam and what each may take. Together they take the minutes a day times
 * their number; a share is kept for the last days, so those are longer and the others shorter. Time
 * is dealt in whole tasks of `taskSeconds`, so that no day is left with half a task. Nothing is
 * carried over: a missed day is gone.
 */
export function portions(course: Course, taskSeconds: number, policy = SHIPPED): Portion[] {
	if (course.exam === null) return [];
	const days = studyDays(course.off, course.start, course.exam);
	const sweep = Math.min(policy.sweepDays, Math.floor(days.length / 4));
	const build = days.length - sweep;
	const [buildDay, sweepDay] = split(course.minutes * 60, build, sweep, policy);
	// Half a task is rounded up on all days alike, whatever is lost in the last digit.
	const tasksUntil = (i: number) => {
		const seconds = Math.min(i, build) * buildDay + Math.max(0, i - build) * sweepDay;
		return Math.round(seconds / taskSeconds + 1e-9);
	};
	return days.map((day, i) => ({
		day,
		phase: i < build ? 'build' : 'sweep',
		seconds: (tasksUntil(i + 1) - tasksUntil(i)) * taskSeconds
	}));
}

/** What `day` may take. Of a longer course, no more than `FARTHEST` days on each side count. */
export function portionOn(
	course: Course,
	day: number,
	taskSeconds: number,
	policy = SHIPPED
): Portion {
	if (isOff(course.off, day)) return { day, phase: 'off', seconds: 0 };
	const keep: Portion = { day, phase: 'keep', seconds: course.minutes * 60 };
	if (course.exam === null || course.exam <= day) return keep;
	const start = Math.max(Math.min(course.start, day), day - FARTHEST);
	const counted = { ...course, start, exam: Math.min(course.exam, day + FARTHEST) };
	return portions(counted, taskSeconds, policy).find((p) => p.day === day) ?? keep;
}

/** Seconds on a build day and on a sweep day. */
function split(each: number, build: number, sweep: number, policy: Policy): [number, number] {
	if (sweep === 0) return [each, each];
	const total = each * (build + sweep);
	const kept = (total * policy.sweepShare) / sweep;
	const sweepDay = Math.max(each, Math.min(kept, each * policy.sweepCap));
	return [(total - sweepDay * sweep) / build, sweepDay];
}
