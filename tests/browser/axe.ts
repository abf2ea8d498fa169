import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');

interface Found {
	readonly violations: readonly { id: string; nodes: readonly { html: string }[] }[];
}

/** The two ends of what a page is looked at with. A page for axe is opened with `bypassCSP`. */
export const looks = [
	{ colorScheme: 'light', viewport: { width: 1280, height: 900 } },
	{ colorScheme: 'dark', viewport: { width: 360, height: 740 } }
] as const;

/** How many pixels the page is wider than its window. */
export function overTheEdge(page: Page): Promise<number> {
	return page.evaluate(
		() => document.documentElement.scrollWidth - document.documentElement.clientWidth
	);
}

/** What axe finds against WCAG 2.2 A and AA on the page as it is. */
export async function violations(page: Page): Promise<string[]> {
	await page.evaluate(axeSource);
	const { violations: found } = await page.evaluate<Found>(
		`axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] })`
	);
	return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`));
}
