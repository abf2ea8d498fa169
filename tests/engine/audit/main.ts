import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { auditOf, fewestStories, fewestTasks, leastRise, type LevelAudit } from './features.ts';

/*
 * What each family asks at each level, counted over many draws. Prints a table; audit.test.ts holds
 * what it marks with `!`.
 */

const [wanted] = process.argv.slice(3);
const families = (await loadFamilies()).filter(
	({ code, topic }) => wanted === undefined || wanted === code || wanted === topic
);

console.log(
	'| family | level | tasks | stories | steps | look-ups | conversions | digits/10 | distractors | sum |'
);
console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |');
for (const family of families) {
	let before = -leastRise;
	for (const level of levels) {
		const one = auditOf(family, level);
		console.log(`| ${[`${one.code} ${family.id}`, ...cells(one, before)].join(' | ')} |`);
		before = one.difficulty;
	}
}
console.log(
	`\n! fewer than ${fewestTasks} different tasks, fewer than ${fewestStories} stories, or not ${leastRise} harder than the level before`
);

function cells(one: LevelAudit, before: number): string[] {
	const { steps, lookUps, conversions, digits, distractors } = one.features;
	const marked = (value: number, isGood: boolean) => `${value}${isGood ? '' : ' !'}`;
	return [
		String(one.level),
		marked(one.tasks, one.tasks >= fewestTasks),
		marked(one.stories, one.stories >= fewestStories),
		...[steps, lookUps, conversions, digits, distractors].map((mean) => mean.toFixed(2)),
		`${one.difficulty.toFixed(2)}${one.difficulty - before >= leastRise ? '' : ' !'}`
	];
}
