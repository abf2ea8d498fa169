import { stepsOf, type Task } from '$lib/engine/tasks/task.ts';
import type { Entry, Verdict, Verdicts } from '$lib/engine/marking/verdict.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { AnswerLine } from './answer-line.svelte.ts';
import { checkPart } from './later.ts';

/** One check of an answer: what was typed, as it was read, and the verdicts. */
export interface Check {
	readonly typed: Readonly<Record<string, string>>;
	readonly entries: Readonly<Record<string, Entry>>;
	readonly verdicts: Verdicts;
	readonly accepted: boolean;
	/** Whether all of it can be made as it stands, though a better answer may be possible. */
	readonly holds: boolean;
	/** Steps opened before this check, by key. */
	readonly opened: readonly string[];
	readonly byStep: boolean;
}

/** What is kept of the work on a task when the page is left. */
export interface WorkNotes {
	readonly typed: Readonly<Record<string, string>>;
	readonly opened: number;
	readonly byStep: boolean;
	readonly worked: boolean;
	/** Slips that the person has said to have made. */
	readonly told?: readonly string[] | undefined;
	/** Ids of the charts that were looked at. */
	readonly charts?: readonly string[] | undefined;
	/** Lines of scratch arithmetic, as typed. */
	readonly scratch?: readonly string[] | undefined;
}

/** A person's work on one task, from the first look to the worked solution. */
export class TaskWork {
	readonly task: Task;
	/** How many steps have been opened, from the first. */
	opened = $state(0);
	/** Whether the task is worked step by step instead of by its final answers. */
	byStep = $state(false);
	/** Whether the whole working is shown. */
	worked = $state(false);
	checks = $state.raw<readonly Check[]>([]);
	/** Slips that the person has said to have made. */
	told = $state.raw<readonly string[]>([]);
	/** Ids of the charts that were looked at. It costs nothing. */
	charts: readonly string[] = [];
	/** Lines of scratch arithmetic, as typed. */
	scratch = $state.raw<readonly string[]>([]);
	/** What the last of them came to. */
	result = $state('');
	/** The step that the last check names as the one to look at, where it can be told. */
	named = $state<string | null>(null);
	readonly stepKeys: readonly string[];
	readonly answerLines: readonly AnswerLine[];
	readonly stepLines: readonly AnswerLine[];

	readonly lines = $derived.by(() => (this.byStep ? this.stepLines : this.answerLines));
	readonly last: Check | undefined = $derived(this.checks.at(-1));
	readonly done = $derived(this.last?.accepted ?? false);
	readonly finished = $derived(this.done || this.worked);
	/** Whether an entry has been changed since it was checked. */
	readonly isStale = $derived.by(() => {
		const typed = this.last?.typed ?? {};
		return this.lines.some(({ key, text }) => (typed[key] ?? text) !== text);
	});
	/** Checks that did not hold. */
	readonly misses = $derived(this.checks.filter(({ holds }) => !holds).length);
	/** Worked step by step, the place of the step that is open: the first that is not settled. */
	readonly at = $derived.by(() => {
		const open = this.stepLines.findIndex(
			(line, i) => i >= this.opened && this.verdictOn(line)?.kind !== 'accept'
		);
		return open < 0 ? this.stepKeys.length - 1 : open;
	});
	/** Whether the open step may be shown: the last one is the answer itself. */
	readonly canOpen = $derived.by(() => this.at < this.stepKeys.length - 1 && !this.finished);

	/** Loads what must be there before an answer is marked. */
	readonly ready: () => Promise<unknown>;

	constructor(
		task: Task,
		units: () => LengthUnit,
		ready: () => Promise<unknown> = () => Promise.resolve()
	) {
		this.ready = ready;
		const { method } = task;
		this.task = task;
		this.stepKeys = stepsOf(task);
		this.answerLines = task.drawn.asked.map((key) => new AnswerLine(method, key, units));
		this.stepLines = this.stepKeys.map((key) => new AnswerLine(method, key, units));
	}

	/** The verdict on what stands in a line now, if just that was checked. */
	verdictOn({ key, text }: AnswerLine): Verdict | undefined {
		return this.last?.typed[key] === text ? this.last.verdicts[key] : undefined;
	}

	/** Shows the step that is open. */
	openStep(): void {
		if (this.canOpen) this.opened = this.at + 1;
	}

	lookAt(chart: string): void {
		if (!this.charts.includes(chart)) this.charts = [...this.charts, chart];
	}

	/**
	 * Marks what has been typed. Returns null, and costs nothing, when a line is empty, holds only a
	 * part of its answer or cannot be read. Step by step, the lines filled in so far are marked.
	 */
	async check(): Promise<Check | null> {
		await Promise.all(this.lines.map((line) => line.settle()));
		const filled = this.lines.filter((line) => line.reading.state !== 'empty');
		const wanted = this.byStep ? filled : this.lines;
		for (const line of wanted) line.missing = line.reading.state === 'empty';
		if (wanted.length === 0 || wanted.some((line) => !line.entry)) return null;
		const [{ checkOf, stepToLookAt }] = await Promise.all([checkPart(), this.ready()]);
		const check = checkOf(this, wanted);
		for (const line of wanted) {
			const verdict = check.verdicts[line.key];
			line.refused = verdict?.kind === 'unread' ? verdict.says : null;
		}
		if (wanted.some((line) => line.refused !== null)) return null;
		this.checks = [...this.checks, check];
		this.named = stepToLookAt(this.task, check);
		return check;
	}

	notes(): WorkNotes {
		return {
			typed: Object.fromEntries(this.lines.map((line) => [line.key, line.text])),
			opened: this.opened,
			byStep: this.byStep,
			worked: this.worked,
			...(this.told.length > 0 && { told: this.told }),
			...(this.scratch.length > 0 && { scratch: this.scratch }),
			charts: this.charts
		};
	}

	/** Takes up work where it was left. */
	resume(notes: WorkNotes): void {
		this.opened = Math.min(Math.max(0, notes.opened), this.stepKeys.length - 1);
		this.byStep = notes.byStep;
		this.worked = notes.worked;
		this.told = notes.told ?? [];
		this.charts = notes.charts ?? [];
		this.scratch = notes.scratch ?? [];
		for (const line of this.lines) line.type(notes.typed[line.key] ?? '');
	}
}
