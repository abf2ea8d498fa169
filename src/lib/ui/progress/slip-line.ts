import { dayWords } from '../reason.ts';

/** A slip of the log, in words. */
export interface SlipLine {
	readonly skill: string;
	readonly slip: string;
	/** The sentence of the slip. */
	readonly says: string;
	/** Label of the step it sits in. */
	readonly label: string;
	readonly topic: string;
	readonly times: number;
	readonly lastDay: number;
	/** How often the step has been right at once since. */
	readonly rightSince: number;
}

/** When a slip was made last, and how often the step has been right after that. */
export function lastMade({ lastDay, rightSince }: SlipLine, today: number): string {
	const since = rightSince === 0 ? '' : `, right ${timesWords(rightSince)} since`;
	return `Last made ${dayWords(lastDay, today)}${since}.`;
}

export function timesWords(times: number): string {
	return { 1: 'once', 2: 'twice' }[times] ?? `${times} times`;
}
