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

/**
 * What nothing may be pushed over the edge by: the narrowest window (WCAG 1.4.10), text of twice the
 * size (1.4.4), and lettering set wide (1.4.12).
 */
const reflowed = [
	{ name: '320 px', width: 320 },
	{ name: 'text of 200 %', width: 640, size: '200%' },
	{ name: 'text set wide', width: 360, letters: '0.12em', words: '0.16em', lines: '1.5' }
];

/** Runs in the page. */
function setType(type: { size?: string; letters?: string; words?: string; lines?: string }): void {
	Object.assign(document.documentElement.style, {
		fontSize: type.size ?? '',
		letterSpacing: type.letters ?? '',
		wordSpacing: type.words ?? ''
	});
	document.body.style.lineHeight = type.lines ?? '';
}

/** How many pixels the page is wider than its window. */
export function overTheEdge(page: Page): Promise<number> {
	return page.evaluate(
		() => document.documentElement.scrollWidth - document.documentElement.clientWidth
	);
}

/** What axe finds on the page as it is against WCAG 2.2 A and AA, and in its headings and landmarks. */
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
	await page.emulateMedia({ colorScheme: 'light' });
	for (const { name, width, ...type } of reflowed) {
		await page.setViewportSize({ width, height: 740 });
		await page.evaluate(setType, type);
		expect(await overTheEdge(page), `${state}, ${name}`).toBeLessThanOrEqual(0);
	}
	await page.evaluate(setType, {});
	if (before) await page.setViewportSize(before);
}

// Most of the time was for these: what passes, selectors of elements, and style sheets that only
// rules look at which are not asked for. Only what is told leaves the page.
const listed = `axe
	.run({
		runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
		rules: {
			'heading-order': { enabled: true },
			'landmark-one-main': { enabled: true },
			'landmark-unique': { enabled: true },
			'page-has-heading-one': { enabled: true },
			region: { enabled: true },
			'target-size': { enabled: true }
		},
		resultTypes: ['violations'],
		selectors: false,
		preload: false
	})
	.then(({ violations }) =>
		violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + ': ' + html.slice(0, 120)))
	)`;
