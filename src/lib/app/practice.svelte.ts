import { type Task, taskFromNumber } from '$lib/engine/families/task.ts';
import { type Level, TaskNumberError } from '$lib/engine/families/task-number.ts';
import { type Check, TaskWork } from '$lib/ui/task-work.svelte.ts';
import {
	type Below,
	newRun,
	newTask,
	readRun,
	type Run,
	type RunTask,
	type RunTopic
} from './run.ts';
import { settings } from './settings.svelte.ts';

const key = 'bucktail.run';

/** The run on this device and the task that is open in it. */
export class Practice {
	run = $state.raw<Run | null>(null);
	work = $state.raw<TaskWork | null>(null);
	/** Why a task number could not be opened: one sentence. */
	problem = $state<string | null>(null);

	/** Takes up the run that was left on this device, if there is one. */
	load(): void {
		this.run = readRun(read());
	}

	start(topic: RunTopic, level: Level): Promise<void> {
		this.#keep(newRun(topic, level, below));
		return this.#open();
	}

	/** The number of the task that is open. */
	get number(): string | null {
		return this.run?.tasks[this.run.at]?.number ?? null;
	}

	/** Goes to task `index` of the run; past its end, the run gets one more of its kind. */
	async go(index: number): Promise<void> {
		const { run } = this;
		if (!run) return;
		const tasks = [...run.tasks];
		if (index >= tasks.length) tasks.push(...newRun(run.topic, run.level, below).tasks.slice(0, 1));
		this.#keep({ ...run, tasks, at: Math.min(Math.max(0, index), tasks.length - 1) });
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
	 * Opens the task of a number that was typed, pasted or linked. Returns whether it could;
	 * if not, `problem` says why and nothing else changes.
	 */
	async openNumber(typed: string): Promise<boolean> {
		this.problem = null;
		const task = await this.#drawn(typed);
		if (!task) return false;
		const { run } = this;
		const at = run?.tasks.findIndex(({ number }) => number === task.number) ?? -1;
		if (run && at >= 0) {
			await this.go(at);
		} else if (run) {
			await this.#insert(run, { number: task.number, standing: 'open' });
		} else {
			const { family, id } = task;
			this.#keep({
				topic: family.topic,
				level: id.level,
				at: 0,
				tasks: [{ number: task.number, standing: 'open' }]
			});
			await this.#open();
		}
		return true;
	}

	/** Notes a check in the run; the first one that counts decides how the task stands. */
	checked(check: Check): void {
		const { work } = this;
		if (!work) return;
		const helped = work.checks.length > 1 || check.opened.length > 0 || check.byStep;
		this.#stand(check.accepted ? (helped ? 'helped' : 'right') : 'wrong');
	}

	/** Notes that the working was shown before the answer was right. */
	worked(): void {
		this.#stand('wrong');
	}

	/** Keeps what has been typed, so that leaving the page loses nothing. */
	keepNotes(): void {
		const { run, work } = this;
		if (!run || !work) return;
		const notes = { ...work.notes(), checked: work.checks.length > 0 };
		this.#keep(changed(run, (task) => ({ ...task, notes })));
	}

	#stand(standing: RunTask['standing']): void {
		if (!this.run) return;
		this.#keep(changed(this.run, (task) => ({ ...task, standing })));
		this.keepNotes();
	}

	async #insert(run: Run, task: RunTask): Promise<void> {
		this.#keep({ ...run, tasks: run.tasks.toSpliced(run.at + 1, 0, task), at: run.at + 1 });
		await this.#open();
	}

	async #open(): Promise<void> {
		const { run } = this;
		const current = run?.tasks[run.at];
		if (!current) return;
		const task = await this.#drawn(current.number);
		if (!task) return;
		const work = new TaskWork(task, () => settings.units);
		if (current.notes) {
			work.resume(current.notes);
			if (current.notes.checked) await work.check();
		}
		this.work = work;
	}

	async #drawn(number: string): Promise<Task | null> {
		try {
			return await taskFromNumber(number);
		} catch (error) {
			if (!(error instanceof TaskNumberError)) throw error;
			this.problem = error.message;
			return null;
		}
	}

	#keep(run: Run): void {
		this.run = run;
		try {
			localStorage.setItem(key, JSON.stringify(run));
		} catch {
			// Without storage the run lasts until the page is closed.
		}
	}
}

/** The run with its open task changed. */
function changed(run: Run, change: (task: RunTask) => RunTask): Run {
	return { ...run, tasks: run.tasks.map((task, i) => (i === run.at ? change(task) : task)) };
}

const below: Below = (limit) => {
	const [word = 0] = crypto.getRandomValues(new Uint32Array(1));
	return Math.floor((word / 2 ** 32) * limit);
};

function read(): string | null {
	try {
		return localStorage.getItem(key);
	} catch {
		return null;
	}
}

export const practice = new Practice();
