import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { collectFaults } from './faults.ts';

/** Who opens a page, and what the browser is like. */
export interface Visitor extends BrowserContextOptions {
	/** When the page is opened; its clock runs on from there, and `page.clock` moves it. */
	readonly time?: string;
	/**
	 * A browser profile that nobody had before and nobody gets after: for what cannot be undone, and
	 * for what needs the site kept on the device, as without a network.
	 */
	readonly own?: boolean;
	/** Some files of the site come changed or not at all: for `page.route`. */
	readonly altered?: boolean;
}

interface Visit {
	readonly context: BrowserContext;
	readonly kind: string;
	page: Page;
	report: (fault: string) => void;
}

/**
 * Pages for one test after the other. A browser profile and its page cost five times what loading
 * the page costs, so they are handed on; what the site has kept on the device is removed between.
 */
export class Visitors {
	readonly #browser: Browser;
	readonly #site: string;
	readonly #free: Visit[] = [];

	/** @param site address of the built site */
	constructor(browser: Browser, site: string) {
		this.#browser = browser;
		this.#site = site;
	}

	/** Opens a page; `report` is told what goes wrong on it. */
	async open(visitor: Visitor, report: (fault: string) => void): Promise<Visit> {
		const { viewport = desk, colorScheme = 'light', time, own, altered, ...options } = visitor;
		const kind = own ? '' : JSON.stringify([options, time !== undefined, altered]);
		const visit = this.#take(kind) ?? (await this.#begin(kind, visitor));
		visit.report = report;
		if (time !== undefined) await visit.context.clock.install({ time: new Date(time) });
		if (viewport) await visit.page.setViewportSize(viewport);
		await visit.page.emulateMedia({ colorScheme });
		return visit;
	}

	#take(kind: string): Visit | undefined {
		const at = this.#free.findIndex((visit) => visit.kind === kind && kind !== '');
		return at < 0 ? undefined : this.#free.splice(at, 1)[0];
	}

	async #begin(kind: string, { time, own, altered, ...options }: Visitor): Promise<Visit> {
		const serviceWorkers = own ? 'allow' : 'block';
		const baseURL = options.baseURL ?? this.#site;
		const context = await this.#browser.newContext({ serviceWorkers, ...options, baseURL });
		context.setDefaultTimeout(patience);
		const visit = { context, kind, page: await context.newPage(), report: () => {} } as Visit;
		collectFaults(context, baseURL, (fault) => visit.report(fault));
		if (!own) refuse(visit, { clock: time === undefined, route: !altered });
		return visit;
	}

	/** Takes a page back. What it does from here on is no test's fault. */
	async end(visit: Visit): Promise<void> {
		visit.report = () => {};
		const handedOn = visit.kind !== '' && (await cleared(visit).catch(() => false));
		if (handedOn) this.#free.push(visit);
		else await visit.context.close();
	}
}

const desk = { width: 1280, height: 720 };

/** Milliseconds that anything on a page may take: a slow machine is no fault of the page. */
const patience = 90_000;

/** A file of the site in which no script runs. */
const bare = '/panel-1.schema.json';

/** Makes a visit as it was when it was new. */
async function cleared(visit: Visit): Promise<boolean> {
	const { context } = visit;
	if (visit.page.isClosed()) visit.page = await context.newPage();
	for (const page of context.pages()) if (page !== visit.page) await page.close();
	await visit.page.unrouteAll({ behavior: 'ignoreErrors' });
	await visit.page.goto(bare);
	await visit.page.emulateMedia({ media: null, forcedColors: null });
	await visit.page.evaluate(removeAll);
	return true;
}

async function removeAll(): Promise<void> {
	localStorage.clear();
	sessionStorage.clear();
	for (const { name = '' } of await indexedDB.databases()) {
		await new Promise((resolve, reject) => {
			const removing = indexedDB.deleteDatabase(name);
			removing.onsuccess = resolve;
			removing.onerror = reject;
			removing.onblocked = reject;
		});
	}
	interface Buckets {
		keys(): Promise<string[]>;
		delete(name: string): Promise<void>;
	}
	const { storageBuckets } = navigator as unknown as { storageBuckets?: Buckets };
	for (const name of (await storageBuckets?.keys()) ?? []) await storageBuckets?.delete(name);
}

/** What a page would keep for the test after has to be asked for. */
function refuse({ context, page }: Visit, { clock, route }: { clock: boolean; route: boolean }) {
	const forbid = (of: object, names: string[], option: string) => {
		for (const name of names) {
			Reflect.set(of, name, () => {
				throw new Error(`open the page with { ${option} } to use ${name}()`);
			});
		}
	};
	for (const one of [context, page]) {
		forbid(one, ['addInitScript', 'exposeFunction', 'exposeBinding'], 'own: true');
		if (route) forbid(one, ['route'], 'altered: true');
	}
	forbid(context, ['setOffline', 'grantPermissions'], 'own: true');
	if (clock) forbid(context.clock, ['install', 'setFixedTime', 'setSystemTime'], 'time: …');
}
