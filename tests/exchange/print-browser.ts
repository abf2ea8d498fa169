import { chromium, type Browser } from 'playwright';
import { chromiumFlags, findChromium } from '../../src/scripts/chromium.js';

/** What both papers have inside their margins of 10 mm, in pixels. */
const papers = {
	Letter: { width: 739, height: 979 },
	A4: { width: 717, height: 1047 }
} as const;

export type Paper = keyof typeof papers;

const pixel = 25.4 / 96;

export function openBrowser(): Promise<Browser> {
	return chromium.launch({ executablePath: findChromium(), args: chromiumFlags });
}

/** How many pages a document prints on a paper. */
export async function printedPages(browser: Browser, html: string, paper: Paper): Promise<number> {
	const page = await browser.newPage();
	try {
		await page.setContent(html);
		const pdf = await page.pdf({ format: paper });
		return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
	} finally {
		await page.close();
	}
}

/** The smallest lettering of formulas in points, and those whose lines run into each other. */
export async function formulasOf(browser: Browser, html: string) {
	const page = await browser.newPage({ viewport: papers.Letter });
	try {
		await page.emulateMedia({ media: 'print' });
		await page.setContent(html);
		return await page.evaluate(() => {
			const letters = [...document.querySelectorAll('math :is(mn, mi, mtext)')];
			const sizes = letters.map((one) => parseFloat(getComputedStyle(one).fontSize) * 0.75);
			const collide = [...document.querySelectorAll('p + p:has(math)')].filter((below) => {
				const above = below.previousElementSibling?.querySelector('math');
				const math = below.querySelector('math');
				if (!above || !math) return false;
				return above.getBoundingClientRect().bottom > math.getBoundingClientRect().top + 1;
			});
			return { smallest: Math.min(...sizes), collide: collide.map((one) => one.textContent) };
		});
	} finally {
		await page.close();
	}
}

/** What stands too wide or is cut off, and the heights of elements in mm, as printed. */
export async function laidOut(browser: Browser, html: string, selector: string, paper: Paper) {
	const page = await browser.newPage({ viewport: papers[paper] });
	try {
		await page.emulateMedia({ media: 'print' });
		await page.setContent(html);
		const found = await page.evaluate((css) => {
			const all = [...document.querySelectorAll<HTMLElement>('td, figure, .say, header, footer')];
			const wide = all.filter((one) => one.scrollWidth > one.clientWidth + 1);
			return {
				wide: wide.map((one) => `${one.className || one.tagName}: ${one.textContent}`),
				heights: [...document.querySelectorAll(css)].map(
					(one) => one.getBoundingClientRect().height
				)
			};
		}, selector);
		return { wide: found.wide, heights: found.heights.map((height) => height * pixel) };
	} finally {
		await page.close();
	}
}
