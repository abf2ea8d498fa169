import { readFileSync } from 'node:fs';
import { Advice } from './project.js';

/**
 * What a suite came to, and the seconds it took.
 *
 * @typedef {{ passed: number, failed: number }} Count
 * @typedef {Count & { seconds: number }} Tally
 */

export const success = { passed: 1, failed: 0 };
export const failure = { passed: 0, failed: 1 };

/**
 * Runs a suite and prints its line. A suite that throws counts as one failure.
 *
 * @param {string} name
 * @param {() => Count | Promise<Count>} suite
 * @returns {Promise<Tally>}
 */
export async function timed(name, suite) {
	const start = performance.now();
	const count = await counted(suite);
	const tally = { ...count, seconds: Math.round((performance.now() - start) / 1000) };
	console.log(lineOf(name, tally));
	return tally;
}

/** @param {() => Count | Promise<Count>} suite @returns {Promise<Count>} */
async function counted(suite) {
	try {
		return await suite();
	} catch (error) {
		console.error(error instanceof Advice ? error.message : error);
		return failure;
	}
}

/**
 * Counts from the report of a test runner. A runner that fails without a failed test (it crashed,
 * found no tests, or met an error outside of them) counts as one failure.
 *
 * @param {string} report
 * @param {boolean} succeeded whether the runner says so
 * @returns {Count}
 */
export function countOf(report, succeeded) {
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

/**
 * A line for each suite, and the last one for all of them.
 *
 * @param {Record<string, Tally>} tallies
 */
export function summary(tallies) {
	const all = Object.values(tallies);
	const total = { passed: sum(all.map((t) => t.passed)), failed: sum(all.map((t) => t.failed)) };
	const lines = Object.entries(tallies).map(([name, tally]) => lineOf(name, tally));
	return { lines, last: asLine(total), failed: total.failed > 0 };
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
