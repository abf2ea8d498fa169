import type { SkillId } from '$lib/engine/schedule/skill.ts';
import { type Sitting, sittingsOf } from '$lib/engine/schedule/sitting.ts';
import { count, events } from '$lib/storage/log.ts';
import { troubleOf, troubleSentences } from '$lib/storage/trouble.ts';
import { below } from '../device/chance.ts';
import { device } from '../device/device.svelte.ts';
import { plan } from '../plan/plan.svelte.ts';
import { unexpected } from '../unexpected.svelte.ts';
import { doneByDay, type Reading, readLog, taskFor } from './progress.ts';

/** Sittings shown at once. */
const pageLength = 12;

/** The learner at work, looked back on. */
export class Progress {
	/** Null until the log has been read through. */
	reading = $state.raw<Reading | null>(null);
	/** Events read so far, and how many there are. */
	read = $state(0);
	total = $state(0);
	/** One sentence when the log could not be read, else null. */
	trouble = $state<string | null>(null);
	#sittings = $state.raw<readonly Sitting[]>([]);
	#shown = $state.raw(pageLength);
	#older: AsyncGenerator<Sitting> | null = null;

	/** Newest first. */
	readonly sittings = $derived.by(() => this.#sittings.slice(0, this.#shown));
	/** Whether there are older sittings than those. */
	readonly hasOlder = $derived.by(() => this.#sittings.length > this.#shown);
	readonly days = $derived(device.learning && doneByDay(device.learning));

	/** Reads the log of a learner as of a day, until `signal` says to stop. */
	async load(learner: string, today: number, signal: AbortSignal): Promise<void> {
		[this.reading, this.trouble, this.#sittings] = [null, null, []];
		[this.read, this.total, this.#shown] = [0, 0, pageLength];
		try {
			const desk = await device.open();
			if (!desk || signal.aborted) return;
			this.#older = sittingsOf(events(desk.store, learner, { newestFirst: true }));
			await this.#readSittings();
			this.total = await count(desk.store, learner);
			const planner = await plan.load();
			const onRead = (read: number) => (this.read = read);
			const reader = { planner, today, signal, onRead };
			const reading = await readLog(events(desk.store, learner), reader);
			if (!signal.aborted) this.reading = reading;
		} catch (error) {
			if (!signal.aborted) this.trouble = unread(error);
		}
	}

	/** Shows a page more of older sittings. */
	async showOlder(): Promise<void> {
		this.#shown += pageLength;
		await this.#readSittings();
	}

	/** Number of a fresh task that asks for a step. */
	taskFor(skill: SkillId): string | undefined {
		return plan.planner
			? taskFor(skill, plan.planner, device.learning?.givens ?? [], below)
			: undefined;
	}

	// One more than is shown, to know whether there are more.
	async #readSittings(): Promise<void> {
		const older = this.#older;
		const read = [...this.#sittings];
		while (older && read.length <= this.#shown) {
			const next = await older.next();
			if (next.done) break;
			read.push(next.value);
		}
		// Another learner may have sat down meanwhile.
		if (older === this.#older) this.#sittings = read;
	}
}

function unread(error: unknown): string {
	const trouble = troubleOf(error);
	// Nothing was to be saved here.
	return trouble === 'failed' ? unexpected.sentence(error) : troubleSentences[trouble];
}
