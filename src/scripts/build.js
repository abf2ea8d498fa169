import './node-version.js';
import { createHash } from 'node:crypto';
import {
	chmodSync,
	existsSync,
	readdirSync,
	readFileSync,
	rmSync,
	statSync,
	symlinkSync,
	writeFileSync
} from 'node:fs';
import { join } from 'node:path';
import { Advice, main, mustBeWritable, runPackage, top } from './project.js';

const built = join(top, 'build');
const stamp = join(built, '.sources');
const program = join(built, 'cli/bucktail.js');
const sources = [
	'package.json',
	'package-lock.json',
	'svelte.config.js',
	'vite.config.ts',
	'.config',
	'src',
	'static'
];

/** The folder of the built pages. */
export const site = join(built, 'site');

/** Builds the site and the command line unless they were built from these very sources. */
export async function ensureBuilt() {
	if (isBuilt()) return;
	mustBeWritable();
	console.log('Building …');
	await build({ quiet: true });
}

/** Whether the build was made from the sources as they are now. */
export function isBuilt() {
	return existsSync(stamp) && readFileSync(stamp, 'utf8') === hashSources();
}

/** @param {{ quiet?: boolean }} [options] */
export async function build(options) {
	const hash = hashSources();
	rmSync(built, { recursive: true, force: true });
	await vite(['build'], options);
	await vite(['build', '--config', '.config/vite.cli.config.ts'], options);
	linkProgram();
	writeFileSync(stamp, hash);
}

/** @param {string[]} args @param {{ quiet?: boolean }} [options] */
async function vite(args, options) {
	if (!(await runPackage('vite/bin/vite.js', args, options))) throw new Advice('The build failed.');
}

/**
 * Puts the program where npx looks. Without this, npx links it once into a cache of its own, and
 * stays broken when that happened before the first build.
 */
function linkProgram() {
	chmodSync(program, 0o755);
	if (process.platform === 'win32') return;
	const link = join(top, 'node_modules/.bin/bucktail');
	rmSync(link, { force: true });
	symlinkSync('../../build/cli/bucktail.js', link);
}

function hashSources() {
	const hash = createHash('sha256');
	for (const path of sources.flatMap(filesIn)) {
		hash
			.update(`${path}\0`)
			.update(readFileSync(join(top, path)))
			.update('\0');
	}
	return hash.digest('hex');
}

/** @param {string} path a file or a folder @returns {string[]} the files in it, in a fixed order */
function filesIn(path) {
	const found = statSync(join(top, path), { throwIfNoEntry: false });
	if (!found?.isDirectory()) return found ? [path] : [];
	const names = readdirSync(join(top, path)).sort();
	return names.flatMap((name) => filesIn(`${path}/${name}`));
}

if (process.argv[1] === import.meta.filename) await main(build);
