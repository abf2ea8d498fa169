import type { Cause, Verdict } from '../marking/verdict.ts';
import { stepsOf, type Task } from '../tasks/task.ts';
import { totalOf } from './set.ts';

/*
 * How the marks of a task, one or more a step, follow from the verdicts on what was entered. An
 * answer speaks for the steps before it that were not entered: where a known slip explains a wrong
 * one, the step of that slip loses its marks and the steps that follow rightly keep theirs.
 */

/** How a step came out: `follows` is right for a wrong value before it, and counts. */
export interface StepState {
	readonly key: string;
	readonly of: number;
	readonly state: 'right' | 'follows' | 'lost' | 'blank';
}

/** What an entry, or an answer that was left out, is marked on. */
export interface Marked {
	readonly key: string;
	readonly marks: number;
	readonly of: number;
	/** The steps that it speaks for, its own among them, in order. */
	readonly steps: readonly StepState[];
	/** Whether it is off only by a slip that an earlier answer was charged for. */
	readonly follows: boolean;
}

/**
 * Marks of every step that was entered or asked, in order.
 *
 * @param marks of the steps, in the order of `stepsOf`
 * @param verdicts of what was entered; null for an entry that nobody can read
 */
export function stepMarks(
	task: Task,
	marks: readonly number[],
	verdicts: Readonly<Record<string, Verdict | null>>
): Marked[] {
	const steps = stepsOf(task);
	const marksAt = new Map(steps.map((step, i) => [step, marks[i] ?? 0]));
	const rows: Marked[] = [];
	const charged = new Set<string>();
	let waiting: string[] = [];
	for (const key of steps) {
		const verdict = Object.hasOwn(verdicts, key) ? verdicts[key] : undefined;
		if (verdict !== undefined) {
			const group = new Map([...waiting, key].map((step) => [step, marksAt.get(step) ?? 0]));
			const follows = verdict?.kind === 'rework' && isFrom(verdict.cause, charged);
			const row = markedOn(task, key, group, follows ? right : verdict);
			rows.push({ ...row, follows });
			for (const slip of slipsIn(task, group, verdict)) charged.add(slip);
			waiting = [];
		} else if (task.drawn.asked.includes(key)) {
			const of = marksAt.get(key) ?? 0;
			rows.push({ key, marks: 0, of, follows: false, steps: [{ key, of, state: 'blank' }] });
		} else {
			waiting.push(key);
		}
	}
	// Steps that no answer speaks for go with the last answer that was left out.
	const last = rows.pop();
	if (!last) return rows;
	const rest = blankSteps(new Map(waiting.map((step) => [step, marksAt.get(step) ?? 0])));
	const of = last.of + totalOf(rest.map((step) => step.of));
	return [...rows, { ...last, of, steps: [...rest, ...last.steps] }];
}

/** The steps of an answer that was left out. */
export function blankSteps(group: Group): StepState[] {
	return [...group].map(([key, of]) => ({ key, of, state: 'blank' }));
}

const right: Verdict = { kind: 'accept', carried: true };

/** The slips that an answer is charged for; one that cannot be read has lost its steps for all. */
function slipsIn({ method }: Task, group: Group, verdict: Verdict | null): readonly string[] {
	if (verdict === null) {
		return Object.keys(method.slips).filter((id) => group.has(method.slips[id]?.step ?? ''));
	}
	return verdict.kind === 'rework' && 'slips' in verdict.cause ? verdict.cause.slips : [];
}

/** Whether an answer is explained by slips that were charged already. */
function isFrom(cause: Cause, charged: ReadonlySet<string>): boolean {
	if (cause.kind === 'either') return cause.slips.some((slip) => charged.has(slip));
	return cause.kind === 'slip' && !cause.also && cause.slips.every((slip) => charged.has(slip));
}

/** Marks by step of the steps that one answer speaks for, its own the last. */
type Group = ReadonlyMap<string, number>;

/** The marks of one answer. */
export function markedOn(task: Task, key: string, group: Group, verdict: Verdict | null): Marked {
	const of = totalOf([...group.values()]);
	const lost = verdict === null ? [...group.keys()] : chargedSteps(task, key, group, verdict);
	const marks = of - sumOf(group, lost);
	return { key, marks, of, follows: false, steps: statesOf(group, lost, verdict) };
}

/** What loses its marks: a wrong answer never has all, even where the step of its slip has none. */
function chargedSteps(task: Task, key: string, group: Group, verdict: Verdict): readonly string[] {
	if (verdict.kind === 'accept') return [];
	const found = [lostSteps(task, key, group, verdict), [key]];
	return found.find((steps) => sumOf(group, steps) > 0) ?? [...group.keys()];
}

function statesOf(group: Group, lost: readonly string[], verdict: Verdict | null): StepState[] {
	const keys = [...group.keys()];
	const first = keys.findIndex((key) => lost.includes(key));
	const carried = verdict?.kind === 'accept' && verdict.carried;
	const keeps = (at: number) => (carried || (first >= 0 && at > first) ? 'follows' : 'right');
	return keys.map((key, i) => ({
		key,
		of: group.get(key) ?? 0,
		state: lost.includes(key) ? 'lost' : keeps(i)
	}));
}

function sumOf(group: Group, steps: readonly string[]): number {
	return totalOf([...new Set(steps)].map((step) => group.get(step) ?? 0));
}

/** The steps that lose their marks by a wrong answer. */
function lostSteps(task: Task, key: string, group: Group, verdict: Verdict): string[] {
	const all = [...group.keys()];
	if (verdict.kind === 'holds') return [key];
	if (verdict.kind !== 'rework') return verdict.kind === 'accept' ? [] : all;
	const { cause } = verdict;
	switch (cause.kind) {
		case 'slip':
			return [...slipSteps(task, cause.slips, key, group), ...(cause.also ? [key] : [])];
		case 'either':
			// What is no slip among the causes lies in the answer's own step.
			return [
				dearest(group, [
					...slipSteps(task, cause.slips, key, group),
					...(cause.causes ? [key] : [])
				])
			];
		case 'unit':
		case 'rounding':
		case 'digits':
		case 'order':
		case 'factor':
		case 'misread':
			return [key];
		case 'other-step':
			// The result of a later step, put here, shows that what leads to it was worked.
			return group.has(cause.step) ? all.slice(all.indexOf(cause.step) + 1) : [key];
		default:
			return all;
	}
}

/** Where the slips sit; one in a step that was answered by itself is charged to this answer. */
function slipSteps({ method }: Task, ids: readonly string[], key: string, group: Group): string[] {
	const steps = ids.map((id) => method.slips[id]?.step ?? key);
	return steps.map((step) => (group.has(step) ? step : key));
}

function dearest(group: Group, steps: readonly string[]): string {
	const [most = ''] = [...steps].sort((a, b) => (group.get(b) ?? 0) - (group.get(a) ?? 0));
	return most;
}
