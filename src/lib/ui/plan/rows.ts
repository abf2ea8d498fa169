/** One topic: shares right, 0 to 1, and how many of its steps were met. */
export interface StandRow {
	readonly topic: string;
	readonly name: string;
	readonly met: number;
	readonly steps: number;
	readonly now: number;
	readonly then: number;
	readonly nextDay: number | null;
}

/** A weak step: what went wrong in it last, and when it comes up again. */
export interface WeakStep {
	readonly skill: string;
	readonly label: string;
	/** The kind of work it belongs to. */
	readonly work: string;
	/** Expected share right today, 0 to 1. */
	readonly now: number;
	readonly slip: { readonly says: string; readonly day: number; readonly times: number } | null;
	readonly missedDay: number | null;
	readonly nextDay: number | null;
}

/** What the time does not reach, by topic. */
export interface GivenUp {
	readonly topic: string;
	readonly name: string;
	readonly steps: number;
	readonly labels: readonly string[];
}
