import type { Locator } from 'playwright-core';
import { expect } from 'vitest';
import { test } from './site-test.ts';

/** Pages of a PDF. */
function pagesIn(pdf: Buffer): number {
	return pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;
}

async function bottomOf(place: Locator): Promise<number> {
	const box = await place.boundingBox();
	return box ? box.y + box.height : Infinity;
}

test('a lesson moves under the hand, shows its slips, and leaves the last step to its reader', async ({
	openPage
}) => {
	const page = await openPage({ viewport: { width: 360, height: 740 } });
	await page.goto('/lessons/');
	await page.getByRole('link', { name: 'Setback', exact: true }).click();
	const result = page.locator('.main .line').last();
	const drawn = () => page.locator('.board path').first().getAttribute('d');
	await result.waitFor();

	// By keyboard: a stocked size steps, and drawing and result follow at once.
	for (const name of ['Inside bend radius', 'Thickness']) {
		const [said, shape] = [await result.innerText(), await drawn()];
		await page.getByRole('spinbutton', { name }).press('ArrowUp');
		expect(await result.innerText(), name).not.toBe(said);
		expect(await drawn(), name).not.toBe(shape);
	}

	// A slip works the wrong number and shows the metal beside the right one.
	await page.getByRole('switch', { name: /^Only half of T/ }).click();
	await page.getByText(/^Wrong[.] Setback/).waitFor();
	expect(await page.locator('.pair svg').count()).toBe(2);

	// A word is explained where it stands, and gives the focus back.
	const word = page.getByRole('button', { name: 'mold line', exact: true }).first();
	await word.click();
	await page.getByRole('dialog', { name: 'mold line' }).waitFor();
	await page.keyboard.press('Escape');
	expect(await word.evaluate((pressed) => pressed === document.activeElement)).toBe(true);

	// The last step: K stands there, R and T are told.
	const value = async (label: string) => {
		const row = page.locator('.now dl div', { has: page.getByText(label, { exact: true }) });
		return (await row.locator('dd').innerText()).replace(/ in$/, '');
	};
	const [K, R, T] = [
		await value('K for the bend angle'),
		await value('Inside bend radius'),
		await value('Thickness')
	];
	// A wrong number bends the part, in view, and says by how much it comes out long.
	await page.getByRole('textbox', { name: 'Setback' }).fill('.01');
	await page.getByRole('textbox', { name: 'Setback' }).press('Enter');
	await page
		.locator('.now')
		.getByText(/each leg comes out .* too long/)
		.waitFor();
	const bent = page.locator('.now .metal svg').first();
	await expect.poll(async () => bottomOf(bent)).toBeLessThanOrEqual(740);
	await page.getByRole('textbox', { name: 'Setback' }).fill(`${K} * (${R} + ${T})`);
	await page.getByRole('textbox', { name: 'Setback' }).press('Enter');
	await page.locator('.now').getByText('ACCEPT').waitFor();
	await page.getByRole('button', { name: /^All of it/ }).click();
	await page.getByRole('textbox', { name: 'K for the bend angle' }).waitFor();

	// On paper: the lesson is one page, the formula sheet two.
	expect(pagesIn(await page.pdf({ format: 'Letter', preferCSSPageSize: true }))).toBe(1);
	await page.goto('/lessons/formulas/');
	await page.getByRole('heading', { name: 'Symbols' }).waitFor();
	for (const format of ['Letter', 'A4']) {
		expect(pagesIn(await page.pdf({ format, preferCSSPageSize: true })), format).toBe(2);
	}
});

test('a lesson leads into five tasks of its own, and its slips say by how much', async ({
	openPage
}) => {
	const page = await openPage({ viewport: { width: 360, height: 740 } });
	await page.goto('/lessons/#setback');
	await page.getByText(/each leg comes out 0[.]\d+\sin too/).waitFor();
	await page.getByText('Dashed: the part as it is wanted.').waitFor();
	await page.locator('footer').getByRole('button', { name: 'Practise setback' }).click();
	await page.waitForURL(/[?&]task=BS1-/);
	// One worked, five to be answered, and then it is over.
	await page.locator('[data-next]').waitFor();
	const cells = page.locator('.bar ol button');
	await expect.poll(() => cells.count()).toBe(6);
	await cells.last().click();
	await page.getByRole('button', { name: 'Finish the run' }).waitFor();
});

test('no line of a lesson is cut off or scrolls by itself, at twice the size of text', async ({
	openPage
}) => {
	const page = await openPage({ viewport: { width: 640, height: 800 } });
	await page.goto('/lessons/');
	const ids = await page.locator('li[id]').evaluateAll((items) => items.map(({ id }) => id));
	expect(ids.length).toBeGreaterThan(20);
	const cut: string[] = [];
	for (const id of ids) {
		await page.goto(`/lessons/#${id}`);
		await page.getByRole('heading', { name: 'Where it goes wrong' }).waitFor();
		await page.evaluate((all) => (document.documentElement.style.fontSize = all), '200%');
		await page.locator('.lesson details').evaluateAll((folded) => {
			for (const one of folded) one.setAttribute('open', '');
		});
		cut.push(...(await page.locator('html, .lesson *').evaluateAll(tooWide, id)));
		await page.goto('/lessons/#');
		await page.locator('li[id]').first().waitFor();
	}
	expect(cut).toEqual([]);
});

/** Runs in the page: what holds more than its width, but is not hidden on purpose. */
function tooWide(elements: Element[], id: string): string[] {
	return elements
		.filter((one) => !one.closest('svg, .unseen') && getComputedStyle(one).display !== 'inline')
		.filter((one) => one.tagName === 'HTML' || getComputedStyle(one).overflowX !== 'visible')
		.filter((one) => one.scrollWidth > one.clientWidth + 1)
		.map((one) => `${id}: ${one.tagName} ${one.textContent.trim().slice(0, 60)}`);
}
