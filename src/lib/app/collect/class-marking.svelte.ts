import type { MarkedHandIn } from '$lib/engine/sets/collect.ts';
import type { ClassWork, Marked } from './set-work.ts';
import type { WorkDesk } from './work-desk.ts';

/** Told how far marking is. */
type Progress = (done: number, of: number) => void;

/** The marks of a class, worked out in the worker, one time after the other. */
export class ClassMarking {
	readonly #desk: WorkDesk;
	#marked = $state.raw<Marked | null>(null);
	#handIns = $state.raw<readonly MarkedHandIn[]>([]);
	#now: Promise<void> | null = null;
	#next: Promise<void> | null = null;

	constructor(desk: WorkDesk) {
		this.#desk = desk;
	}

	get summary() {
		return this.#marked?.summary ?? null;
	}

	get aside() {
		return this.#marked?.aside ?? [];
	}

	/** As they were marked, without what an instructor changed. */
	get handIns() {
		return this.#handIns;
	}

	clear(): void {
		this.#marked = null;
		this.#handIns = [];
	}

	/**
	 * Marks what there is to mark, once what is being marked is done; what comes in meanwhile is
	 * marked together.
	 */
	mark(work: () => Promise<ClassWork | null>, progress: Progress): Promise<void> {
		if (!this.#now) return this.#start(work, progress);
		this.#next ??= this.#now
			.catch(() => {})
			.then(() => {
				this.#next = null;
				return this.#start(work, progress);
			});
		return this.#next;
	}

	#start(work: () => Promise<ClassWork | null>, progress: Progress): Promise<void> {
		this.#now = this.#mark(work, progress).finally(() => (this.#now = null));
		return this.#now;
	}

	async #mark(work: () => Promise<ClassWork | null>, progress: Progress): Promise<void> {
		const of = await work();
		if (!of) return;
		const handIns: MarkedHandIn[] = [];
		this.#marked = await this.#desk.run('collect', [of], (done, count, part) => {
			if (part) handIns.push(part);
			else progress(done, count);
		});
		this.#handIns = handIns;
	}
}
