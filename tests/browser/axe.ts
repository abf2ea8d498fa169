import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

const axeSource = readFileSync(
	createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
	'utf8'
);

/** The two ends of what a page is looked at with. */
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
	if (!(await page.evaluate('"axe" in window'))) await page.evaluate(axeSource);
	return page.evaluate<string[]>(listed);
}

/**
 * Looks at the page as it is with both ends of `looks`: no rule that a program can check is broken,
 * and nothing is wider than the window. Leaves the page as wide and as light as it was.
 */
export async function isSound(page: Page, state: string): Promise<void> {
	const before = page.viewportSize();
	for (const { viewport, colorScheme } of looks) {
		await page.setViewportSize(viewport);
		await page.emulateMedia({ colorScheme });
		const at = `${state}, ${colorScheme}, ${viewport.width} px`;
		expect(await violations(page), at).toEqual([]);
		expect(await overTheEdge(page), at).toBeLessThanOrEqual(0);
	}
	if (before) await page.setViewportSize(before);
	await page.emulateMedia({ colorScheme: 'light' });
}

// What passes is left out, and only what is told leaves the page: most of the time was for these.
const listed = `axe
	.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'], resultTypes: ['violations'] })
	.then(({ violations }) =>
		violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + ': ' + html.slice(0, 120)))
	)`;
