import { resolve } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { build } from 'vite';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import type { Verdict } from '../../../src/lib/engine/marking/verdict.ts';
import { evidenceOf } from '../../../src/lib/engine/schedule/evidence.ts';
import { givensOf } from '../../../src/lib/engine/tasks/givens.ts';
import { noteVerdicts } from '../../../src/lib/engine/schedule/note-verdicts.ts';
import { top } from '../../../src/scripts/project.js';
import { rightAnswers } from '../../browser/keyboard.ts';
import type { Sample } from './attempts.ts';
import type * as InPage from './in-page.ts';
import { planShown } from './site.ts';

/** Attempts at every kind of task, one in three missed, with all that the log keeps of them. */
export async function sampleAttempts(): Promise<Sample[]> {
	const families = await loadFamilies();
	return levels.flatMap((level) =>
		families.map((family, n): Sample => {
			const task = drawTask(family, level, n * 31);
			const verdict: Verdict =
				n % 3 === 0
					? { kind: 'rework', cause: { kind: 'unknown' } }
					: { kind: 'accept', carried: false };
			const verdicts = Object.fromEntries(task.drawn.asked.map((key) => [key, verdict]));
			return {
				...{ v: 1, type: 'attempt', task: task.number, level, source: 'plan' },
				runId: '5a000000-0000-4000-8000-000000000009',
				typed: rightAnswers(task),
				verdicts: noteVerdicts(verdicts),
				...{ opened: [], byStep: false, worked: false, seconds: 75 },
				skills: evidenceOf(task, { verdicts, opened: [], byStep: false, charged: [] }),
				givens: givensOf(task)
			};
		})
	);
}

/** The script with what runs inside the page. */
export async function bundle(): Promise<string> {
	const built = await build({
		configFile: false,
		logLevel: 'warn',
		resolve: { alias: { $lib: resolve(top, 'src/lib') } },
		build: {
			write: false,
			lib: { entry: resolve(import.meta.dirname, 'in-page.ts'), formats: ['iife'], name: 'bench' }
		}
	});
	const [output] = Array.isArray(built) ? built : [built];
	if (!output || !('output' in output)) throw new Error('the bench script was not built');
	return `globalThis.bench = (() => { ${output.output[0].code}; return bench; })()`;
}

/** Calls something of the bundled script inside the page. */
export async function inPage<T>(
	page: Page,
	script: string,
	call: (bench: typeof InPage, samples: readonly Sample[], count: number) => T | Promise<T>,
	count: number
): Promise<T> {
	const samples = JSON.stringify(await sampleAttempts());
	// Through the debugger, which the page's content security policy does not bind.
	await page.evaluate(script);
	return page.evaluate<T>(`(${String(call)})(globalThis.bench, ${samples}, ${count})`);
}

/** Fills a device with a log; resolves to the milliseconds of the first start, which folds it. */
export async function fillDevice(
	device: BrowserContext,
	script: string,
	count: number
): Promise<number> {
	const page = await device.newPage();
	await page.goto('/rules/');
	await inPage(page, script, (bench, samples, n) => bench.fill(samples, n), count);
	const start = performance.now();
	await page.goto('/');
	await page.locator(planShown).waitFor();
	const took = performance.now() - start;
	await page.close();
	return took;
}
