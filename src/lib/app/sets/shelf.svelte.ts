import { isSetEvent, type SavedSet, type Shelf, shelfOf } from '$lib/engine/sets/shelf.ts';
import { setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { device } from '../device/device.svelte.ts';

/** The sets that the log of the learner at work tells of. */
class SetShelf {
	/** Null until the log has been read. */
	sets = $state.raw<Shelf | null>(null);

	/** Reads the log again; sets are few, and read from the log when a page of theirs is opened. */
	async load(): Promise<Shelf> {
		const desk = await device.open();
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

	/** Puts a set into the log; false where this browser cannot keep it. */
	async save(set: TaskSet): Promise<boolean> {
		const saved = await device.note({ type: 'set', hash: setHash(set), set });
		await this.load();
		return saved;
	}

	async move(hash: string, to: SavedSet['on']): Promise<boolean> {
		const saved = await device.note({ type: 'set-shelf', hash, to });
		await this.load();
		return saved;
	}
}

export const setShelf = new SetShelf();
