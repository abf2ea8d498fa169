import { resolve } from 'node:path';
import { runnerImport } from 'vite';
import { Advice, main, top } from './project.js';

/*
 * Runs a TypeScript file that uses the engine, with its methods compiled as in the app:
 * node src/scripts/run.js <file>
 */

await main(async () => {
	const [file] = process.argv.slice(2);
	if (!file) throw new Advice('Name the file to run.');
	const plugin = resolve(top, 'src/plugins/compile-methods.ts');
	const { module } = await runnerImport(plugin, { configFile: false });
	await runnerImport(resolve(top, file), { configFile: false, plugins: [module.compileMethods()] });
});
