import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ensureBuilt } from './build.js';
import { untilAnswerable } from './first-page.js';
import { Advice, main, runPackage, top } from './project.js';
import { bareFirstLoad } from './size.js';

/* Prints what the engine and the app take on this machine. Asserts nothing. */

const budget = 80_000;

await main(async () => {
	const config = ['build', '--config', '.config/vite.bench.config.ts'];
	if (!(await runPackage('vite/bin/vite.js', config, { quiet: true })))
		throw new Advice('The bench could not be built.');
	const bench = join(top, '.reports/bench/main.js');
	if (!runFile(bench)) throw new Advice('The bench of the engine stopped early.');
	await ensureBuilt();
	const { stdout } = spawnSync(process.execPath, [bench, '--numbers'], { encoding: 'utf8' });
	const loads = await untilAnswerable(stdout.trim().split(/\s+/));
	const bare = await bareFirstLoad();
	console.log('\n## JavaScript until the first task can be answered, gzip -9\n');
	console.log('| page | kB | files |\n| --- | ---: | ---: |');
	console.log(`| a bare SvelteKit page | ${kB(bare.bytes)} | ${bare.files.length} |`);
	for (const { number, bytes, files } of loads)
		console.log(`| task ${number} | ${kB(bytes)} | ${files} |`);
	const most = Math.max(...loads.map(({ bytes }) => bytes));
	console.log(`\nMost: ${kB(most)} kB of a budget of ${kB(budget)}.`);
	if (!runFile(join(top, 'src/scripts/run.js'), 'tests/bench/app/main.ts'))
		throw new Advice('The bench of the app stopped early.');
});

/** @param {string[]} args */
function runFile(...args) {
	return spawnSync(process.execPath, args, { cwd: top, stdio: 'inherit' }).status === 0;
}

/** @param {number} bytes */
function kB(bytes) {
	return (bytes / 1000).toFixed(1);
}
