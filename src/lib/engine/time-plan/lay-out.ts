import { dayOf } from '../schedule/day.ts';
import type { TimeSettings } from '../schedule/time-plan-events.ts';
import type { TimeStep } from './steps.ts';

/** Minutes since 1970-01-01, by the clock on the wall where the person is. */
export type Moment = number;

const dayLength = 1440;

export interface Stretch {
	readonly from: Moment;
	readonly to: Moment;
}

export function momentOf(day: string, minute: number): Moment {
	return dayOf(day) * dayLength + minute;
}

/** Day number and minute of the day. */
export function partsOf(moment: Moment): { readonly day: number; readonly minute: number } {
	const day = Math.floor(moment / dayLength);
	return { day, minute: moment - day * dayLength };
}

/** A step and when it is worked on. */
export interface Placed {
	readonly step: TimeStep;
	readonly pieces: readonly Stretch[];
	/** Minutes of it that find no time before the hand-in. */
	readonly late: number;
}

export interface TimeLayout {
	/** Time at the bench from now to the hand-in. */
	readonly bench: readonly Stretch[];
	/** Every step, also those that are done or left out. */
	readonly placed: readonly Placed[];
	/** Minutes of work left. */
	readonly work: number;
	/** Minutes of time left. */
	readonly time: number;
	/** Time less work: below zero, minutes that are missing. */
	readonly slack: number;
	/** Steps whose leaving out makes it fit, last first; empty where it fits or they do not help. */
	readonly drop: readonly TimeStep[];
}

/** Lays what is left of the steps into the time at the bench, one after the other. */
export function layOut(
	steps: readonly TimeStep[],
	{ due, times }: Pick<TimeSettings, 'due' | 'times'>,
	now: Moment
): TimeLayout {
	const end = due ? momentOf(due.day, due.time) : Infinity;
	const bench = benchTime(times, now, end);
	const work = sum(steps.map(({ left }) => left));
	const time = sum(bench.map(({ from, to }) => to - from));
	const slack = time - work;
	return { bench, placed: placedIn(steps, bench), work, time, slack, drop: dropped(steps, slack) };
}

/** Working times between two moments, in order; times that overlap are one. */
export function benchTime(times: TimeSettings['times'], now: Moment, end: Moment): Stretch[] {
	const all = times
		.map(({ day, from, to }) => ({
			from: Math.max(momentOf(day, from), now),
			to: Math.min(momentOf(day, to), end)
		}))
		.filter(({ from, to }) => to > from)
		.sort((a, b) => a.from - b.from);
	const joined: Stretch[] = [];
	for (const one of all) {
		const last = joined.at(-1);
		if (last && one.from <= last.to) {
			joined[joined.length - 1] = { from: last.from, to: Math.max(last.to, one.to) };
		} else joined.push(one);
	}
	return joined;
}

function placedIn(steps: readonly TimeStep[], bench: readonly Stretch[]): Placed[] {
	let turn = 0;
	let at = bench[0]?.from ?? 0;
	return steps.map((step) => {
		const pieces: Stretch[] = [];
		let left = step.left;
		for (let here = bench[turn]; left > 0 && here; here = bench[turn]) {
			const from = Math.max(at, here.from);
			const to = Math.min(from + left, here.to);
			if (to > from) pieces.push({ from, to });
			left -= to - from;
			at = to;
			if (to === here.to) turn += 1;
		}
		return { step, pieces, late: left };
	});
}

/** What can wait, from the end, until the rest fits. */
function dropped(steps: readonly TimeStep[], slack: number): TimeStep[] {
	const drop: TimeStep[] = [];
	let missing = -slack;
	for (const step of [...steps].reverse()) {
		if (missing <= 0) break;
		if (!step.canWait || step.left === 0) continue;
		drop.push(step);
		missing -= step.left;
	}
	return drop;
}

function sum(all: readonly number[]): number {
	return all.reduce((total, one) => total + one, 0);
}

/** What there is to do on a day. */
export interface DayWork {
	readonly from: Moment;
	readonly minutes: number;
	readonly step: TimeStep;
	/** Whether it is not finished that day. */
	readonly begins: boolean;
}

export function workOn(day: number, { placed }: TimeLayout): DayWork[] {
	return placed.flatMap(({ step, pieces, late }) =>
		pieces
			.filter(({ from }) => partsOf(from).day === day)
			.map((piece) => ({
				from: piece.from,
				minutes: piece.to - piece.from,
				step,
				begins: piece !== pieces.at(-1) || late > 0
			}))
	);
}
