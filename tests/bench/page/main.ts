import { cpus, loadavg } from 'node:os';
import { bundle } from '../app/long-log.ts';
import { openSite } from '../app/site.ts';
import { cold } from './cold.ts';
import { offline } from './offline.ts';
import { run } from './run.ts';
import { weights } from './weights.ts';

/*
 * What a page takes on a slow device, measured on this machine in Chromium. Prints tables; asserts
 * nothing. A name after the file runs one part: node src/scripts/run.js tests/bench/page/main.ts run
 */

const parts = { weights, cold, run, offline };

const [, , , only] = process.argv;
const [site, script] = [await openSite(), await bundle()];
tellLoad('before');
try {
	for (const [name, part] of Object.entries(parts)) {
		if (only === undefined || only === name) await part(site, script);
	}
} finally {
	await site.close();
}
tellLoad('after');

/** Whatever else the machine does is in the figures. */
function tellLoad(when: string): void {
	const [minute = 0] = loadavg();
	console.log(
		`\nLoad of the machine ${when}: ${minute.toFixed(2)} on ${cpus().length} processors.`
	);
}
