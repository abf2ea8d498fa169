import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Advice, mustBeWritable, runNpm, top } from './project.js';

/** Installs the packages of package-lock.json unless node_modules holds exactly those. */
export async function ensureInstalled() {
	if (isInstalled()) return;
	mustBeWritable();
	console.log('Installing packages (the first time takes a minute) …');
	if (!(await runNpm(['ci', '--include=dev', '--no-progress', '--loglevel=error']))) {
		throw new Advice(
			'npm could not install the packages, as it says above: connect this machine to the network for the first start, then run npm start again.'
		);
	}
}

/** npm writes what it has installed, in the lock file's own form, when it is done. */
function isInstalled() {
	const installed = packagesIn('node_modules/.package-lock.json');
	const wanted = Object.entries(packagesIn('package-lock.json')).filter(([path]) => path !== '');
	// A package made for another system is optional and stays out.
	return wanted.every(
		([path, { version, optional }]) =>
			installed[path]?.version === version || (optional && !installed[path])
	);
}

/**
 * @param {string} file
 * @returns {Record<string, { version: string, optional?: boolean }>}
 */
function packagesIn(file) {
	try {
		return JSON.parse(readFileSync(join(top, file), 'utf8')).packages;
	} catch {
		return {};
	}
}
