import { spawnSync } from 'node:child_process';
import { basename, join, resolve } from 'node:path';

/** The top of the project. */
export const top = resolve(import.meta.dirname, '../..');

/**
 * quiet: show the program's output only when it fails; cwd: instead of the top of the project.
 *
 * @typedef {{ quiet?: boolean, env?: NodeJS.ProcessEnv, cwd?: string }} RunOptions
 */

/** A failure whose message tells the person what to do. */
export class Advice extends Error {}

/**
 * Runs the script's work; a failure ends it with one line, without a stack when it is advice.
 *
 * @param {() => Promise<void>} work
 */
export async function main(work) {
	try {
		await work();
	} catch (error) {
		console.error(error instanceof Advice ? error.message : error);
		process.exitCode = 1;
	}
}

/**
 * Runs a program file of an installed package and waits for it.
 *
 * @param {string} file path below node_modules
 * @param {string[]} args
 * @param {RunOptions} [options]
 * @returns {boolean} whether it succeeded
 */
export function runPackage(file, args, options) {
	return run(process.execPath, [join(top, 'node_modules', file), ...args], options);
}

/**
 * Runs npm and waits for it.
 *
 * @param {string[]} args
 * @returns {boolean} whether it succeeded
 */
export function runNpm(args) {
	// Under `npm start` this names the npm that runs us, which need not be on the PATH.
	const npm = process.env.npm_execpath;
	if (npm && basename(npm) === 'npm-cli.js') return run(process.execPath, [npm, ...args]);
	return run('npm', args);
}

/**
 * @param {string} command
 * @param {string[]} args
 * @param {RunOptions} [options]
 */
function run(command, args, { quiet = false, env = {}, cwd = top } = {}) {
	const { status, stdout, stderr } = spawnSync(command, args, {
		cwd,
		env: { ...process.env, ...env },
		stdio: quiet ? 'pipe' : 'inherit',
		maxBuffer: 100 * 1024 * 1024
	});
	if (quiet && status !== 0) process.stderr.write(Buffer.concat([stdout, stderr]));
	return status === 0;
}
