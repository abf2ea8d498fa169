import { longestQuestion } from '$lib/engine/schedule/time-plan-events.ts';
import { keep, readKept } from '../device/kept.ts';

/*
 * A question that is being written on the time plan of a panel: it is there again when the page is
 * opened anew, and can be begun elsewhere.
 */

const keyOf = (panel: string) => `bucktail.question.${panel}`;

export function questionDraft(panel: string): string {
	return readKept(keyOf(panel)) ?? '';
}

export function keepQuestionDraft(panel: string, text: string): void {
	keep(keyOf(panel), text === '' ? null : text.slice(0, longestQuestion));
}
