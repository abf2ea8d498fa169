import { loadFamilies, loadMethods } from '../../../src/lib/engine/families/catalogue.ts';
import type { Family } from '../../../src/lib/engine/families/family.ts';
import { inverseOf } from '../../../src/lib/engine/solver/inverse.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { collecting } from './collecting.ts';
import { compareWithText, type Speed } from './compiled-against-text.ts';
import { planning } from './planning.ts';

/*
 * What the engine takes, measured on this machine. Prints tables; asserts nothing.
 */

const drawsEach = 10_000;
const families = await loadFamilies();
const methods = await loadMethods();

speed();
drawing();
await collecting();
await planning();

function speed(): void {
	console.log('## Compiled formulas against the same formulas as text with mathjs units\n');
	console.log(
		'Microseconds a task at level 2, the least of several rounds: for drawing it, and for'
	);
	console.log('working its formulas alone, plain, rounded and with every slip.\n');
	console.log('| family | draw | work | text | text / draw | text / work, ≥ 50 |');
	console.log('| --- | ---: | ---: | ---: | ---: | ---: |');
	const speeds = families.filter(isWritten).map((family) => {
		const speed = compareWithText(family);
		const { draw, work, text } = speed;
		const columns = [draw.toFixed(1), work.toFixed(1), text.toFixed(0), ...timesFaster(speed)];
		console.log(`| ${family.id} | ${columns.join(' | ')} |`);
		return speed;
	});
	const sum = (key: keyof Speed) => speeds.reduce((total, speed) => total + speed[key], 0);
	const [draw, work] = timesFaster({ draw: sum('draw'), work: sum('work'), text: sum('text') });
	const least = Math.min(...speeds.map((speed) => speed.text / speed.work));
	console.log(`\nOne task of every family: drawn ${draw} times as fast, worked ${work} times;`);
	console.log(`worked least: ${least.toFixed(0)} times.\n`);
}

/** Whether a family's steps are formulas: one turned round is worked by a search. */
function isWritten({ method }: Family): boolean {
	return !methods.some((one) =>
		Object.entries(one.inverses).some(
			([want, inverse]) => !('by' in inverse) && inverseOf(one, want) === method
		)
	);
}

function timesFaster({ draw, work, text }: Speed): [string, string] {
	return [(text / draw).toFixed(0), (text / work).toFixed(0)];
}

function drawing(): void {
	console.log(`## ${drawsEach.toLocaleString('en')} tasks of every family\n`);
	console.log('| family | tasks a second | slowest, ms |\n| --- | ---: | ---: |');
	for (const family of families) {
		let slowest = 0;
		const start = performance.now();
		for (let seed = 0; seed < drawsEach; seed++) {
			const before = performance.now();
			drawTask(family, levels[seed % levels.length] ?? 1, seed);
			slowest = Math.max(slowest, performance.now() - before);
		}
		const rate = Math.round(drawsEach / ((performance.now() - start) / 1000));
		console.log(`| ${family.id} | ${rate.toLocaleString('en')} | ${slowest.toFixed(2)} |`);
	}
	console.log(`\n${families.length} families on ${methods.length} methods.`);
}
