import { FSRSAlgorithm } from 'ts-fsrs';

/**
 * What an answer shows about one skill: right at once; right with an opened step or on a second
 * try; wrong.
 */
export type Evidence = 'right' | 'helped' | 'wrong';

/**
 * Memory of one skill: how well it is understood (knowledge tracing) and how fast it fades (FSRS-6).
 * Plain numbers, so that it can be stored. Days count from any fixed day, as real numbers.
 */
export interface Memory {
	/** Days until 90 % is left of what was understood; 0 before the first meeting. */
	readonly stability: number;
	/** 1 easy to 10 hard; 0 before the first meeting. */
	readonly difficulty: number;
	/** Chance, 0 to 1, that the step is understood, as the answers so far show it. */
	readonly grasp: number;
	/** Day and time of the newest evidence. */
	readonly lastDay: number;
	/** Day of the newest miss that was not put right on a later day; null when there is none. */
	readonly missedDay: number | null;
}

/**
 * Chance that a never-met skill is right at the first try. An assumption: low, because the steps of
 * a trade computation are rarely guessed.
 */
export const UNMET_RECALL = 0.35;

// Knowledge tracing at or below its usual caps (guess 0.3, slip 0.1), with the explanation after a
// miss counted as teaching. There are too few answers per learner to fit either model; in four of the
// bench's five worlds the two together come nearer to the answers than FSRS alone.
const GUESS = 0.2;
const SLIP = 0.1;
const TAUGHT = 0.3;
const UNMET_GRASP = (UNMET_RECALL - GUESS) / (1 - SLIP - GUESS);

const GRADE = { wrong: 1, helped: 2, right: 3 } as const;

const fsrs = new FSRSAlgorithm({ enable_fuzz: false });

/** Memory of a skill that was never met. */
export const emptyMemory: Memory = {
	stability: 0,
	difficulty: 0,
	grasp: UNMET_GRASP,
	lastDay: 0,
	missedDay: null
};

/** Whether there has been any evidence on the skill. */
export function isMet(memory: Memory): boolean {
	return memory.stability > 0;
}

/** Memory after one more answer, given on `atDay` (its whole part is the day). */
export function remember(memory: Memory, evidence: Evidence, atDay: number): Memory {
	const next = fsrs.next_state(memory, elapsed(memory, atDay), GRADE[evidence]);
	return {
		stability: next.stability,
		difficulty: next.difficulty,
		grasp: graspAfter(memory.grasp, evidence),
		lastDay: isMet(memory) ? Math.max(memory.lastDay, atDay) : atDay,
		missedDay: missedAfter(memory, evidence, atDay)
	};
}

/** Chance, 0 to 1, that a fresh task on the skill is right at the first try on `atDay`. */
export function recall(memory: Memory, atDay: number): number {
	if (!isMet(memory)) return UNMET_RECALL;
	const fresh = memory.grasp * (1 - SLIP) + (1 - memory.grasp) * GUESS;
	return fresh * recallLeft(memory, atDay);
}

/** The part of `recall` that time leaves: 1 on the day of an answer, 0.9 after `stability` days. */
export function recallLeft(memory: Memory, atDay: number): number {
	return fsrs.forgetting_curve(elapsed(memory, atDay), memory.stability);
}

// FSRS has a rule of its own for a second look on the same day, chosen by zero days elapsed.
function elapsed(memory: Memory, atDay: number): number {
	if (!isMet(memory) || Math.floor(atDay) <= Math.floor(memory.lastDay)) return 0;
	return atDay - memory.lastDay;
}

function graspAfter(grasp: number, evidence: Evidence): number {
	const right = (grasp * (1 - SLIP)) / (grasp * (1 - SLIP) + (1 - grasp) * GUESS);
	const wrong = (grasp * SLIP) / (grasp * SLIP + (1 - grasp) * (1 - GUESS));
	const shown = { right, wrong, helped: (right + wrong) / 2 }[evidence];
	return shown + (1 - shown) * TAUGHT;
}

// The same-day return of a miss does not settle it: the numbers were explained minutes ago.
function missedAfter(memory: Memory, evidence: Evidence, atDay: number): number | null {
	if (evidence === 'wrong') return Math.floor(atDay);
	if (memory.missedDay === null) return null;
	return Math.floor(atDay) > memory.missedDay ? null : memory.missedDay;
}
