import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { site } from '../../src/scripts/build.js';

/*
 * Ways from page to page, as they stand in the built pages before any script has run.
 */

const pages = readdirSync(site, { recursive: true, encoding: 'utf8' })
	.filter((path) => path.endsWith('index.html'))
	.map((file) => ({ path: dirname(file), html: readFileSync(join(site, file), 'utf8') }));

/** Links in a piece of a page: where each leads, from the top of the site, and its words. */
function linksIn({ path, html }: (typeof pages)[number]) {
	return [...html.matchAll(/<a\b([^>]*)>(.*?)<\/a>/gs)].map(([, attributes = '', inner = '']) => {
		const [, href = ''] = /\bhref="([^"]*)"/.exec(attributes) ?? [];
		const [, label] = /\baria-label="([^"]*)"/.exec(attributes) ?? [];
		const words = inner.replaceAll(/<[^>]*>/g, ' ').replaceAll(/\s+/g, ' ');
		const [file = '', part = ''] = href.replace(/\?[^#]*/, '').split('#');
		const to = file === '' ? path : posix.join(path, file).replace(/\/$/, '');
		return { to: part === '' ? to : `${to}#${part}`, name: (label ?? words).trim() };
	});
}

/** Pages of a task, a set or a panel that is open: they come from there. */
const brought = [
	...['ask', 'practice/done', 'panel/print', 'panel/questions', 'panel/time'],
	...['sets/print', 'sets/report', 'sets/student']
];

const main = ({ path, html }: (typeof pages)[number]) => ({
	path,
	html: /<nav aria-label="Main".*?<\/nav>/s.exec(html)?.[0] ?? ''
});

test('every page has the same links in the same order on top of it', () => {
	expect(pages.length).toBeGreaterThan(15);
	const [first = [], ...others] = pages.map((page) => linksIn(main(page)));
	expect(first.length).toBeGreaterThan(5);
	for (const other of others) expect(other).toEqual(first);
});

test('another page leads to every page, but to those that only a press brings', () => {
	const led = pages.flatMap((page) =>
		linksIn(page).flatMap(({ to }) => (to === page.path ? [] : to.replace(/#.*/, '')))
	);
	const unled = pages.map(({ path }) => path).filter((path) => !led.includes(path));
	expect(unled.sort()).toEqual(brought.sort());
});

describe.each(pages)('on $path', (page) => {
	test('links of one name lead to one place', () => {
		const byName = new Map<string, Set<string>>();
		for (const { to, name } of linksIn(page)) {
			byName.set(name, (byName.get(name) ?? new Set()).add(to));
		}
		expect([...byName].filter(([name, places]) => name === '' || places.size > 1)).toEqual([]);
	});
});
