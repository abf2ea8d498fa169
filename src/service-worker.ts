/// <reference lib="webworker" />
import { build, files, prerendered, version } from '$service-worker';

// Everything the app is made of is kept on the device at the first visit, so that it opens and
// works without a network. A new version replaces the old one as a whole.
declare const self: ServiceWorkerGlobalScope;

const cacheName = `bucktail-${version}`;
const assets = [...build, ...files, ...prerendered];

self.addEventListener('install', (event) => {
	event.waitUntil(
		caches
			.open(cacheName)
			.then((cache) => cache.addAll(assets))
			.then(() => self.skipWaiting())
	);
});

self.addEventListener('activate', (event) => {
	event.waitUntil(
		caches
			.keys()
			.then((names) => names.filter((name) => name.startsWith('bucktail-') && name !== cacheName))
			.then((old) => Promise.all(old.map((name) => caches.delete(name))))
			.then(() => self.clients.claim())
	);
});

self.addEventListener('fetch', (event) => {
	const url = new URL(event.request.url);
	if (event.request.method !== 'GET' || url.origin !== self.location.origin) return;
	// The path alone names a page: a query such as ?task= is read by the page itself.
	if (assets.includes(url.pathname)) event.respondWith(kept(url.pathname, event.request));
	// A page's links rest on its slash.
	else if (assets.includes(`${url.pathname}/`)) {
		url.pathname += '/';
		event.respondWith(Response.redirect(url.href));
	}
});

async function kept(pathname: string, request: Request): Promise<Response> {
	const cache = await caches.open(cacheName);
	return (await cache.match(pathname)) ?? fetch(request);
}
