import { topics } from '../../../src/lib/engine/families/topics.ts';
import { corpus, halves } from './corpus.ts';
import { type Fate, fates, judge, type Judged } from './judge.ts';

/*
 * npm run diagnosis: what marking tells about the wrong answers of this folder. Fails nothing.
 *
 *   npm run diagnosis -- --list [family]   every false, untold and accepted answer as well
 */

const judged: Judged[] = [];
for (const answer of await corpus()) judged.push(await judge(answer));

for (const half of halves) {
	const ofHalf = judged.filter(({ answer }) => answer.half === half);
	table(
		`Wrong answers by topic, ${half} seeds`,
		ofHalf,
		({ answer }) => topics[answer.task.family.topic]
	);
}
table('Wrong answers by family, all seeds', judged, ({ answer }) => answer.task.family.id);

const at = process.argv.indexOf('--list');
if (at > 0) list(process.argv[at + 1]);

function table(title: string, answers: readonly Judged[], groupOf: (one: Judged) => string): void {
	console.log(`\n## ${title}\n`);
	console.log(`| | answers | ${fates.join(' | ')} | without a slip |`);
	console.log('| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |');
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
	const share = (fate: Fate) => `${((100 * count(fate)) / Math.max(told, 1)).toFixed(1)} %`;
	const cells = fates.map((fate) =>
		fate === 'unread' || fate === 'accepted' ? count(fate) : share(fate)
	);
	const missing = answers.filter(({ names }) => names.size === 0).length;
	return `| ${[title, answers.length, ...cells, missing].join(' | ')} |`;
}

function list(family: string | undefined): void {
	for (const fate of ['false', 'cannot tell', 'accepted'] as const) {
		console.log(`\n## ${fate}\n`);
		for (const { answer, names, told, ...one } of judged) {
			if (one.fate !== fate || (family !== undefined && answer.task.family.id !== family)) continue;
			const { task, typed, rules } = answer;
			const entries = Object.entries(typed).map(([key, text]) => `${key}=${text}`);
			const whys = rules.map(({ why }) => why).join(' / ');
			console.log(
				`${task.number}  ${entries.join(' ')}  ${whys} [${[...names].join(', ')}]  -> ${told}`
			);
		}
	}
}
