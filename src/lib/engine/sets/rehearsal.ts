import type { Family } from '../families/family.ts';
import { type Random, randomFrom } from '../families/random.ts';
import { drawTask, type Task } from '../tasks/task.ts';
import { type Level, levels } from '../families/level.ts';
import { seedCount } from '../tasks/task-number.ts';
import type { LengthUnit } from '../quantity/kind.ts';
import { textAt } from '../solver/show.ts';
import { checksum, givensOf, numbersIn } from '../tasks/givens.ts';
import { type Option, optionsFor } from './options.ts';

/** One question of a rehearsal: a drawn task, and the options for one of its values. */
export interface Question {
	readonly task: Task;
	/** The step that is asked for. */
	readonly key: string;
	readonly options: readonly Option[];
	/** Place of the right one among the options. */
	readonly right: number;
}

/**
 * The questions of a written exam: every topic as often as any other, neighbours from different
 * topics, and no numbers twice. The same seed text and families give the same questions.
 */
export function composeRehearsal(
	seed: string,
	families: readonly Family[],
	count: number,
	among: readonly Level[] = levels
): Question[] {
	const random = randomFrom(seed);
	const topics = [...new Set(families.map(({ topic }) => topic))];
	const topicDeal = deal(topics, random);
	const familiesOf = (topic: string) => families.filter((family) => family.topic === topic);
	const familyDeals = new Map(topics.map((topic) => [topic, deal(familiesOf(topic), random)]));
	const levelDeals = new Map(families.map(({ code }) => [code, deal(among, random)]));
	const used = new Set<string>();
	return Array.from({ length: count }, () => {
		const family = dealt(familyDeals.get(dealt(topicDeal)));
		return drawQuestion(family, dealt(levelDeals.get(family.code)), random, used);
	});
}

/** The members in rounds, each round in an order of its own; none comes twice running. */
function* deal<T>(members: readonly T[], random: Random): Generator<T, never> {
	let last: T | undefined;
	for (;;) {
		const round = shuffled(members, random);
		if (round.length > 1 && round[0] === last) round.reverse();
		yield* round;
		last = round.at(-1);
	}
}

function shuffled<T>(members: readonly T[], random: Random): T[] {
	const left = [...members];
	return members.flatMap(() => left.splice(random.int(0, left.length - 1), 1));
}

function dealt<T>(from: Generator<T, never> | undefined): T {
	if (!from) throw new Error('nothing to deal');
	return from.next().value;
}

const tries = 100;

function drawQuestion(family: Family, level: Level, random: Random, used: Set<string>): Question {
	for (let n = 0; n < tries; n++) {
		const task = drawTask(family, level, random.int(0, seedCount - 1));
		const numbers = numbersIn(givensOf(task));
		const question = used.has(numbers) ? null : questionOn(task, random);
		if (!question) continue;
		used.add(numbers);
		return question;
	}
	throw new Error(`no question from ${family.code}${level}`);
}

/** A question on the last value asked that has enough options; lists are not asked for. */
export function questionOn(task: Task, random: Random): Question | null {
	for (const key of [...task.drawn.asked].reverse()) {
		if (typeof task.right[key] === 'object') continue;
		const options = optionsFor(task, key, random);
		if (!options) continue;
		return { task, key, options, right: options.findIndex(({ cause }) => cause === null) };
	}
	return null;
}

/** The options as the shop writes them. */
export function optionTexts({ task, key, options }: Question, units: LengthUnit): string[] {
	return options.map(({ value }) => textAt(task.family.method, key, value, units));
}

/** What the question asks for: the task's own question where that asks for one value only. */
export function questionText({ task, key }: Question): string {
	if (task.drawn.asked.length === 1) return task.drawn.question;
	// What stands behind the colon of a label says how to work it.
	const [label = key] = (task.family.method.steps[key]?.label ?? key).split(':');
	return `Wanted: ${label.charAt(0).toLowerCase()}${label.slice(1)}`;
}

/** Tells whether questions drawn again are still the ones that were answered. */
export function checksumOf(questions: readonly Question[]): string {
	return checksum(
		questions.map((one) => [one.task.number, one.key, ...optionTexts(one, 'in')].join()).join()
	);
}
