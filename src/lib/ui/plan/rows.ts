/** One topic: shares right of all its steps, 0 to 1, and how many of them were met. */
export interface StandRow {
	readonly topic: string;
	readonly name: string;
	readonly met: number;
	/** Steps met by the later day, when the plan is kept. */
	readonly metThen: number;
	readonly steps: number;
	/** Whether the learner leaves the topic out. */
	readonly leftOut: boolean;
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
