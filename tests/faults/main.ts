import { availableParallelism } from 'node:os';
import { plantedCopy, type Caught } from './planted.ts';
import { faults } from './faults.ts';

/*
 * Plants every fault of the list in a copy of the project, one at a time, and tells which test
 * fails: npm run faults [-- part of a name]. It fails when a fault passes all tests.
 */

const [part = ''] = process.argv.slice(2);
const wanted = faults.filter(({ name }) => name.match(part));
if (wanted.length === 0) throw new Error(`No fault has “${part}” in its name.`);

const start = performance.now();
const queue = wanted.entries();
const results: (Caught | undefined)[] = [];

async function work(): Promise<void> {
	const copy = plantedCopy();
	try {
		for (const [at, fault] of queue) {
			const caught = await copy.tried(fault);
			results[at] = caught;
			const done = results.filter(Boolean).length;
			console.log(`${done}/${wanted.length}  ${fault.name}: ${caught.told}`);
		}
	} finally {
		copy.remove();
	}
}

await Promise.all(Array.from({ length: Math.min(2, availableParallelism()) }, work));

const widest = Math.max(...wanted.map(({ name }) => name.length));
console.log();
wanted.forEach(({ name }, i) => console.log(`${name.padEnd(widest)}  ${results[i]?.told ?? ''}`));
const missed = results.filter((result) => !result?.caught).length;
const seconds = Math.round((performance.now() - start) / 1000);
console.log(`\n${wanted.length - missed} of ${wanted.length} caught, ${seconds} s`);
if (missed > 0) process.exitCode = 1;
