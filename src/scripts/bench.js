import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ensureBuilt } from './build.js';
import { Advice, main, runPackage, top } from './project.js';

/* Prints what the engine and the app take on this machine. Asserts nothing. */

await main(async () => {
	const config = ['build', '--config', '.config/vite.bench.config.ts'];
	if (!(await runPackage('vite/bin/vite.js', config, { quiet: true })))
		throw new Advice('The bench could not be built.');
	const bench = join(top, '.reports/bench/main.js');
	if (!runFile(bench)) throw new Advice('The bench of the engine stopped early.');
	await ensureBuilt();
	if (!runFile(join(top, 'src/scripts/run.js'), 'tests/bench/app/main.ts'))
		throw new Advice('The bench of the app stopped early.');
});

/** @param {string[]} args */
function runFile(...args) {
	return spawnSync(process.execPath, args, { cwd: top, stdio: 'inherit' }).status === 0;
}
