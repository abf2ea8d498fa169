import { loadFamilies, loadMethods } from '../../../src/lib/engine/families/catalogue.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { compareWithText } from './compiled-against-text.ts';

/*
 * What the engine takes, measured on this machine. Prints tables; asserts nothing.
 */

const drawsEach = 10_000;
const families = await loadFamilies();
const methods = await loadMethods();

if (process.argv.includes('--numbers')) {
	for (const family of families) console.log(drawTask(family, 1, 1).number);
} else {
	speed();
	drawing();
}

function speed(): void {
	console.log('## Compiled formulas against the same formulas as text with mathjs units\n');
	console.log(
		'Draw, solve and all slips of one task; microseconds a task, median of seven rounds.\n'
	);
	console.log('| family | compiled | text | times faster |\n| --- | ---: | ---: | ---: |');
	const totals = { compiled: 0, text: 0 };
	const ratios = families.map((family) => {
		const { compiled, text } = compareWithText(family);
		totals.compiled += compiled;
		totals.text += text;
		const ratio = text / compiled;
		console.log(
			`| ${family.id} | ${compiled.toFixed(1)} | ${text.toFixed(0)} | ${ratio.toFixed(0)} |`
		);
		return ratio;
	});
	const overall = (totals.text / totals.compiled).toFixed(0);
	console.log(
		`\nOne task of every family: ${overall} times; least: ${Math.min(...ratios).toFixed(0)}.\n`
	);
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
