import { bundle } from './long-log.ts';
import { memory } from './memory.ts';
import { replan } from './replan.ts';
import { openSite } from './site.ts';
import { startUp } from './start-up.ts';

/*
 * What the built app takes in Chromium, measured on this machine. Prints tables; asserts nothing.
 * A name after the file runs one part: node src/scripts/run.js tests/bench/app/main.ts memory
 */

const parts = { 'start-up': startUp, replan, memory };

const [, , , only] = process.argv;
const [site, script] = [await openSite(), await bundle()];
try {
	for (const [name, run] of Object.entries(parts)) {
		if (only === undefined || only === name) await run(site, script);
	}
} finally {
	await site.close();
}
