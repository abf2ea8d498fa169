import type { BrowserContext } from 'playwright-core';

/**
 * Adds to `faults` what its pages do wrong. The browser refuses other machines by itself: a route
 * that does would take every request through Node, and switch the cache off.
 */
export function collectFaults(context: BrowserContext, site: string, faults: string[]) {
	const isForeign = (url: string | URL) => {
		const { origin, protocol } = new URL(url);
		return !['data:', 'blob:'].includes(protocol) && origin !== new URL(site).origin;
	};
	context.on('console', (message) => {
		if (message.type() === 'error') faults.push(`logged: ${message.text()}`);
	});
	context.on('weberror', (event) => faults.push(`threw: ${event.error().message}`));
	context.on('request', (request) => {
		if (isForeign(request.url())) faults.push(`asked for: ${request.url()}`);
	});
	context.on('page', (page) => {
		page.on('websocket', (socket) => faults.push(`opened: ${socket.url()}`));
	});
}
