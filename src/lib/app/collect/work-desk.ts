import { late } from '$lib/ui/late.ts';
import { SetError } from '$lib/engine/sets/set-error.ts';
import type { work } from './set-work.ts';

/*
 * Hands work on sets to a worker. Where there can be none, the page does the work itself: slower
 * to the touch, and right all the same.
 */

type Work = typeof work;
export type Job = keyof Work;
type Rest<J extends Job> = Parameters<Work[J]> extends [unknown, ...infer R] ? R : never;
type Told<J extends Job> = Parameters<Work[J]>[0];
type AnyProgress = (done: number, of: number, part?: unknown) => void;
type Result<J extends Job> = Awaited<ReturnType<Work[J]>>;

/** What goes to the worker. */
export interface Asked {
	readonly id: number;
	readonly job: Job;
	readonly args: readonly unknown[];
}

/** What comes back: how far it is, what came out, or one sentence on why nothing did. */
export type Answered = { readonly id: number } & (
	| { readonly done: number; readonly of: number; readonly part?: unknown }
	| { readonly result: unknown }
	| { readonly sentence: string }
	| { readonly fault: string }
);

interface Waiting {
	readonly progress: AnyProgress;
	/** Takes the answer; null when the worker has failed. */
	readonly give: (answer: Answered | null) => void;
	readonly fail: (error: Error) => void;
}

/** Work was called off. */
export class CalledOff extends Error {}

export class WorkDesk {
	#worker: Worker | null = null;
	/** Whether a worker has ever answered here. */
	#works = false;
	/** Whether there can be none here. */
	#isAlone = false;
	readonly #waiting = new Map<number, Waiting>();
	#next = 1;

	/**
	 * Does a piece of work.
	 *
	 * @throws SetError with one sentence for the person; CalledOff
	 */
	async run<J extends Job>(job: J, args: Rest<J>, told: Told<J> = () => {}): Promise<Result<J>> {
		// A worker tells of a job what the job tells.
		const progress = told as AnyProgress;
		const worker = this.#open();
		if (!worker) return this.#here(job, args, progress);
		const id = this.#next++;
		const answer = await new Promise<Answered | null>((resolve, reject) => {
			this.#waiting.set(id, { progress, give: resolve, fail: reject });
			worker.postMessage({ id, job, args } satisfies Asked);
		}).finally(() => this.#waiting.delete(id));
		if (answer === null && !this.#works) return this.#here(job, args, progress);
		if (answer && 'sentence' in answer) throw new SetError(answer.sentence);
		// What the worker gives for a job is what the job gives.
		if (answer && 'result' in answer) return answer.result as Result<J>;
		throw new Error(answer && 'fault' in answer ? answer.fault : 'the worker has stopped');
	}

	/** Calls off what is being done. */
	stop(): void {
		this.#worker?.terminate();
		this.#worker = null;
		for (const { fail } of this.#waiting.values()) fail(new CalledOff());
	}

	#open(): Worker | null {
		if (this.#isAlone) return null;
		try {
			this.#worker ??= this.#listening(
				new Worker(new URL('./set-work.worker.ts', import.meta.url), { type: 'module' })
			);
		} catch {
			return null;
		}
		return this.#worker;
	}

	#listening(worker: Worker): Worker {
		worker.addEventListener('message', ({ data }: MessageEvent<Answered>) => {
			this.#works = true;
			const waiting = this.#waiting.get(data.id);
			if ('done' in data) waiting?.progress(data.done, data.of, data.part);
			else waiting?.give(data);
		});
		worker.addEventListener('error', () => {
			// One that did not start tells so once, and never answers.
			this.#isAlone = !this.#works;
			for (const { give } of this.#waiting.values()) give(null);
		});
		return worker;
	}

	async #here<J extends Job>(job: J, args: Rest<J>, progress: AnyProgress): Promise<Result<J>> {
		const { runJob } = await late(() => import('./run-job.ts'));
		return (await runJob(job, args, progress)) as Result<J>;
	}
}
