import { isSetEvent, type SavedSet, type Shelf, shelfOf } from '$lib/engine/sets/shelf.ts';
import { setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { openSet } from '$lib/engine/sets/open-set.ts';
import { SetError } from '$lib/engine/sets/set-error.ts';
import { device } from '../device/device.svelte.ts';
import { dropUnderWay, keepUnderWay, setsUnderWay } from './under-way.ts';

/** The sets that the log of the learner at work tells of. */
class SetShelf {
	/** Null until the log has been read. */
	sets = $state.raw<Shelf | null>(null);

	/** Reads the log again; sets are few, and read from the log when a page of theirs is opened. */
	async load(): Promise<Shelf> {
		const desk = await device.open();
		for (const set of setsUnderWay()) await this.#write(set).catch(ignoreUnfit);
		return this.#read(desk);
	}

	async #read(desk: Awaited<ReturnType<typeof device.open>>): Promise<Shelf> {
		const { learner } = device;
		const events =
			desk && learner ? await desk.eventsOf(learner.id, (type) => isSetEvent({ type })) : [];
		this.sets = shelfOf(events);
		return this.sets;
	}

	/** The saved set of a hash. */
	async find(hash: string): Promise<SavedSet | null> {
		const { saved } = this.sets ?? (await this.load());
		return saved.find((one) => one.hash === hash) ?? null;
	}

	/**
	 * Puts a set into the log; false where this browser cannot keep it. It is kept on this device
	 * at once, so that a page that is left before the log has it loses nothing.
	 *
	 * @throws SetError where some student could not be given the set
	 */
	async save(set: TaskSet): Promise<boolean> {
		keepUnderWay(set);
		const saved = await this.#write(set);
		await this.#read(await device.open());
		return saved;
	}

	async #write(set: TaskSet): Promise<boolean> {
		try {
			// Draws the numbers of a student, so that it shows here if there are too few.
			(await openSet(set)).for('A');
			return await device.note({ type: 'set', hash: setHash(set), set });
		} finally {
			dropUnderWay(set);
		}
	}

	async move(hash: string, to: SavedSet['on']): Promise<boolean> {
		const saved = await device.note({ type: 'set-shelf', hash, to });
		await this.load();
		return saved;
	}
}

function ignoreUnfit(error: unknown): void {
	if (!(error instanceof SetError)) throw error;
}

export const setShelf = new SetShelf();
