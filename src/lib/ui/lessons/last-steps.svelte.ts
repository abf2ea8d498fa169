import type { Entry, Verdict, Verdicts } from '$lib/engine/marking/verdict.ts';
import { sayVerdict } from '$lib/engine/marking/say.ts';
import { inBothUnits } from '$lib/engine/quantity/both-units.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { stepsOf, type Task } from '$lib/engine/tasks/task.ts';
import { AnswerLine } from '../sheet/answer-line.svelte.ts';
import { checkPart } from '../sheet/later.ts';

/** One check of the steps that were left to the reader. */
export interface StepsCheck {
	readonly typed: Readonly<Record<string, string>>;
	readonly entries: Readonly<Record<string, Entry>>;
	readonly verdicts: Verdicts;
	/** Whether every one of them is right, or as good. */
	readonly accepted: boolean;
}

/** A task of which the first steps are worked and the last ones are the reader's. */
export class LastSteps {
	readonly task: Task;
	/** Keys of the steps that stand worked. */
	readonly given: readonly string[];
	readonly lines: readonly AnswerLine[];
	checks = $state.raw<readonly StepsCheck[]>([]);
	/** Whether the working was asked for. */
	worked = $state(false);
	readonly last = $derived(this.checks.at(-1));
	readonly done = $derived(this.worked || (this.last?.accepted ?? false));
	#earlier: Readonly<Record<string, Entry>>[] = [];

	/** @param count how many of the last steps are left to the reader */
	constructor(task: Task, count: number, units: () => LengthUnit) {
		const keys = markedSteps(task);
		const from = Math.max(0, keys.length - count);
		const left = keys.slice(from);
		this.task = task;
		this.given = stepsOf(task).filter((key) => !left.includes(key));
		this.lines = left.map((key) => new AnswerLine(task.method, key, units));
	}

	/** The verdict on what stands in a line, where it is what was checked last. */
	verdictOn({ key, text }: AnswerLine): Verdict | undefined {
		return this.last?.typed[key] === text ? this.last.verdicts[key] : undefined;
	}

	/** Marks the lines; null, at no cost, where one is empty or cannot be read. */
	async check(): Promise<StepsCheck | null> {
		await Promise.all(this.lines.map((line) => line.settle()));
		for (const line of this.lines) line.missing = line.reading.state === 'empty';
		if (this.lines.some((line) => !line.entry)) return null;
		const { mark } = await checkPart();
		const entries: Record<string, Entry> = {};
		for (const line of this.lines) if (line.entry) entries[line.key] = line.entry;
		const verdicts = mark(this.task, entries, { earlier: this.#earlier, opened: this.given });
		for (const line of this.lines) {
			const verdict = verdicts[line.key];
			line.refused = verdict?.kind === 'unread' ? verdict.says : null;
		}
		if (this.lines.some(({ refused }) => refused !== null)) return null;
		this.#earlier = [...this.#earlier, entries];
		const check = {
			typed: Object.fromEntries(this.lines.map(({ key, text }) => [key, text])),
			entries,
			verdicts,
			accepted: Object.values(verdicts).every(({ kind }) => kind === 'accept' || kind === 'holds')
		};
		this.checks = [...this.checks, check];
		return check;
	}
}

/** The steps of a task that can be asked by themselves. */
export function markedSteps(task: Task): string[] {
	return stepsOf(task).filter((key) => task.method.steps[key]?.tolerance);
}

/** How many steps are the reader's, one time after the other: the last, the last two, all. */
export function fading(steps: number): number[] {
	return [1, 2, steps].slice(0, steps);
}

/** What is said of a step: every step before it stands worked, so only its own formula is left. */
export function saidOf(task: Task, verdict: Verdict, key: string, units: LengthUnit): string {
	if (verdict.kind === 'rework' && verdict.cause.kind === 'unknown') {
		return 'That is not it. Work it by the formula above, or look at the working.';
	}
	return inBothUnits(sayVerdict(task, verdict, key), units);
}
