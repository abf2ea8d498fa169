import type { BrowserContext } from 'playwright-core';

/**
 * Reports what the pages of a context do wrong. The browser refuses other machines by itself: a
 * route that does would take every request through Node, and switch the cache off.
 */
export function collectFaults(
	context: BrowserContext,
	site: string,
	report: (fault: string) => void
) {
	const isForeign = (url: string | URL) => {
		const { origin, protocol } = new URL(url);
		return !['data:', 'blob:'].includes(protocol) && origin !== new URL(site).origin;
	};
	// Browsers ask for it by themselves where a file is opened that is no page, be it later.
	const unasked = new URL('/favicon.ico', site).href;
	context.on('console', (message) => {
		if (message.location().url === unasked) return;
		if (message.type() === 'error') report(`logged: ${message.text()}`);
	});
	context.on('weberror', (event) => report(`threw: ${event.error().message}`));
	context.on('request', (request) => {
		if (isForeign(request.url())) report(`asked for: ${request.url()}`);
	});
	context.on('page', (page) => {
		page.on('websocket', (socket) => report(`opened: ${socket.url()}`));
	});
}
