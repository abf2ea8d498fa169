import { mean } from '../quantity/mean.ts';
import { stepsOf } from '../tasks/task.ts';
import { median } from './median.ts';
import type { MarkedHandIn, TaskMark } from './collect.ts';
import type { OpenSet } from './open-set.ts';

/*
 * Item figures of classical test theory. Difficulty is p, the mean share of the marks.
 * Discrimination is D = p(upper) - p(lower), here of the upper and lower third by the marks in the
 * other tasks. Source, from memory: T. L. Kelley, The selection of upper and lower groups for the
 * validation of test items, Journal of Educational Psychology 30 (1939), with 27 % for our third.
 */

/** How one task of the set came out over the class. */
export interface TaskFigure {
	readonly place: number;
	/** Share of its marks, 0 to 1; null without hand-ins or marks. */
	readonly difficulty: number | null;
	/**
	 * Share of its marks of the strongest third less that of the weakest third, by the marks in the
	 * other tasks; students of equal marks count in part. Null for fewer than six students.
	 */
	readonly discrimination: number | null;
	/** Median seconds; null where no time is known. */
	readonly seconds: number | null;
	/** Students who had help: saw working, or were told what was wrong. */
	readonly opened: number;
}

/** Whether a student had help in a task before it was handed in. */
export function wasHelped({ opened, told }: Pick<TaskMark, 'opened' | 'told'>): boolean {
	return opened.length > 0 || told.length > 0;
}

const fewest = 6;

export function taskFigures(open: OpenSet, handIns: readonly MarkedHandIn[]): TaskFigure[] {
	return open.tasks.map(({ place, marks, task }) => {
		const rows = handIns.flatMap((one) => {
			const mark = one.tasks.find((other) => other.place === place);
			return mark ? [{ mark, rest: one.marks - mark.marks }] : [];
		});
		const hasMarks = stepsOf(task).some((_, i) => (marks[i] ?? 0) > 0);
		const shares = rows.map(({ mark, rest }) => ({ share: mark.marks / (mark.of || 1), rest }));
		const times = rows.flatMap(({ mark }) => mark.seconds ?? []);
		return {
			place,
			difficulty: hasMarks && rows.length > 0 ? mean(shares.map(({ share }) => share)) : null,
			discrimination: hasMarks && rows.length >= fewest ? tellsApart(shares) : null,
			seconds: times.length > 0 ? median(times.sort((a, b) => a - b)) : null,
			opened: rows.filter(({ mark }) => wasHelped(mark)).length
		};
	});
}

interface Share {
	readonly share: number;
	/** Marks in the other tasks. */
	readonly rest: number;
}

function tellsApart(shares: readonly Share[]): number {
	const third = Math.floor(shares.length / 3);
	const up = [...shares].sort((a, b) => a.rest - b.rest);
	return firstShare([...up].reverse(), third) - firstShare(up, third);
}

/** Mean share of the first so many; those level with the last of them count in part. */
function firstShare(inOrder: readonly Share[], count: number): number {
	const edge = inOrder[count - 1]?.rest;
	const level = inOrder.filter(({ rest }) => rest === edge);
	const before = inOrder.slice(
		0,
		inOrder.findIndex(({ rest }) => rest === edge)
	);
	const levelShare = mean(level.map(({ share }) => share)) * (count - before.length);
	return (before.reduce((sum, { share }) => sum + share, 0) + levelShare) / count;
}
