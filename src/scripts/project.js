import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { accessSync, constants } from 'node:fs';
import { basename, join, resolve } from 'node:path';

/** The top of the project. */
export const top = resolve(import.meta.dirname, '../..');

/**
 * quiet: show the program's output only when it fails, and then in one piece; cwd: instead of the
 * top of the project.
 *
 * @typedef {{ quiet?: boolean, env?: NodeJS.ProcessEnv, cwd?: string }} RunOptions
 */

/** A failure whose message tells the person what to do. */
export class Advice extends Error {}

/** @type {Readonly<Record<string, string>>} */
const unwritable = {
	EACCES: 'belongs to somebody else',
	EPERM: 'belongs to somebody else',
	EROFS: 'is on a disk that can only be read',
	ENOSPC: 'is on a disk that is full'
};

/**
 * One sentence on what to do; null when nobody knows.
 *
 * @param {unknown} error
 */
export function adviceOn(error) {
	if (error instanceof Advice) return error.message;
	if (!(error instanceof Error) || !('code' in error)) return null;
	const why = unwritable[String(error.code)];
	return why
		? `This folder cannot be written (it ${why}): copy the project to a folder of your own, and start it there.`
		: null;
}

/**
 * @throws an error that `adviceOn` explains, unless files can be written in the project
 */
export function mustBeWritable() {
	accessSync(top, constants.W_OK);
}

/**
 * Runs the script's work; a failure ends it with one line, without a stack when it is advice.
 *
 * @param {() => Promise<void>} work
 */
export async function main(work) {
	try {
		await work();
	} catch (error) {
		console.error(adviceOn(error) ?? error);
		process.exitCode = 1;
	}
}

/**
 * Runs a program file of an installed package.
 *
 * @param {string} file path below node_modules
 * @param {string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<boolean>} whether it succeeded
 */
export function runPackage(file, args, options) {
	return run(process.execPath, [join(top, 'node_modules', file), ...args], options);
}

/**
 * Runs npm.
 *
 * @param {string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<boolean>} whether it succeeded
 */
export function runNpm(args, options) {
	// Under `npm start` this names the npm that runs us, which need not be on the PATH.
	const npm = process.env.npm_execpath;
	if (npm && basename(npm) === 'npm-cli.js') return run(process.execPath, [npm, ...args], options);
	return run('npm', args, options);
}

/**
 * Runs any program.
 *
 * @param {string} command
 * @param {string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<boolean>} whether it succeeded
 */
export async function run(command, args, { quiet = false, env = {}, cwd = top } = {}) {
	const child = spawn(command, args, {
		cwd,
		env: { ...process.env, ...env },
		stdio: quiet ? ['ignore', 'pipe', 'pipe'] : 'inherit',
		// With what it starts, it is a group of its own that can be ended as one.
		detached: quiet && process.platform !== 'win32'
	});
	if (quiet) endWithUs(child);
	/** @type {Buffer[]} */
	const output = [];
	for (const stream of [child.stdout, child.stderr])
		stream?.on('data', (piece) => output.push(piece));
	const [status] = await once(child, 'close').catch((error) => {
		console.error(error.message);
		return [null];
	});
	if (quiet && status !== 0) process.stderr.write(Buffer.concat(output));
	return status === 0;
}

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();

/**
 * Has Ctrl-C, or whatever ends this program, end a quiet program and all that it started.
 *
 * @param {import('node:child_process').ChildProcess} child
 */
function endWithUs(child) {
	for (const [signal, status] of /** @type {const} */ ([
		['SIGINT', 130],
		['SIGTERM', 143],
		['SIGHUP', 129]
	])) {
		if (process.listenerCount(signal) === 0) {
			process.on(signal, () => {
				running.forEach(end);
				process.exit(status);
			});
		}
	}
	running.add(child);
	child.once('close', () => running.delete(child));
}

/** @param {import('node:child_process').ChildProcess} child */
function end(child) {
	if (child.pid === undefined) return;
	try {
		// A program may take Ctrl-C for something else; this ends all.
		if (process.platform === 'win32') child.kill();
		else process.kill(-child.pid, 'SIGTERM');
	} catch {
		// It has ended by itself.
	}
}
