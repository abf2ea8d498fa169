import type { Streak } from '$lib/engine/schedule/streaks.ts';
import { inWords } from '../number-words.ts';
import { dayWords } from '../reason.ts';

/** `Setback: right four times running, after three misses, the last on Monday.` */
export function streakWords(
	{ right, misses, missedDay }: Streak,
	label: string,
	today: number
): string {
	const last = dayWords(missedDay, today);
	return `${label}: right ${inWords(right)} times running, after ${inWords(misses)} misses, the last ${last}.`;
}
