import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { answerByKeyboard, openTask, wrongAnswers } from './keyboard.ts';
import { test } from './site-test.ts';

/** Side of what a finger must be able to hit, in CSS pixels. */
const finger = 44;

/**
 * What is pressed in a run and does not answer all over a square of 44 px about its middle. Words
 * in the text that explain themselves are as high as their line.
 */
function tooSmall(page: Page): Promise<string[]> {
	return page.evaluate((side) => {
		const pressed = 'button, a, input, label.choice';
		const all = [...document.querySelectorAll<HTMLElement>(`main :is(${pressed})`)];
		const inText = (one: HTMLElement) => one.closest('.words, .say, li p') !== null;
		const inChoice = (one: HTMLElement) =>
			one.closest('.choice') !== null && one.tagName === 'INPUT';
		return all.flatMap((one) => {
			if (!one.checkVisibility() || inText(one) || inChoice(one)) return [];
			one.scrollIntoView({ block: 'center', inline: 'center' });
			const { left, right, top, bottom } = one.getBoundingClientRect();
			const [x, y] = [(left + right) / 2, (top + bottom) / 2];
			if (right - left < 2) return [];
			const reach = side / 2 - 1;
			const hits = [
				[-reach, 0],
				[reach, 0],
				[0, -reach],
				[0, reach]
			].filter(([dx = 0, dy = 0]) => {
				const found = document.elementFromPoint(x + dx, y + dy);
				return found !== null && (one.contains(found) || found.contains(one));
			});
			const name = one.textContent.trim() || one.getAttribute('aria-label') || one.tagName;
			return hits.length === 4 ? [] : [`${name}: ${right - left} by ${bottom - top}`];
		});
	}, finger);
}

test.for([320, 360])(
	'on a phone %i px wide a finger hits all that a run has to press',
	async (width, { openPage }) => {
		const page = await openPage({
			viewport: { width, height: 740 },
			hasTouch: true,
			isMobile: true
		});
		for (const number of ['RL1-00C8-8D', 'SC2-0007-4Z', 'PN2-07VG-5D']) {
			await page.goto(`/practice/?task=${number}`);
			const task = await openTask(page);
			expect(await tooSmall(page), `${number}, before`).toEqual([]);
			await answerByKeyboard(page, wrongAnswers(task));
			await page.locator('.stamp').waitFor();
			expect(await tooSmall(page), `${number}, after`).toEqual([]);
		}
	}
);
