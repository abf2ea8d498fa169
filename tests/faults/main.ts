import { plantedCopy, type Caught } from './planted.ts';
import { faults } from './faults.ts';

/*
 * Plants every fault of the list in a copy of the project, one at a time, and tells which test
 * fails: npm run faults [-- part of a name]. It fails when a fault passes all tests.
 */

// A missing snapshot fails instead of being written.
process.env.CI = 'true';

const [part = ''] = process.argv.slice(2);
const wanted = faults.filter(({ name }) => name.includes(part));
if (wanted.length === 0) throw new Error(`No fault has “${part}” in its name.`);

const start = performance.now();
const results: Caught[] = [];
const copy = await plantedCopy();
try {
	const before = await copy.failing(wanted);
	if (before) throw new Error(`A test fails with no fault planted: ${before.told}`);
	for (const fault of wanted) {
		const result = await copy.tried(fault);
		results.push(result);
		console.log(`${results.length}/${wanted.length}  ${fault.name}: ${result.told}`);
	}
} finally {
	await copy.remove();
}

const missed = wanted.filter((_, i) => !results[i]?.caught);
const seconds = Math.round((performance.now() - start) / 1000);
console.log(`\n${wanted.length - missed.length} of ${wanted.length} caught, ${seconds} s`);
if (missed.length > 0) {
	console.log(['Not caught:', ...missed.map(({ name, file }) => `${name} (${file})`)].join('\n'));
}
// Vitest has set it for the tests that failed, as they should.
process.exitCode = missed.length > 0 ? 1 : 0;
