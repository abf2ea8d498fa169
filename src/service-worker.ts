/// <reference lib="webworker" />
import { base, build, files, prerendered, version } from '$service-worker';
import { isKept, keptAs } from '$lib/app/device/kept-as.ts';

// Everything the app is made of is kept on the device at the first visit, so that it opens and
// works without a network. A new version is kept whole before it takes over, and the one before it
// stays as long as a page of it is open: what such a page fetches late has a name of that version.
declare const self: ServiceWorkerGlobalScope;

const cacheName = keptAs(version);
const assets = new Set([...build, ...files, ...prerendered]);
const built = new Set(build);

/** Not in TypeScript's library yet: https://w3c.github.io/ServiceWorker/#register-router-method */
interface Routing {
	addRoutes?(rule: { condition: object; source: 'cache' }): Promise<void>;
}

self.addEventListener('install', (event) => {
	// What is named by its content comes from any version kept, and need not wake this worker.
	const named = { urlPattern: { pathname: `${base}/_app/immutable/*` }, requestMethod: 'GET' };
	void (event as Routing).addRoutes?.({ condition: named, source: 'cache' }).catch(() => {});
	event.waitUntil(
		caches
			.open(cacheName)
			.then((cache) => cache.addAll([...assets].map(asNew)))
			.then(() => self.skipWaiting())
	);
});

/** A file whose name does not tell its content is never taken from what the browser has kept. */
function asNew(path: string): Request {
	return new Request(path, { cache: built.has(path) ? 'default' : 'reload' });
}

self.addEventListener('activate', (event) => {
	event.waitUntil(
		oldCaches()
			.then((old) => Promise.all(old.map((name) => caches.delete(name))))
			.then(() => self.clients.claim())
	);
});

/** The caches that no open page needs. Pages hold a lock by the name of their cache. */
async function oldCaches(): Promise<string[]> {
	const { held = [] } = await navigator.locks.query();
	const open = new Set(held.map(({ name }) => name));
	const names = await caches.keys();
	return names.filter((name) => isKept(name) && name !== cacheName && !open.has(name));
}

self.addEventListener('fetch', (event) => {
	const url = new URL(event.request.url);
	if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
	// The path alone names a page: a query such as ?task= is read by the page itself.
	if (assets.has(url.pathname)) event.respondWith(kept(url.pathname, event.request));
	// A page's links rest on its slash.
	else if (assets.has(`${url.pathname}/`)) {
		url.pathname += '/';
		event.respondWith(Response.redirect(url.href));
	} else event.respondWith(keptBefore(url.pathname, event.request));
});

async function kept(pathname: string, request: Request): Promise<Response> {
	return (await caches.match(pathname, { cacheName })) ?? fetch(request);
}

/** A file of an earlier version, for a page of it that is still open. */
async function keptBefore(pathname: string, request: Request): Promise<Response> {
	return (await caches.match(pathname)) ?? fetch(request);
}
