import type { Handle } from '@sveltejs/kit';

/** Pages are made when the app is built: they ask for their letters at once, so that nothing moves. */
export const handle: Handle = ({ event, resolve }) =>
	resolve(event, {
		preload: ({ type, path }) => type === 'js' || type === 'css' || path.endsWith('.woff2')
	});
