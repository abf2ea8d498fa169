import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { topics } from '../../../src/lib/engine/families/topics.ts';
import { allRules } from './all-rules.ts';
import {
	companies,
	type Company,
	type Diagnosis,
	diagnosisOf,
	type Tallies,
	type Tally
} from './catalogued.ts';
import { corpus, halves } from './corpus.ts';
import { type Fate, fates, judge, type Judged } from './judge.ts';

/*
 * npm run diagnosis: what marking tells about the wrong answers of this folder, and about those
 * that the catalogue of slips leads to. Fails nothing.
 *
 *   npm run diagnosis -- --list [family]      the false, untold and accepted ones to tune on as well
 *   npm run diagnosis -- --missing [family]   the mistakes that no slip stands for
 */

const companyTitles: Readonly<Record<Company, string>> = {
	alone: 'nothing else leads to it',
	few: 'two or three lead to it',
	many: 'more than three lead to it',
	seldom: 'one met more often leads to it',
	one: 'one slip alone leads to it'
};

const judged: Judged[] = [];
for (const answer of await corpus()) judged.push(await judge(answer));

for (const half of halves) {
	const ofHalf = judged.filter(({ answer }) => answer.half === half);
	table(`Wrong answers by topic, ${half} seeds`, ofHalf, topicOf);
	table(`The same by how often the mistake is met`, ofHalf, rateOf);
}
table('Wrong answers by family, all seeds', judged, familyOf);
catalogued(diagnosisOf(await loadFamilies()));

const [listed, missing] = ['--list', '--missing'].map((flag) => process.argv.indexOf(flag));
if (listed && listed > 0) list(process.argv[listed + 1]);
if (missing && missing > 0) listMissing(process.argv[missing + 1]);

function topicOf({ answer }: Judged): string {
	return topics[answer.task.family.topic];
}

function familyOf({ answer }: Judged): string {
	return answer.task.family.id;
}

function rateOf({ answer }: Judged): string {
	return answer.rules.some(({ rate }) => rate === 'common') ? 'common' : 'rare';
}

function table(title: string, answers: readonly Judged[], groupOf: (one: Judged) => string): void {
	console.log(`\n## ${title}\n`);
	console.log(`| | answers | ${fates.join(' | ')} | without a slip | named, others fit too |`);
	console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |');
	for (const group of new Set(answers.map(groupOf)))
		console.log(
			row(
				group,
				answers.filter((one) => groupOf(one) === group)
			)
		);
	console.log(row('all', answers));
}

/** Unread and accepted entries are told no reason; the shares are of the others. */
function row(title: string, answers: readonly Judged[]): string {
	const count = (fate: Fate) => answers.filter((one) => one.fate === fate).length;
	const told = answers.length - count('unread') - count('accepted');
	const cells = fates.map((fate) =>
		fate === 'unread' || fate === 'accepted' ? count(fate) : share(count(fate), told)
	);
	const slipless = answers.filter(({ names }) => names.size === 0).length;
	const several = answers.filter(({ oneOfSeveral }) => oneOfSeveral).length;
	return `| ${[title, answers.length, ...cells, slipless, several].join(' | ')} |`;
}

function share(part: number, whole: number): string {
	return `${((100 * part) / Math.max(whole, 1)).toFixed(1)} %`;
}

/** Wrong numbers by slips of the catalogue. */
function catalogued({ single, pair, seldomPair, chance }: Diagnosis): void {
	console.log('\n## Answers by the catalogue of slips\n');
	console.log(
		'Every slip and every two slips of a task, entered as the shop writes the number. What is'
	);
	console.log(
		'told of it is held against all that leads to the same digits: “rightly” is what leads to'
	);
	console.log(
		'them, whether it is named, offered among two or three, or told instead because it is met'
	);
	console.log('more often.\n');
	const titles = ['rightly', 'named', 'offered', 'another leads to it', 'its writing'];
	console.log(`| wrong by | answers | ${titles.join(' | ')} | another named | cannot tell |`);
	console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |');
	cataloguedRows('one slip', single);
	cataloguedRows('two slips met often', pair);
	cataloguedRows('two slips, a seldom one among them', seldomPair);
	const { n, one, two } = chance;
	console.log(
		`\nOf ${n} numbers by chance, between 0.3 and 2.5 times the right one, a slip was named`
	);
	console.log(`for ${share(one + two, n)}: one slip ${share(one, n)}, two ${share(two, n)}.`);
}

function cataloguedRows(title: string, tallies: Tallies): void {
	const line = (name: string, tally: Tally) => {
		const { n, named, offered, other, writing, false: wrong, untold } = tally;
		const cells = [named + offered + other, named, offered, other, writing, wrong, untold];
		console.log(`| ${[name, n, ...cells.map((part) => share(part, n))].join(' | ')} |`);
	};
	line(title, tallies.all);
	for (const company of companies) {
		if (tallies[company].n > 0) line(`· ${companyTitles[company]}`, tallies[company]);
	}
}

function list(family: string | undefined): void {
	for (const fate of ['false', 'cannot tell', 'accepted'] as const) {
		console.log(`\n## ${fate}\n`);
		for (const one of judged.filter((other) => other.fate === fate && isListed(family, other))) {
			const { task, typed, rules } = one.answer;
			const entries = Object.entries(typed).map(([key, text]) => `${key}=${text}`);
			const whys = rules.map(({ why }) => why).join(' / ');
			const names = [...one.names].join(', ');
			console.log(`${task.number}  ${entries.join(' ')}  ${whys} [${names}]  -> ${one.told}`);
		}
	}
}

/** The held-out half is only counted. */
function isListed(family: string | undefined, one: Judged): boolean {
	return one.answer.half === 'tuning' && (family === undefined || familyOf(one) === family);
}

function listMissing(family: string | undefined): void {
	console.log('\n## Mistakes that no slip stands for\n');
	for (const rule of allRules) {
		if (rule.names.length > 0 || (family !== undefined && rule.family !== family)) continue;
		console.log(`${rule.family}, ${rule.key}, ${rule.rate}: ${rule.why}`);
	}
}
