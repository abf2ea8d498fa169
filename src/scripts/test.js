import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt } from './build.js';
import { requireChromium } from './chromium.js';
import { ensureInstalled } from './install.js';
import { Advice, main, runNpm, runPackage, top } from './project.js';

const reports = join(top, '.reports');

/** @typedef {{ passed: number, failed: number }} Tally */

await main(async () => {
	const slow = withSlowTests();
	rmSync(reports, { recursive: true, force: true });
	ensureInstalled();
	// From here on, the test runners use the Chromium found, and leave slow tests out or in.
	process.env.CHROMIUM_PATH = requireChromium();
	process.env.BUCKTAIL_SLOW = slow ? 'yes' : '';
	mkdirSync(reports);

	const lint = asTally(runNpm(['run', '--silent', 'lint']));
	const types = asTally(runNpm(['run', '--silent', 'check']));
	const build = asTally(builds());
	const unit = testsOf('unit');
	const chromium = testsOf('chromium');
	const browser = build.failed ? asTally(false) : testsOf('browser');
	summarize({ lint, types, build, unit, chromium, browser });
});

function withSlowTests() {
	const [option, ...rest] = process.argv.slice(2);
	if (option === undefined) return false;
	if (option === '--slow' && rest.length === 0) return true;
	throw new Advice('npm test takes one option, written: npm test -- --slow');
}

/** @param {boolean} succeeded @returns {Tally} */
function asTally(succeeded) {
	return { passed: succeeded ? 1 : 0, failed: succeeded ? 0 : 1 };
}

function builds() {
	try {
		ensureBuilt();
		return true;
	} catch (error) {
		console.error(error instanceof Advice ? error.message : error);
		return false;
	}
}

/**
 * Runs one test project and counts from its own report. A runner that fails without a failed test
 * (it crashed, found no tests, or met an error outside of them) counts as one failure.
 *
 * @param {string} project
 * @returns {Tally}
 */
function testsOf(project) {
	const report = join(reports, `${project}.json`);
	const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
	// As in CI: a missing snapshot fails instead of being written, and so does a left-over `.only`.
	const options = { env: { CI: 'true' } };
	const args = ['run', '--project', project, ...reporters];
	const succeeded = runPackage('vitest/vitest.mjs', args, options);
	const { passed, failed } = countIn(report);
	return { passed, failed: succeeded ? failed : Math.max(failed, 1) };
}

/** @param {string} report @returns {Tally} */
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
	const lines = Object.entries(tallies).map(
		([name, tally]) => `${name.padEnd(10)}${asLine(tally)}`
	);
	const all = Object.values(tallies);
	const total = { passed: sum(all.map((t) => t.passed)), failed: sum(all.map((t) => t.failed)) };
	console.log(['', ...lines, asLine(total)].join('\n'));
	writeFileSync(join(reports, 'summary.txt'), `${asLine(total)}\n`);
	if (total.failed > 0) process.exitCode = 1;
}

/** @param {Tally} tally */
function asLine({ passed, failed }) {
	return `${passed} passed, ${failed} failed`;
}

/** @param {number[]} numbers */
function sum(numbers) {
	return numbers.reduce((total, number) => total + number, 0);
}
