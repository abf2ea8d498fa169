import './node-version.js';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt } from './build.js';
import { requireChromium } from './chromium.js';
import { ensureInstalled } from './install.js';
import { Advice, main, runNpm, runPackage, top } from './project.js';
import { countOf, failure, success, summary, timed } from './suites.js';

const reports = join(top, '.reports');

await main(async () => {
	const slow = withSlowTests();
	rmSync(reports, { recursive: true, force: true });
	await ensureInstalled();
	// From here on, the test runners use the Chromium found, and leave slow tests out or in.
	process.env.CHROMIUM_PATH = requireChromium();
	process.env.BUCKTAIL_SLOW = slow ? 'yes' : '';
	mkdirSync(reports);

	console.log('Lint, types, build and tests …');
	const [{ types, build }, lint] = await Promise.all([
		typesAndBuild(),
		timed('lint', () => passes('lint'))
	]);
	const [unit, chromium] = await Promise.all([
		timed('unit', () => testsOf('unit', 'alone')),
		timed('chromium', () => testsOf('chromium'))
	]);
	const browser = await timed('browser', () => (build.failed ? failure : testsOf('browser')));
	summarize({ lint, types, build, unit, chromium, browser });
});

/*
 * Lint runs beside types and build, and chromium, which keeps little more than one processor busy,
 * beside unit. The tests on the built site keep all of them busy: beside others they were no
 * quicker, and pages came late. What a suite prints comes in one piece, and only where it fails.
 */
async function typesAndBuild() {
	// One after the other: both write into .svelte-kit.
	const types = await timed('types', () => passes('check'));
	const build = await timed('build', builds);
	return { types, build };
}

function withSlowTests() {
	const [option, ...rest] = process.argv.slice(2);
	if (option === undefined) return false;
	if (option === '--slow' && rest.length === 0) return true;
	throw new Advice('npm test takes one option, written: npm test -- --slow');
}

/** @param {string} script of package.json */
async function passes(script) {
	return (await runNpm(['run', '--silent', script], { quiet: true })) ? success : failure;
}

async function builds() {
	await ensureBuilt();
	return success;
}

/**
 * Runs test projects together and counts from their own report.
 *
 * @param {string[]} projects
 */
async function testsOf(...projects) {
	const report = join(reports, `${projects[0]}.json`);
	const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
	// As in CI: a missing snapshot fails instead of being written, and so does a left-over `.only`.
	const options = { quiet: true, env: { CI: 'true' } };
	const chosen = projects.flatMap((project) => ['--project', project]);
	const args = ['run', ...chosen, ...reporters];
	return countOf(report, await runPackage('vitest/vitest.mjs', args, options));
}

/** @param {Record<string, import('./suites.js').Tally>} tallies */
function summarize(tallies) {
	const { lines, last, failed } = summary(tallies);
	console.log(['', ...lines, last].join('\n'));
	writeFileSync(join(reports, 'summary.txt'), `${last}\n`);
	if (failed) process.exitCode = 1;
}
