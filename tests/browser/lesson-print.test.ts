import { expect } from 'vitest';
import { test } from './site-test.ts';

test('every lesson is printed on one page, letter or A4, and a short one larger', async ({
	openPage
}) => {
	const page = await openPage({ viewport: { width: 1280, height: 800 } });
	await page.goto('/lessons/');
	const ids = await page.locator('li[id]').evaluateAll((items) => items.map(({ id }) => id));
	expect(ids.length).toBeGreaterThan(20);
	const long: string[] = [];
	const scales = new Map<string, number>();
	for (const id of ids) {
		await page.goto(`/lessons/#${id}`);
		await page.getByRole('heading', { name: 'Where it goes wrong' }).waitFor();
		for (const format of ['Letter', 'A4']) {
			const pdf = await page.pdf({ format, preferCSSPageSize: true });
			const pages = pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;
			if (pages !== 1) long.push(`${id}, ${format}: ${pages} pages`);
		}
		await page.emulateMedia({ media: 'print' });
		scales.set(id, await page.locator('.lesson').evaluate((one) => one.currentCSSZoom));
		await page.emulateMedia({ media: null });
		await page.goto('/lessons/#');
		await page.locator('li[id]').first().waitFor();
	}
	expect(long).toEqual([]);
	expect(scales.get('edge-distance')).toBe(1);
	expect(scales.get('whole-panel')).toBeLessThan(0.7);
});
