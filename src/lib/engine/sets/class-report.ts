import type { MarkedHandIn } from './collect.ts';
import { type LeftBlank, leftBlank } from './left-blank.ts';
import { median } from './median.ts';
import { type MissedStep, missedSteps } from './missed-steps.ts';
import type { OpenSet } from './open-set.ts';
import { type TaskFigure, taskFigures } from './task-figures.ts';

/** How the marks of the class are spread. */
export interface Spread {
	/** How many students had each mark that somebody had, least first. */
	readonly counts: readonly { readonly marks: number; readonly codes: readonly string[] }[];
	/** Null without hand-ins. */
	readonly mean: number | null;
	readonly median: number | null;
}

/** The slip that most students made. */
export interface Headline {
	readonly students: number;
	/** The step it sits in. */
	readonly label: string;
	/** One sentence. */
	readonly says: string;
	/** Places of the tasks in which that step was missed. */
	readonly places: readonly number[];
}

/** How a set came out over a class. */
export interface ClassReport {
	readonly students: number;
	readonly spread: Spread;
	/** Null where nobody made a slip that is certain. */
	readonly headline: Headline | null;
	readonly missed: readonly MissedStep[];
	readonly blank: readonly LeftBlank[];
	readonly tasks: readonly TaskFigure[];
}

export function classReport(open: OpenSet, handIns: readonly MarkedHandIn[]): ClassReport {
	const missed = missedSteps(open, handIns);
	return {
		students: handIns.length,
		spread: spreadOf(handIns),
		headline: headlineOf(missed),
		missed,
		blank: leftBlank(open, handIns),
		tasks: taskFigures(open, handIns)
	};
}

export function spreadOf(handIns: readonly Pick<MarkedHandIn, 'code' | 'marks'>[]): Spread {
	const up = handIns.map(({ marks }) => marks).sort((a, b) => a - b);
	const counts = [...new Set(up)].map((marks) => ({
		marks,
		codes: handIns.filter((one) => one.marks === marks).map(({ code }) => code)
	}));
	if (up.length === 0) return { counts, mean: null, median: null };
	return { counts, mean: up.reduce((sum, one) => sum + one, 0) / up.length, median: median(up) };
}

/** Of slips that equally many made, that of the step that more students missed. */
function headlineOf(missed: readonly MissedStep[]): Headline | null {
	const all = missed.flatMap(({ label, places, slips }) =>
		slips.map(({ says, codes }) => ({ students: codes.length, label, says, places }))
	);
	return all.sort((a, b) => b.students - a.students)[0] ?? null;
}
