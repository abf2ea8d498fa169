import { mark, prepare, stepOf } from '$lib/engine/marking/mark.ts';
import type { Cause, Entry, Verdict } from '$lib/engine/marking/verdict.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import { whenIdle } from '../late.ts';
import type { AnswerLine } from './answer-line.svelte.ts';
import type { Check, TaskWork } from './task-work.svelte.ts';

export { mark };

/*
 * What a check comes to: loaded before the first answer is marked.
 */

/** Prepares the marking of each step that is asked for, one whenever the browser has nothing to do. */
export function prepareAll(task: Task, [key, ...later] = task.drawn.asked): void {
	if (key === undefined) return;
	whenIdle(() => {
		try {
			prepare(task, key);
		} catch {
			// It fails again when it is wanted, and is told then.
			return;
		}
		prepareAll(task, later);
	});
}

/** Marks what stands in some lines of the work on a task. */
export function checkOf(work: TaskWork, lines: readonly AnswerLine[]): Check {
	const entries: Record<string, Entry> = {};
	for (const line of lines) if (line.entry) entries[line.key] = line.entry;
	const opened = work.stepKeys.slice(0, work.opened);
	const earlier = work.checks.map((check) => check.entries);
	const verdicts = mark(work.task, entries, { earlier, opened, told: work.told });
	const all = Object.values(verdicts);
	const whole = work.lines.every(
		(line) => lines.includes(line) || (work.byStep && opened.includes(line.key))
	);
	const holds = all.every((verdict) => verdict.kind === 'holds' || isRight(verdict));
	return {
		typed: Object.fromEntries(lines.map((line) => [line.key, line.text])),
		entries,
		verdicts,
		accepted: whole && all.every(isRight),
		holds,
		opened,
		byStep: work.byStep
	};
}

/** Takes one of the causes that explain an answer equally well for what was done. */
export function chosenCheck(work: TaskWork, key: string, cause: Cause): Check | null {
	const { last } = work;
	if (!last) return null;
	if (cause.kind === 'slip') work.told = [...work.told, ...cause.slips];
	const chosen = { ...last.verdicts, [key]: { kind: 'rework', cause } as const };
	const check = { ...last, verdicts: chosen };
	work.checks = [...work.checks.slice(0, -1), check];
	work.named = stepToLookAt(work.task, check);
	return check;
}

/** The step that a check names as the one to look at, where it can be told. */
export function stepToLookAt(task: Task, { verdicts }: Check): string | null {
	const wrong = Object.entries(verdicts).flatMap(([key, verdict]) =>
		verdict.kind === 'rework' ? (stepOf(task, verdict.cause, key) ?? []) : []
	);
	return wrong[0] ?? null;
}

function isRight(verdict: Verdict): boolean {
	return verdict.kind === 'accept' && !verdict.carried;
}

/** Where somebody was as a check began, and whether it was accepted. */
interface Before {
	readonly accepted: boolean;
	readonly from: Element | null;
	/** What stood in the lines. */
	readonly typed: readonly string[];
}

/** Brings the verdict into view, and the focus to what comes next. */
export function showVerdict(sheet: HTMLElement, work: TaskWork, before: Before): void {
	if (hasMovedOn(work, before)) return;
	const wanted = before.accepted
		? ['[data-next]']
		: ['[aria-invalid="true"]', '.open [data-answer]', '[data-answer]'];
	const [element = null] = wanted.flatMap((one) => sheet.querySelector<HTMLElement>(one) ?? []);
	element?.focus({ preventScroll: true });
	if (element instanceof HTMLInputElement) element.select();
	const status = sheet.querySelector('[role="status"]');
	if (status) followed(status);
}

/** Milliseconds in which stamp, sentence and metal have come one after the other. */
const unfolding = 600;

/** Keeps a part in view while it grows, unless somebody scrolls meanwhile. */
function followed(part: Element): void {
	const growth = new ResizeObserver(() => part.scrollIntoView({ block: 'nearest' }));
	const over = new AbortController();
	const stop = () => {
		growth.disconnect();
		over.abort();
	};
	part.scrollIntoView({ block: 'nearest' });
	growth.observe(part);
	for (const by of ['wheel', 'touchmove', 'keydown'] as const) {
		addEventListener(by, stop, { passive: true, signal: over.signal });
	}
	setTimeout(stop, unfolding);
}

/** Whoever is at the next entry already keeps the focus and what was typed. */
function hasMovedOn(work: TaskWork, { from, typed }: Before): boolean {
	const now = document.activeElement;
	if (now !== from && now !== document.body) return true;
	return work.lines.some(({ text }, i) => text !== typed[i]);
}
