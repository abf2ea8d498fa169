import { stepsOf, type Task } from '$lib/engine/tasks/task.ts';
import type { Cause, Entry, Verdict, Verdicts } from '$lib/engine/marking/verdict.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { AnswerLine } from './answer-line.svelte.ts';
import { markPart } from './later.ts';

type Mark = Awaited<ReturnType<typeof markPart>>['mark'];

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
}

function isRight(verdict: Verdict): boolean {
	return verdict.kind === 'accept' && !verdict.carried;
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
	readonly stepKeys: readonly string[];
	readonly #answerLines: readonly AnswerLine[];
	readonly #stepLines: readonly AnswerLine[];

	readonly lines = $derived.by(() => (this.byStep ? this.#stepLines : this.#answerLines));
	readonly last: Check | undefined = $derived(this.checks.at(-1));
	readonly done = $derived(this.last?.accepted ?? false);
	/** Steps that may still be opened: the last one is the answer itself. */
	readonly canOpen = $derived.by(
		() => this.opened < this.stepKeys.length - 1 && !this.worked && !this.done
	);

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
		this.#answerLines = task.drawn.asked.map((key) => new AnswerLine(method, key, units));
		this.#stepLines = this.stepKeys
			.filter((key) => method.steps[key]?.tolerance)
			.map((key) => new AnswerLine(method, key, units));
	}

	openStep(): void {
		if (this.canOpen) this.opened += 1;
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
		const [{ mark }] = await Promise.all([markPart(), this.ready()]);
		const check = this.#marked(wanted, mark);
		for (const line of wanted) {
			const verdict = check.verdicts[line.key];
			line.refused = verdict?.kind === 'unread' ? verdict.says : null;
		}
		if (wanted.some((line) => line.refused !== null)) return null;
		this.checks = [...this.checks, check];
		return check;
	}

	/** Takes one of the causes that explain an answer equally well for what was done. */
	choose(key: string, cause: Cause): Check | null {
		const { last } = this;
		if (!last) return null;
		if (cause.kind === 'slip') this.told = [...this.told, ...cause.slips];
		const chosen = { ...last.verdicts, [key]: { kind: 'rework', cause } as const };
		const check = { ...last, verdicts: chosen };
		this.checks = [...this.checks.slice(0, -1), check];
		return check;
	}

	#marked(lines: readonly AnswerLine[], mark: Mark): Check {
		const entries: Record<string, Entry> = {};
		for (const line of lines) if (line.entry) entries[line.key] = line.entry;
		const opened = this.stepKeys.slice(0, this.opened);
		const earlier = this.checks.map((check) => check.entries);
		const verdicts = mark(this.task, entries, { earlier, opened, told: this.told });
		const all = Object.values(verdicts);
		const whole = lines.length === this.lines.length;
		const hold = all.every((verdict) => verdict.kind === 'holds' || isRight(verdict));
		return {
			typed: Object.fromEntries(lines.map((line) => [line.key, line.text])),
			entries,
			verdicts,
			accepted: whole && all.every(isRight),
			holds: whole && hold,
			opened,
			byStep: this.byStep
		};
	}

	notes(): WorkNotes {
		return {
			typed: Object.fromEntries(this.lines.map((line) => [line.key, line.text])),
			opened: this.opened,
			byStep: this.byStep,
			worked: this.worked,
			...(this.told.length > 0 && { told: this.told }),
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
		for (const line of this.lines) line.type(notes.typed[line.key] ?? '');
	}
}
