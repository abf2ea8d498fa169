import { isSetEvent, type SavedSet, type Shelf, shelfOf } from '$lib/engine/sets/shelf.ts';
import { setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import type { KeptSheet } from '$lib/engine/sets/kept-draws.ts';
import { drawsAsMade, type OpenSet, openSet } from '$lib/engine/sets/open-set.ts';
import { SetError } from '$lib/engine/sets/set-error.ts';
import { unpackSheets } from '$lib/exchange/kept-sheets.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import { dropUnderWay, keepUnderWay, setsUnderWay } from './under-way.ts';
import { packSheets } from './pack-sheets.ts';

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
			const open = await this.open(set);
			open.for('A');
			const saved = await logbook.note({ type: 'set', hash: open.hash, set });
			await this.keepDrawn(open);
			return saved;
		} finally {
			dropUnderWay(set);
		}
	}

	/** Draws a set: what a later revision would draw otherwise, as this device has kept it. */
	async open(set: TaskSet): Promise<OpenSet> {
		return openSet(set, await unpackSheets(await this.keptFor(set)));
	}

	/** What this device has kept of a set, where it takes that to draw it. */
	async keptFor(set: TaskSet): Promise<readonly KeptSheet[]> {
		if (drawsAsMade(set)) return [];
		const { drawn } = await this.#ready();
		return drawn.get(setHash(set)) ?? [];
	}

	/** Which of the sheets are not kept yet: of codes, or with null of everybody. */
	async notKept(hash: string, codes: readonly (string | null)[]): Promise<(string | null)[]> {
		const { drawn } = await this.#ready();
		const known = new Set(drawn.get(hash)?.map(({ code }) => code));
		return codes.filter((code) => !known.has(code));
	}

	/** Keeps what everybody's tasks drew, and with a code the code's: a later revision may draw others. */
	async keepDrawn({ hash, set, tasks, for: own }: OpenSet, code?: string): Promise<void> {
		const isOwn = code !== undefined && set.numbers === 'own';
		const missing = await this.notKept(hash, isOwn ? [null, code] : [null]);
		const sheets = await packSheets(missing, (one) => (one === null ? tasks : own(one)));
		if (sheets.length > 0) await this.keepSheets(hash, sheets);
	}

	async keepSheets(hash: string, sheets: readonly KeptSheet[]): Promise<void> {
		const events = sheets.map((sheet) => ({ type: 'set-drawn' as const, hash, ...sheet }));
		await logbook.noteInParts(events, together);
		await this.#read(await device.open());
	}

	async #ready(): Promise<Shelf> {
		return this.sets ?? this.#read(await device.open());
	}

	async move(hash: string, to: SavedSet['on']): Promise<boolean> {
		const saved = await logbook.note({ type: 'set-shelf', hash, to });
		await this.load();
		return saved;
	}
}

/** Sheets written at once. */
const together = 10;

function ignoreUnfit(error: unknown): void {
	if (!(error instanceof SetError)) throw error;
}

export const setShelf = new SetShelf();
