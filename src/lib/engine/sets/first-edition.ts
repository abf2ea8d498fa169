import type { Family } from '../families/family.ts';
import { type Level, levels } from '../families/level.ts';
import { type Random, randomFrom } from '../families/random.ts';
import { checksum, givensOf, numbersIn } from '../tasks/givens.ts';
import { seedCount } from '../tasks/task-number.ts';
import { drawTask, type Task } from '../tasks/task.ts';
import { firstSlips } from './first-slips.ts';
import { optionTexts, type Question, questionOn } from './rehearsal.ts';
import { shuffled } from './shuffled.ts';

/*
 * The first edition kept of a rehearsal its seed and a checksum, and of the answers only the
 * places of the options chosen. So one under way, or not in the log yet, can be read only by
 * drawing it as that edition did: one run of chance through everything, over the families and the
 * slips that there were. Nothing new is drawn this way.
 */

const codes = Object.keys(firstSlips);

/** The questions of such a paper; null when a family draws them otherwise now. */
export function firstEditionOf(
	paper: { readonly id: string; readonly count: number; readonly check: string },
	families: readonly Family[]
): Question[] | null {
	const known = codes.flatMap((code) => families.find((family) => family.code === code) ?? []);
	const questions = known.length === codes.length ? composed(paper.id, known, paper.count) : null;
	return questions && checksumOf(questions) === paper.check ? questions : null;
}

/** Null where a family no longer gives a question. */
function composed(seed: string, families: readonly Family[], count: number): Question[] | null {
	const random = randomFrom(seed);
	const topics = [...new Set(families.map(({ topic }) => topic))];
	const nextTopic = inTurn(topics, random);
	const nextFamily = new Map<string | undefined, () => Family | undefined>(
		topics.map((topic) => [
			topic,
			inTurn(
				families.filter((one) => one.topic === topic),
				random
			)
		])
	);
	const nextLevel = new Map(families.map(({ code }) => [code, inTurn(levels, random)]));
	const used = new Set<string>();
	const questions: Question[] = [];
	while (questions.length < count) {
		const family = nextFamily.get(nextTopic())?.();
		const level = family && nextLevel.get(family.code)?.();
		const question = level ? drawn(family, level, random, used) : null;
		if (!question) return null;
		questions.push(question);
	}
	return questions;
}

/** The members in rounds, each round in an order of its own; none comes twice running. */
function inTurn<T>(members: readonly T[], random: Random): () => T | undefined {
	let round: T[] = [];
	let last: T | undefined;
	return () => {
		if (round.length === 0) {
			round = shuffled(members, (limit) => random.int(0, limit - 1));
			if (round.length > 1 && round[0] === last) round.reverse();
		}
		last = round.shift();
		return last;
	};
}

const tries = 100;

function drawn(family: Family, level: Level, random: Random, used: Set<string>): Question | null {
	for (let n = 0; n < tries; n++) {
		const task = drawTask(family, level, random.int(0, seedCount - 1));
		const numbers = numbersIn(givensOf(task));
		const question = used.has(numbers) ? null : questionOn(withFirstSlips(task), random);
		if (!question) continue;
		used.add(numbers);
		return { ...question, task };
	}
	return null;
}

/** The task with no other slips than there were, in their order: the options hang on both. */
function withFirstSlips(task: Task): Task {
	const ids = (firstSlips[task.id.code] ?? '').split(' ');
	const none = withoutNextRow(task);
	const rows = ids.flatMap((id) => {
		const values = none.includes(id) ? undefined : task.slips.get(id);
		return values ? [[id, values] as const] : [];
	});
	return { ...task, slips: new Map(rows) };
}

/** Slips to the next row of the drill table, which was looked for only 1/32 in away. */
function withoutNextRow({ id, right }: Task): string[] {
	const next = (size: number) => id.code === 'HP' && right.D === size;
	if (next(1 / 4)) return ['rowAbove'];
	return next(3 / 16) ? ['nextForPilot', 'rowBelow'] : [];
}

function checksumOf(questions: readonly Question[]): string {
	return checksum(
		questions.map((one) => [one.task.number, one.key, ...optionTexts(one, 'in')].join()).join()
	);
}
