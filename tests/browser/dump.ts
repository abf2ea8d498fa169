import type { Page } from 'playwright-core';

/** Everything that the site keeps on the device of a page. */
export interface Dump {
	/** Every row of every object store, by the store's name. */
	readonly stores: Readonly<Record<string, readonly unknown[]>>;
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
		const stores: Record<string, unknown[]> = {};
		for (const { name = '' } of await indexedDB.databases()) {
			const db = await wait(indexedDB.open(name));
			for (const store of db.objectStoreNames) {
				stores[store] = await wait(db.transaction(store).objectStore(store).getAll());
			}
			db.close();
		}
		return { stores, local: { ...localStorage }, session: { ...sessionStorage } };
	});
}
