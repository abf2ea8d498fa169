import { expect } from 'vitest';
import { test } from './site-test.ts';

/** Pages of a PDF. */
function pagesIn(pdf: Buffer): number {
	return pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;
}

test('a lesson moves under the hand, shows its slips, and leaves the last step to its reader', async ({
	openPage
}) => {
	const page = await openPage({ viewport: { width: 360, height: 740 } });
	await page.goto('/lessons/#setback');
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
	await page.getByRole('switch', { name: /^T left out/ }).click();
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
