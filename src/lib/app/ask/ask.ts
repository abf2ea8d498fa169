import { type Task, taskFromNumber } from '$lib/engine/tasks/task.ts';
import { TaskNumberError } from '$lib/engine/tasks/task-number.ts';
import { isSameEntry, readWorked } from '$lib/engine/marking/entries.ts';
import type { Entry } from '$lib/engine/marking/verdict.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import type { Option, Reading } from '$lib/engine/quantity/read.ts';
import type { Method } from '$lib/engine/solver/method.ts';
import { type Asked, linesOf } from '$lib/ui/ask/asked.ts';
import { type Check, TaskWork } from '$lib/ui/sheet/task-work.svelte.ts';
import { type AskedCheck, longestTyped, mostChecks, type Question } from './ask-link.ts';

/** What a question tells of the work on a task; nothing in it says whose work it is. */
export async function questionOf(work: TaskWork, units: LengthUnit): Promise<Question> {
	const told = work.checks.slice(-mostChecks);
	return {
		task: work.task.number,
		units,
		opened: work.opened,
		byStep: work.byStep,
		worked: work.worked,
		before: Math.min(99, work.checks.length - told.length),
		checks: await Promise.all(told.map((check) => askedCheck(work.task, check, units))),
		open: uncheckedIn(work),
		...(work.scratch.length > 0 && { scratch: [...work.scratch] }),
		note: ''
	};
}

/** What stands in the fields, unless it is what was checked last. */
function uncheckedIn(work: TaskWork): Record<string, string> {
	if (work.done || work.worked) return {};
	const filled = work.lines.filter((line) => line.text.trim() !== '');
	const same = filled.every((line) => line.text === work.last?.typed[line.key]);
	return same ? {} : cut(Object.fromEntries(filled.map((line) => [line.key, line.text])));
}

function cut(typed: Readonly<Record<string, string>>): Record<string, string> {
	return Object.fromEntries(
		Object.entries(typed).map(([key, text]) => [key, text.slice(0, longestTyped)])
	);
}

/** A check with the readings that its marks rest on: the units then, and what was picked. */
async function askedCheck(task: Task, check: Check, now: LengthUnit): Promise<AskedCheck> {
	const facts = {
		typed: cut(check.typed),
		opened: check.opened.length,
		byStep: check.byStep
	};
	for (const units of [now, now === 'in' ? 'mm' : 'in'] as const) {
		const picked = await pickedIn(task.method, check, units);
		if (picked) return { ...facts, picked, units };
	}
	return { ...facts, picked: {}, units: now };
}

/** The options picked where there were two, or null when the entries were not read in `units`. */
async function pickedIn(
	method: Method,
	{ typed, entries }: Check,
	units: LengthUnit
): Promise<Record<string, number> | null> {
	const picked: Record<string, number> = {};
	for (const [key, entry] of Object.entries(entries)) {
		const reading = await readWorked(method, key, typed[key] ?? '', units);
		const options = optionsIn(reading);
		const option = options.findIndex((one) => isSameEntry(method, key, one, entry));
		if (option < 0) return null;
		if (reading.state === 'which') picked[key] = option;
	}
	return picked;
}

function optionsIn(reading: Reading): readonly (Entry | Option)[] {
	if (reading.state === 'which') return reading.options;
	return reading.state === 'read' ? [reading] : [];
}

export type Asking =
	| { readonly ok: true; readonly asked: Asked }
	| { readonly ok: false; readonly sentence: string };

/** Does again what a question tells, so that its verdicts are this program's own. */
export async function replay(question: Question): Promise<Asking> {
	try {
		const task = await taskFromNumber(question.task);
		const checks: Asked['checks'][number][] = [];
		let before: readonly Check[] = [];
		for (const check of question.checks) {
			const work = await checkAgain(task, check, before);
			before = work.checks;
			const { opened, done, byStep } = work;
			checks.push({ opened, byStep, accepted: done, lines: linesOf(work) });
		}
		const left = await leftAgain(task, question);
		const { opened } = left;
		return { ok: true, asked: { ...question, task, checks, opened, open: linesOf(left) } };
	} catch (error) {
		if (error instanceof TaskNumberError) return { ok: false, sentence: error.message };
		throw error;
	}
}

/** The work as it was after a check, with the checks before it. */
async function checkAgain(
	task: Task,
	{ typed, opened, byStep, units, picked }: AskedCheck,
	before: readonly Check[]
): Promise<TaskWork> {
	const work = new TaskWork(task, () => units);
	work.checks = before;
	work.resume({ typed, opened, byStep, worked: false });
	await Promise.all(work.lines.map((line) => line.settle()));
	for (const line of work.lines) {
		const option = picked[line.key];
		if (option !== undefined) line.pick(option);
	}
	// What is no longer marked has no verdict, and none of an earlier one.
	if (!(await work.check())) work.checks = [];
	return work;
}

/** The work as it was left. */
async function leftAgain(task: Task, question: Question): Promise<TaskWork> {
	const { open, opened, byStep, units } = question;
	const work = new TaskWork(task, () => units);
	work.resume({ typed: open, opened, byStep, worked: false });
	await Promise.all(work.lines.map((line) => line.settle()));
	return work;
}
