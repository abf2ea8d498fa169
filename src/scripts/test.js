import './node-version.js';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt } from './build.js';
import { requireChromium } from './chromium.js';
import { ensureInstalled } from './install.js';
import { Advice, main, runNpm, runPackage, top } from './project.js';

const reports = join(top, '.reports');

const success = { passed: 1, failed: 0 };
const failure = { passed: 0, failed: 1 };

/**
 * What a suite came to, and the seconds it took.
 *
 * @typedef {{ passed: number, failed: number }} Count
 * @typedef {Count & { seconds: number }} Tally
 */

await main(async () => {
	const slow = withSlowTests();
	rmSync(reports, { recursive: true, force: true });
	await ensureInstalled();
	// From here on, the test runners use the Chromium found, and leave slow tests out or in.
	process.env.CHROMIUM_PATH = requireChromium();
	process.env.BUCKTAIL_SLOW = slow ? 'yes' : '';
	mkdirSync(reports);

	console.log('Lint, types, build and tests …');
	const [onSite, besides] = await Promise.all([suitesOnSite(), suitesBesides()]);
	const { types, build, browser } = onSite;
	const { lint, unit, chromium } = besides;
	summarize({ lint, types, build, unit, chromium, browser });
});

/*
 * Two rows of suites at the same time: none of them keeps two processors busy by itself. What each
 * prints comes in one piece, and only where it fails.
 */

async function suitesOnSite() {
	// One after the other: both write into .svelte-kit.
	const types = await timed('types', () => passes('check'));
	const build = await timed('build', builds);
	const browser = await timed('browser', () => (build.failed ? failure : testsOf('browser')));
	return { types, build, browser };
}

async function suitesBesides() {
	const lint = await timed('lint', () => passes('lint'));
	const unit = await timed('unit', () => testsOf('unit', 'alone'));
	const chromium = await timed('chromium', () => testsOf('chromium'));
	return { lint, unit, chromium };
}

function withSlowTests() {
	const [option, ...rest] = process.argv.slice(2);
	if (option === undefined) return false;
	if (option === '--slow' && rest.length === 0) return true;
	throw new Advice('npm test takes one option, written: npm test -- --slow');
}

/**
 * @param {string} name
 * @param {() => Count | Promise<Count>} suite
 * @returns {Promise<Tally>}
 */
async function timed(name, suite) {
	const start = performance.now();
	const count = await suite();
	const tally = { ...count, seconds: Math.round((performance.now() - start) / 1000) };
	console.log(lineOf(name, tally));
	return tally;
}

/** @param {string} script of package.json */
async function passes(script) {
	return (await runNpm(['run', '--silent', script], { quiet: true })) ? success : failure;
}

async function builds() {
	try {
		await ensureBuilt();
		return success;
	} catch (error) {
		console.error(error instanceof Advice ? error.message : error);
		return failure;
	}
}

/**
 * Runs test projects together and counts from their own report. A runner that fails without a failed test
 * (it crashed, found no tests, or met an error outside of them) counts as one failure.
 *
 * @param {string[]} projects
 * @returns {Promise<Count>}
 */
async function testsOf(...projects) {
	const report = join(reports, `${projects[0]}.json`);
	const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
	// As in CI: a missing snapshot fails instead of being written, and so does a left-over `.only`.
	const options = { quiet: true, env: { CI: 'true' } };
	const chosen = projects.flatMap((project) => ['--project', project]);
	const args = ['run', ...chosen, ...reporters];
	const succeeded = await runPackage('vitest/vitest.mjs', args, options);
	const { passed, failed } = countIn(report);
	return { passed, failed: succeeded ? failed : Math.max(failed, 1) };
}

/** @param {string} report @returns {Count} */
function countIn(report) {
	try {
		const { numPassedTests, numFailedTests, testResults } = JSON.parse(
			readFileSync(report, 'utf8')
		);
		const unread = testResults.filter(failsAsFile).length;
		return { passed: numPassedTests, failed: numFailedTests + unread };
	} catch {
		return { passed: 0, failed: 1 };
	}
}

/**
 * Whether a test file failed outside of its tests, for example as it was read.
 *
 * @param {{ status: string, assertionResults: { status: string }[] }} file
 */
function failsAsFile({ status, assertionResults }) {
	return status === 'failed' && !assertionResults.some((test) => test.status === 'failed');
}

/** @param {Record<string, Tally>} tallies */
function summarize(tallies) {
	const lines = Object.entries(tallies).map(([name, tally]) => lineOf(name, tally));
	const all = Object.values(tallies);
	const total = { passed: sum(all.map((t) => t.passed)), failed: sum(all.map((t) => t.failed)) };
	console.log(['', ...lines, asLine(total)].join('\n'));
	writeFileSync(join(reports, 'summary.txt'), `${asLine(total)}\n`);
	if (total.failed > 0) process.exitCode = 1;
}

/** @param {string} name @param {Tally} tally */
function lineOf(name, tally) {
	return `${name.padEnd(10)}${asLine(tally)}, ${tally.seconds} s`;
}

/** @param {Count} count */
function asLine({ passed, failed }) {
	return `${passed} passed, ${failed} failed`;
}

/** @param {number[]} numbers */
function sum(numbers) {
	return numbers.reduce((total, number) => total + number, 0);
}
