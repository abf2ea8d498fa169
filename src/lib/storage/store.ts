import { type LogCopy, openCopy } from './copy.ts';
import { type Database, openDatabase } from './database.ts';
import type { Fold } from './fold.ts';
import { type OnRecovered, recoverLog } from './recover.ts';
import { answered, type Trouble } from './trouble.ts';

/** The store of this device, open. */
export interface Store {
	readonly db: Database;
	/** The folds whose cache is kept up to date. */
	readonly folds: readonly Fold<unknown>[];
	/** The second copy of the log; null where this browser has none. */
	readonly copy: Promise<LogCopy | null>;
	/** Calls `listener` with the learners that another tab changed, until the return is called. */
	onChange(listener: (learners: readonly string[]) => void): () => void;
	/** Tells the other tabs that something of these learners changed. */
	changed(learners: readonly string[]): void;
	close(): void;
}

/** How to open a store; `name` differs in tests only. */
export interface StoreOptions {
	readonly folds: readonly Fold<unknown>[];
	readonly onTrouble: (trouble: Trouble) => void;
	/** Hears how far a lost log is put back from its copy. */
	readonly onRecovered?: OnRecovered;
	readonly name?: string;
}

/** @throws what `troubleOf` puts a name to, when this browser cannot open it */
export async function openStore(options: StoreOptions): Promise<Store> {
	const { folds, onTrouble, onRecovered, name = 'bucktail' } = options;
	const db = await answered(openDatabase(name, onTrouble), onTrouble);
	const copy = openCopy(db);
	// With learners in it the store is whole, and nothing waits for the copy.
	if ((await db.count('learners')) === 0) {
		const found = await copy;
		if (found) await recoverLog(db, found, onRecovered);
	}
	// Without it tabs do not hear of each other, and each still stores.
	const tabs = 'BroadcastChannel' in globalThis ? new BroadcastChannel(name) : null;
	return {
		db,
		folds,
		copy,
		onChange(listener) {
			const hear = ({ data }: MessageEvent<readonly string[]>) => listener(data);
			tabs?.addEventListener('message', hear);
			return () => tabs?.removeEventListener('message', hear);
		},
		changed(learners) {
			tabs?.postMessage(learners);
		},
		close() {
			tabs?.close();
			db.close();
			void copy.then((found) => found?.close());
		}
	};
}
