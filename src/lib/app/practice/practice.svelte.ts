import { late } from '$lib/ui/late.ts';
import type { TopicId } from '$lib/engine/families/topics.ts';
import { cardByCode, loadToDraw } from '$lib/engine/families/catalogue.ts';
import { type Task, taskFromNumber } from '$lib/engine/tasks/task.ts';
import type { Level } from '$lib/engine/families/level.ts';
import { TaskNumberError } from '$lib/engine/tasks/task-number.ts';
import type { Cause } from '$lib/engine/marking/verdict.ts';
import { newId } from '$lib/storage/new-id.ts';
import { once } from '$lib/ui/sheet/later.ts';
import { type Check, TaskWork } from '$lib/ui/sheet/task-work.svelte.ts';
import { below } from '../device/chance.ts';
import { keepOwn, readOwn } from '../device/own-kept.ts';
import { unexpected } from '../unexpected.svelte.ts';
import { newTask, type Run, type RunTask, withOpen } from './run.ts';
import { settings } from '../device/settings.svelte.ts';

/** What an answer comes to in the run and in the log: wanted once something is answered. */
export const notingPart = once(() => late(() => import('./noting.ts')));

/** Has the files of a task fetched, before it is known whether it is opened. */
export function fetchFor(number: string | null): void {
	const card = cardByCode(number?.slice(0, 2) ?? '');
	// What does not come is asked for again as it is opened, and its lack is told then.
	if (card) loadToDraw(card).catch(() => {});
}

const freePart = () => late(() => import('./free-run.ts'));

/** Tasks of a run, at most, before another begins: all of it is written at every step. */
const mostTasks = 100;

/** An answer as it was given: by the time it is noted, the person may be at another task. */
export interface AnswerGiven {
	readonly work: TaskWork;
	readonly task: RunTask;
	readonly run: Run;
	/** The checks up to this one. */
	readonly checks: readonly Check[];
	/** When it was given, and the answer before it, in milliseconds. */
	readonly at: number;
	readonly since: number;
}

/** The run on this device and the task that is open in it. */
export class Practice {
	run = $state.raw<Run | null>(null);
	work = $state.raw<TaskWork | null>(null);
	/** Why a task number could not be opened: one sentence. */
	problem = $state<string | null>(null);
	/** The same of the run's own task, which is then at hand without `work` on it. */
	unopened = $state<string | null>(null);
	/** How the last answer stands with the log. */
	saved = $state<'none' | 'saving' | 'saved' | 'failed'>('none');
	/** When the open task was opened, or its last answer noted: milliseconds since 1970-01-01 UTC. */
	since = 0;
	/** The task that comes next, drawn before it is opened (ahead.ts). */
	ahead: Task | null = null;
	/** Counts what `saved` has spoken of: one answer, or a task just opened. */
	turn = 0;

	/**
	 * Takes up the run that the learner at work left on this device, if there is one.
	 *
	 * @param wanted number of the task that is opened next, whose files come meanwhile
	 */
	async load(wanted: string | null = null): Promise<void> {
		fetchFor(wanted);
		const kept = readOwn('run');
		this.work = null;
		this.run = kept === null ? null : (await late(() => import('./run-reader.ts'))).readRun(kept);
	}

	/** Starts a run where none was asked for. */
	async start(): Promise<void> {
		return (await freePart()).startUnasked(this);
	}

	get task(): RunTask | undefined {
		return this.run?.tasks[this.run.at];
	}

	/** The number of the task that is open. */
	get number(): string | null {
		return this.task?.number ?? null;
	}

	/** Whether the open task is the last of a run that ends. */
	get atEnd(): boolean {
		const { run } = this;
		return !!run && (run.ends || run.topic === 'plan') && run.at >= run.tasks.length - 1;
	}

	/** Goes to task `index` of the run; past the end of a free run, it gets one more. */
	async go(index: number): Promise<void> {
		const topic = this.run?.topic ?? 'plan';
		if (topic !== 'plan' && index >= (this.run?.tasks.length ?? 0)) {
			await (await freePart()).addOne(this, topic);
		}
		const { run } = this;
		if (!run) return;
		this.keep({ ...run, at: Math.min(Math.max(0, index), run.tasks.length - 1) });
		await this.#open();
	}

	next(): Promise<void> {
		return this.go((this.run?.at ?? 0) + 1);
	}

