import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { Advice } from './project.js';

/** The flags under which headless Chromium runs quietly, as root too. */
export const chromiumFlags = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync'
];

// The shell is Chromium without windows: the tests on the built site take a quarter less with it.
const shell = 'chromium-headless-shell';
const namesOnPath = [
	shell,
	'chromium',
	'chromium-browser',
	'google-chrome',
	'google-chrome-stable'
];

const otherPlaces = [
	'/usr/bin/chromium',
	'/Applications/Chromium.app/Contents/MacOS/Chromium',
	'/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'
];

/**
 * The path of an installed Chromium, or undefined. CHROMIUM_PATH, when set, is the only candidate.
 *
 * @returns {string | undefined}
 */
export function findChromium() {
	return candidates().find(existsSync);
}

/**
 * Finds a Chromium that starts, installing the system's package when that needs no one's leave.
 *
 * @returns {string} its path
 * @throws {Advice} with one sentence that says what to install
 */
export function requireChromium() {
	const found = candidates().find(starts) ?? (mayInstall() ? install() : undefined);
	if (found) return found;
	if (process.env.CHROMIUM_PATH) {
		throw new Advice(
			`CHROMIUM_PATH (${process.env.CHROMIUM_PATH}) is not a Chromium that starts: correct or unset it.`
		);
	}
	throw new Advice(
		'The tests need Chromium: install it (Debian: sudo apt-get install chromium) or set CHROMIUM_PATH.'
	);
}

function candidates() {
	if (process.env.CHROMIUM_PATH) return [process.env.CHROMIUM_PATH];
	const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
	const onPath = namesOnPath.flatMap((name) => folders.map((folder) => join(folder, name)));
	return [...onPath, ...otherPlaces];
}

/**
 * Some systems ship a stub that only asks for an installation, so it has to be tried.
 *
 * @param {string} path
 */
function starts(path) {
	return existsSync(path) && spawnSync(path, ['--version'], { stdio: 'ignore' }).status === 0;
}

function mayInstall() {
	const isRoot = process.getuid?.() === 0;
	return isRoot && !process.env.CHROMIUM_PATH && existsSync('/etc/debian_version');
}

function install() {
	console.log('Installing Chromium with apt-get …');
	if (!installed()) {
		// The package lists of a fresh system are empty or old.
		aptGet('update');
		installed();
	}
	return candidates().find(starts);
}

/** Whether the system has it now, and the letters that printed pages are measured with. */
function installed() {
	return [shell, 'chromium'].some((name) => aptGet('install', name, 'fonts-liberation'));
}

/** @param {string[]} args */
function aptGet(...args) {
	const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
	return spawnSync('apt-get', ['-y', ...args], { stdio: 'ignore', env }).status === 0;
}
