import * as v from 'valibot';
import type { HandInAnswer } from '$lib/engine/sets/hand-in.ts';
import { longestEntry } from '$lib/engine/sets/hand-in.ts';
import type { AnswerMark } from '$lib/engine/sets/mark-answer.ts';
import { stepsOf } from '$lib/engine/tasks/task.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import type { Check, TaskWork, WorkNotes } from '$lib/ui/sheet/task-work.svelte.ts';
import { keptJson } from '../device/kept.ts';

/** What stands in the fields of a task, as it is handed in; what was opened before stays opened. */
export function answerIn(work: TaskWork, before: HandInAnswer, units: LengthUnit): HandInAnswer {
	const filled = work.lines.filter(({ text }) => text.trim() !== '');
	const picked = filled.flatMap((line) =>
		line.picked === null ? [] : [[line.key, line.picked] as const]
	);
	const shown = work.worked ? work.stepKeys : work.stepKeys.slice(0, work.opened);
	return {
		...before,
		entries: Object.fromEntries(filled.map(({ key, text }) => [key, text.slice(0, longestEntry)])),
		picked: Object.fromEntries(picked),
		units,
		opened: [...new Set([...before.opened, ...shown])],
		charts: chartsIn(work, before)
	};
}

/** The answer after a check told what is wrong in it. */
export function afterCheck(before: HandInAnswer, { verdicts }: Check): HandInAnswer {
	const wrong = Object.entries(verdicts).filter(([, verdict]) => verdict?.kind === 'rework');
	const told = [...new Set([...(before.told ?? []), ...wrong.map(([key]) => key)])];
	return told.length === 0 ? before : { ...before, told };
}

/** The answer once its marks were seen, which tell what in it is not right. */
export function afterMarks(before: HandInAnswer, marks: readonly AnswerMark[]): HandInAnswer {
	const less = marks.filter((one) => one.marks < one.of).map(({ key }) => key);
	const told = [...new Set([...(before.told ?? []), ...less])];
	return told.length === 0 ? before : { ...before, told };
}

/** The charts that were looked at, now and before. */
export function chartsIn({ charts }: TaskWork, before: HandInAnswer): string[] {
	return [...new Set([...before.charts, ...charts])];
}

/** Work on a task as an answer left it. */
export function takeUp(work: TaskWork, { entries, picked, opened }: HandInAnswer): void {
	const { asked } = work.task.drawn;
	const steps = stepsOf(work.task);
	const notes: WorkNotes = {
		typed: entries,
		opened: steps.filter((key) => opened.includes(key)).length,
		byStep: Object.keys(entries).some((key) => !asked.includes(key)),
		worked: false
	};
	work.resume(notes);
	for (const line of work.lines) {
		const option = picked[line.key];
		if (option !== undefined) line.pick(option);
	}
}

const answerSchema = v.object({
	place: v.number(),
	entries: v.record(v.string(), v.string()),
	picked: v.record(v.string(), v.number()),
	units: v.picklist(['in', 'mm']),
	opened: v.array(v.string()),
	told: v.optional(v.array(v.string())),
	charts: v.array(v.string()),
	seconds: v.nullable(v.number())
});

/** An answer read back from this device; null where there is none. */
export function readKeptAnswer(text: string | null): HandInAnswer | null {
	const read = v.safeParse(answerSchema, keptJson(text));
	return read.success ? read.output : null;
}
