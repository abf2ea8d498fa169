/*
 * Stands in the pages in place of what SvelteKit reads its routes with. That one knows parameters,
 * groups and matchers; the folders of `src/routes` are plain words (tests/architecture/routes.test.ts).
 */

/** @param {string} id as `/sets/new` */
export const parse_route_id = (id) => ({
	pattern: RegExp(`^${id === '/' ? '' : id}/?$`),
	params: []
});

/** The parameters of an address. */
export const exec = () => ({});

/** @param {string} id */
export const resolve_route = (id) => id;
