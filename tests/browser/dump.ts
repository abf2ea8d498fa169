import type { Page } from 'playwright-core';
import type { KnownEvent } from '../../src/lib/engine/schedule/event.ts';

/** Everything that the site keeps on the device of a page. */
export interface Dump {
	/** Every row of every object store, by the store's name. */
	readonly stores: Readonly<Record<string, readonly unknown[]>>;
	/** The same of the databases in the storage bucket, where the page has one. */
	readonly copy: Readonly<Record<string, readonly unknown[]>>;
	readonly local: Readonly<Record<string, string>>;
	readonly session: Readonly<Record<string, string>>;
}

export function dump(page: Page): Promise<Dump> {
	return page.evaluate(async () => {
		const wait = <T>(request: IDBRequest<T>) =>
			new Promise<T>((resolve, reject) => {
				request.onsuccess = () => resolve(request.result);
				request.onerror = () => reject(request.error);
			});
		const rowsIn = async (factory: IDBFactory) => {
			const stores: Record<string, unknown[]> = {};
			for (const { name = '' } of await factory.databases()) {
				const db = await wait(factory.open(name));
				for (const store of db.objectStoreNames) {
					stores[store] = await wait(db.transaction(store).objectStore(store).getAll());
				}
				db.close();
			}
			return stores;
		};
		const { storageBuckets } = navigator as unknown as {
			storageBuckets?: { open(name: string): Promise<{ indexedDB: IDBFactory }> };
		};
		const bucket = await storageBuckets?.open('bucktail-copy');
		const copy = bucket ? await rowsIn(bucket.indexedDB) : {};
		const stores = await rowsIn(indexedDB);
		return { stores, copy, local: { ...localStorage }, session: { ...sessionStorage } };
	});
}

/** The events of one type in the log of the device, oldest first. */
export async function logged<T extends KnownEvent['type']>(
	page: Page,
	type: T
): Promise<Extract<KnownEvent, { type: T }>[]> {
	const { events = [] } = (await dump(page)).stores;
	return (events as Extract<KnownEvent, { type: T }>[]).filter((event) => event.type === type);
}
