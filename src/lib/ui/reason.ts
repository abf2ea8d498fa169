import type { Reason, RunItem } from '$lib/engine/schedule/run.ts';
import { shortDate, weekday } from './dates.ts';

/** A day in words: today, yesterday, the weekday within a week, else the date. */
export function dayWords(day: number, today: number): string {
	if (day === today) return 'today';
	if (day === today - 1) return 'yesterday';
	if (day === today + 1) return 'tomorrow';
	return `on ${Math.abs(day - today) < 7 ? weekday(day) : shortDate(day)}`;
}

/**
 * Why the plan chose a task, in one to three sentences. `label` names its skill; `slip` is the
 * sentence of the slip that was made in it last, or empty.
 */
export function sayReason(
	{ reason, worked }: Pick<RunItem, 'reason' | 'worked'>,
	label: string,
	slip: string,
	today: number
): string {
	const why = say(reason, label, slip, today);
	if (!worked) return why;
	const what = reason.kind === 'new' ? '' : 'Another step here is new. ';
	return `${why} ${what}First one is worked for you.`;
}

function say(reason: Reason, label: string, slip: string, today: number): string {
	switch (reason.kind) {
		case 'missed':
			return `You missed “${label}” ${dayWords(reason.day, today)}. ${slip}`.trim();
		case 'fading':
			return `You last had “${label}” ${dayWords(reason.day, today)}; it is time to see whether it is still there.`;
		case 'new':
			return `“${label}” is new.`;
		case 'sweep':
			return `A last look at “${label}” before the exam ${dayWords(reason.exam, today)}.`;
		case 'chosen':
			return `You chose this topic.`;
		default:
			return reason satisfies never;
	}
}
