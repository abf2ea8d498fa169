import { type Moment, partsOf, type TimeLayout } from '$lib/engine/time-plan/lay-out.ts';
import { counted } from '../counted.ts';
import { shortDate, tableDate } from '../dates.ts';

/** `9:05` from minutes after midnight. */
export function clock(minute: number): string {
	return `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, '0')}`;
}

/** `35 min`, `5 h`, `5 h 45`, the last never in two lines. */
export function duration(minutes: number): string {
	const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
	if (hours === 0) return `${rest} min`;
	return rest === 0 ? `${hours} h` : `${hours}\u00a0h\u00a0${String(rest).padStart(2, '0')}`;
}

/** `35 minutes`, from an hour on `1 h 05`, as everywhere on the plan. */
function spoken(minutes: number): string {
	return minutes < 60 ? counted(minutes, 'minute') : duration(minutes);
}

/** `Thu 14:10` */
export function dayAndTime(moment: Moment): string {
	const { day, minute } = partsOf(moment);
	return `${tableDate(day).split(' ')[0] ?? ''} ${clock(minute)}`;
}

/** `Mon 30 Nov, 11:00`, and only the time where it is today. */
export function whenSaid(moment: Moment, today: number): string {
	const { day, minute } = partsOf(moment);
	return day === today ? `${clock(minute)} today` : `${tableDate(day)}, ${clock(minute)}`;
}

/** `Thu 26` */
export function dayLabel(day: number): string {
	return `${tableDate(day).split(' ')[0] ?? ''} ${shortDate(day).split(' ')[0] ?? ''}`;
}

export interface Stand {
	/** Whether there is a day to hand in. */
	readonly isDue: boolean;
	/** Whether there are working times, also past ones. */
	readonly hasTimes: boolean;
}

/** How the plan stands, behind the name of the panel. */
export function standing({ work, slack }: TimeLayout, { isDue, hasTimes }: Stand): string {
	if (work === 0) return 'every step is done';
	if (!isDue || !hasTimes) return `${spoken(work)} of work`;
	if (slack === 0) return 'just enough time';
	return slack > 0 ? `${spoken(slack)} to spare` : `${spoken(-slack)} short`;
}

const careful = 'Never drop the coupon, deburring or the inspection.';

/** What to do when it gets late, or is. */
export function whatIfLate(layout: TimeLayout, numberOf: (id: string) => number): string {
	const { slack, drop, placed } = layout;
	if (slack >= 0) {
		const waiting = placed.filter(({ step }) => step.canWait && step.left > 0);
		const names = stepNames(waiting.map(({ step }) => numberOf(step.id)));
		return waiting.length === 0 ? careful : `If it gets late, ${names} can wait. ${careful}`;
	}
	const saved = drop.reduce((all, { left }) => all + left, 0);
	const rest = -slack - saved;
	const more = `find ${duration(rest)} more at the bench or ask for a later hand-in`;
	if (drop.length === 0) return `${spoken(-slack)} are missing: ${more}. ${careful}`;
	const names = stepNames(drop.map(({ id }) => numberOf(id)).reverse());
	const leave = `${spoken(-slack)} are missing: leave ${names} until after the hand-in`;
	return rest <= 0 ? `${leave}. ${careful}` : `${leave}, and ${more}. ${careful}`;
}

function stepNames(numbers: readonly number[]): string {
	const [last, ...before] = [...numbers].reverse();
	if (before.length === 0) return `step ${last ?? ''}`;
	return `steps ${before.reverse().join(', ')} and ${last ?? ''}`;
}

/** How the first guesses stood up; empty while nothing is done. */
export function paceWords({ factor, steps }: { factor: number; steps: number }): string {
	if (steps === 0) return '';
	const first = `${steps === 1 ? 'Your first step' : 'Your steps'} took ${factor.toFixed(2)} times the first guess`;
	if (Math.abs(factor - 1) < 0.005) return `${first}; the rest stands as guessed.`;
	return `${first}; the rest is ${factor > 1 ? 'stretched' : 'shortened'} by that.`;
}
