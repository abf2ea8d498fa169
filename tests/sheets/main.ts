import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { loadFamilies } from '../../src/lib/engine/families/catalogue.ts';
import { drawTask } from '../../src/lib/engine/tasks/task.ts';
import { ensureBuilt, site } from '../../src/scripts/build.js';
import { chromiumFlags, requireChromium } from '../../src/scripts/chromium.js';
import { top } from '../../src/scripts/project.js';
import { serve } from '../../src/scripts/serve.js';
import { looks, measured } from './measured.ts';

/*
 * The sheet of every family and level in Chromium: what of it is in view before and after Check.
 * Prints a table and leaves pictures in build/sheets; `-- RL` for one family.
 */

const wanted = process.argv[3];
await ensureBuilt();
const families = (await loadFamilies()).filter(({ code }) => !wanted || code === wanted);
const folder = join(top, 'build/sheets');
mkdirSync(folder, { recursive: true });
const server = await serve({ folder: site, port: 0, host: '127.0.0.1' });
const browser = await chromium.launch({ executablePath: requireChromium(), args: chromiumFlags });
const baseURL = `http://localhost:${server.port}`;
const pages = await Promise.all(
	looks.map(async (look) => ({
		look,
		page: await (await browser.newContext({ ...look.visitor, baseURL })).newPage()
	}))
);
const early: boolean[] = [];
let out = 0;

console.log(`| task | ${looks.map(({ name }) => name).join(' | ')} |`);
console.log(`| --- | ${looks.map(() => '---').join(' | ')} |`);
for (const family of families) {
	for (const level of [1, 2, 3] as const) {
		const task = drawTask(family, level, 7);
		const cells: string[] = [];
		for (const { look, page } of pages) {
			const { before, after } = await measured(page, task);
			await page.screenshot({ path: join(folder, `${task.number}-${look.id}.png`) });
			if (look.id === 'phone') {
				if (level < 3) early.push(before);
				cells.push(before ? 'in view' : 'below');
				continue;
			}
			if (after.length > 0) out++;
			cells.push(after.length > 0 ? `out: ${after.join(', ')}` : 'in view');
		}
		console.log(`| ${task.number} | ${cells.join(' | ')} |`);
	}
}
await browser.close();
server.close();
const share = early.filter(Boolean).length / Math.max(1, early.length);
console.log(
	`\nCheck in view before scrolling at 360 by 740, levels 1 and 2: ${Math.round(share * 100)} percent of ${early.length}`
);
console.log(`Sheets with something out of view after Check: ${out}`);
