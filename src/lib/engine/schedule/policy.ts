import { type Memory, recallLeft } from './memory.ts';

/**
 * The numbers of the plan. They were chosen by simulation (`tests/bench/learning`), which runs these
 * very functions with other numbers beside them. `SHIPPED` had the best worst case among those that
 * let misses return in the same run.
 */
export interface Policy {
	/** Share of all time until the exam that is kept for the final sweep. */
	readonly sweepShare: number;
	/** Study days of the final sweep; fewer in a course of less than four times as many days. */
	readonly sweepDays: number;
	/** The most a sweep day may take, as a multiple of the minutes a day. */
	readonly sweepCap: number;
	/**
	 * How far FSRS stability sets the order: 1 is lowest expected recall first, 0 is longest unseen
	 * first. Its constants come from facts, not from computations with fresh numbers.
	 */
	readonly trust: number;
	/**
	 * Rest a met skill gets before it goes ahead of a new one, in days, for a course of one day; it
	 * grows with the root of the course. The best gap between two practices grows with the time to
	 * the test, but ever more slowly (Cepeda and others 2008).
	 */
	readonly rest: number;
	/**
	 * The same for a skill that was missed and not put right on a later day, whatever the course:
	 * whoever misses something on Wednesday meets it again on Friday.
	 */
	readonly missRest: number;
	/**
	 * Steps of every topic, or all it has, that are met before anything else is practised while an exam
	 * lies ahead: nobody goes into an exam without having seen a topic of it. 0 leaves the order of new
	 * steps to the syllabus.
	 */
	readonly firstSteps: number;
	/** Grasp wanted before others are built on a skill: right twice, or right after a miss. */
	readonly inHand: number;
	/**
	 * Share of a run that may be returns of misses, when a skill met before is missed. Small: in four
	 * of the five worlds of the bench a second try on another day was worth more.
	 */
	readonly returns: number;
	/** The same when a skill first met in this run is missed. */
	readonly newReturns: number;
	/** Without an exam ahead a skill is due when its recall has fallen to this. */
	readonly retention: number;
}

export const SHIPPED: Policy = {
	sweepShare: 0.25,
	sweepDays: 3,
	sweepCap: 2,
	trust: 0.25,
	rest: 1.5,
	missRest: 2,
	firstSteps: 1,
	inHand: 0.7,
	returns: 0.1,
	newReturns: 0.25,
	retention: 0.9
};

/**
 * How pressing it is to practise a met skill: days since it was last seen, counted longer where it
 * fades faster. A skill just missed fades fastest, so it comes up well before one that was right.
 */
export function urgency(memory: Memory, day: number, policy: Policy): number {
	const rested = Math.max(0, day - Math.floor(memory.lastDay));
	return rested / memory.stability ** policy.trust;
}

/** The urgency at which a met skill goes ahead of a new one, in a course of so many days. */
export function urgencyOfNew(courseDays: number, policy: Policy): number {
	return policy.rest * Math.sqrt(courseDays);
}

/** Whether a skill goes ahead of new ones because it was missed. */
export function isOwed({ missedDay, lastDay }: Memory, day: number, policy: Policy): boolean {
	return missedDay !== null && day - Math.floor(lastDay) >= policy.missRest;
}

/** Whether a met skill is due when no exam lies ahead. */
export function isDue(memory: Memory, day: number, policy: Policy): boolean {
	return recallLeft(memory, day) < policy.retention;
}