	/** The same kind of task with new numbers, next in the run. */
	async alike(): Promise<void> {
		const { run, work } = this;
		if (!run || !work) return;
		const { family, id } = work.task;
		await this.#insert(run, newTask(family, id.level, below));
	}

	/**
	 * Opens the task of a number that was typed, pasted or linked. Returns whether it could; if
	 * not, `problem` says why and nothing else changes, unless it is one of the run.
	 */
	async openNumber(typed: string): Promise<boolean> {
		const task = await drawnFrom(typed);
		this.problem = typeof task === 'string' ? task : null;
		const wanted = typeof task === 'string' ? typed : task.number;
		const { run } = this;
		const at = run?.tasks.findIndex(({ number }) => number === wanted) ?? -1;
		if (run && at >= 0) {
			await this.go(at);
			return this.work !== null;
		}
		if (typeof task === 'string') return false;
		const opened: RunTask = { number: task.number, standing: 'open' };
		if (run) await this.#insert(run, opened);
		else {
			this.keep(runOfOne(task.family.topic, task.id.level, opened));
			await this.#open();
		}
		return true;
	}

	/** Notes a check in the run and in the log; the first one that counts decides how it stands. */
	async checked(check: Check): Promise<void> {
		const given = this.#answerGiven();
		if (given) await (await notingPart()).noteCheck(this, given, check);
	}

	/** Notes which of several causes the person says it was, at the check just noted. */
	async chosen(check: Check, cause: Cause): Promise<void> {
		const given = this.#answerGiven();
		if (given) await (await notingPart()).noteChoice(this, given, check, cause);
	}

	/** Notes that the working was shown before the answer was right. */
	async worked(): Promise<void> {
		const given = this.#answerGiven();
		if (given) await (await notingPart()).noteWorked(this, given);
	}

	#answerGiven(): AnswerGiven | null {
		const { work, task, run, since } = this;
		if (!work || !task || !run) return null;
		return { work, task, run, checks: work.checks, since, at: Date.now() };
	}

	/**
	 * Keeps what has been typed, so that leaving the page loses nothing.
	 *
	 * @param run as it is from now on
	 */
	keepNotes(run = this.run): void {
		const { work } = this;
		if (!run || !work) return;
		const notes = { ...work.notes(), checks: work.checks.length };
		this.keep(withOpen(run, (task) => ({ ...task, notes })));
	}

	async #insert(run: Run, task: RunTask): Promise<void> {
		this.keep({ ...run, tasks: run.tasks.toSpliced(run.at + 1, 0, task), at: run.at + 1 });
		await this.#open();
	}

	async #open(): Promise<void> {
		const current = this.task;
		if (!current) return;
		unexpected.clear();
		const { ahead } = this;
		this.ahead = null;
		const drawn = ahead?.number === current.number ? ahead : await drawnFrom(current.number);
		this.problem = null;
		this.unopened = typeof drawn === 'string' ? drawn : null;
		this.work = typeof drawn === 'string' ? null : await takenUp(drawn, current);
		this.turn++;
		this.saved = 'none';
		this.since = Date.now();
	}

	/** The run as it is from now on, here and on this device; one too long goes over into another. */
	keep(run: Run): void {
		this.run =
			run.at < mostTasks ? run : { ...run, id: newId(), at: 0, tasks: run.tasks.slice(run.at) };
		keepOwn('run', JSON.stringify(this.run));
	}
}

/** The run of somebody who opened one task by hand. */
export function runOfOne(topic: TopicId, level: Level, task: RunTask): Run {
	return { id: newId(), topic, level, at: 0, day: 0, budget: 0, tasks: [task] };
}

/** The task of a number, or one sentence that says why there is none. */
async function drawnFrom(number: string): Promise<Task | string> {
	try {
		return await taskFromNumber(number, loadToDraw);
	} catch (error) {
		return error instanceof TaskNumberError ? error.message : unexpected.sentence(error, number);
	}
}

/** The work on a task as it was left; where it cannot be marked again, what was typed. */
async function takenUp(task: Task, { standing, notes, planned }: RunTask): Promise<TaskWork> {
	const work = new TaskWork(task, () => settings.units, notingPart);
	if (standing === 'shown') work.worked = true;
	// Help fades: one was shown worked, this one is talked through, the next stands alone.
	else if (planned?.worked) work.byStep = work.stepKeys.length > 1;
	if (!notes) return work;
	work.resume(notes);
	try {
		if (notes.checks > 0) await work.check();
	} catch (error) {
		unexpected.show(error, task.number);
	}
	return work;
}

export const practice = new Practice();
