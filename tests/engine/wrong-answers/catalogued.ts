import type { Family } from '../../../src/lib/engine/families/family.ts';
import { randomFrom } from '../../../src/lib/engine/families/random.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { differs } from '../../../src/lib/engine/solver/tolerance.ts';
import { entryOf, readAnswer } from '../../../src/lib/engine/marking/answer.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import { type Cause, choicesIn } from '../../../src/lib/engine/marking/verdict.ts';
import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';

await loadReader();

const tasksEach = 20;

/**
 * What was told of a wrong answer by known slips, held against all slips and pairs of slips that
 * lead to its very digits: the sheet shows no more.
 */
export const fates = ['named', 'offered', 'other', 'writing', 'false', 'untold'] as const;
export type Fate = (typeof fates)[number];

/** Of `n` wrong answers, so many were told what. */
export type Tally = Readonly<Record<Fate | 'n', number>>;
type Count = Record<Fate | 'n', number>;

/** How many commonest slips or pairs lead to the number; `one` of a pair where one slip alone does. */
export const companies = ['alone', 'few', 'many', 'seldom', 'one'] as const;
export type Company = (typeof companies)[number];

export type Tallies = Readonly<Record<Company | 'all', Tally>>;

export interface Diagnosis {
	readonly single: Tallies;
	/** Two slips that are met often; the others have a seldom one among them. */
	readonly pair: Tallies;
	readonly seldomPair: Tallies;
	/** Wrong answers out of nowhere, and for how many one or two slips were named all the same. */
	readonly chance: { n: number; one: number; two: number };
}

/** Wrong answers by one slip, by two, and by chance, written to the places of the shop. */
export function diagnosisOf(families: readonly Family[]): Diagnosis {
	const found = {
		single: tallies(),
		pair: tallies(),
		seldomPair: tallies(),
		chance: { n: 0, one: 0, two: 0 }
	};
	for (const family of families) {
		for (let seed = 0; seed < tasksEach; seed++) {
			const task = drawTask(family, levels[seed % levels.length] ?? 1, seed + 9000);
			const key = task.drawn.asked.at(-1) ?? '';
			for (const answer of wrongAnswers(task, key)) {
				for (const slips of answer.reasons) {
					const isSeldom = slips.length > 1 && seldom(task, slips) > 0;
					const into = slips.length === 1 ? found.single : found[isSeldom ? 'seldomPair' : 'pair'];
					note(into, fateOf(answer, slips), companyOf(task, answer, slips));
				}
			}
			byChance(found.chance, task, key);
		}
	}
	return found;
}

type Slips = readonly string[];

/** A wrong number as the shop writes it, what leads to it, and what marking tells of it. */
interface Answer {
	readonly reasons: readonly Slips[];
	readonly cause: Cause;
}

function wrongAnswers(task: Task, key: string): Answer[] {
	const byText = new Map<string, Slips[]>();
	for (const slips of slipsOf(task)) {
		const value = valueBy(task, key, slips);
		if (value === undefined || !differs(task.method, key, task.right, { [key]: value })) continue;
		const text = textOf(task, key, value);
		byText.set(text, [...(byText.get(text) ?? []), slips]);
	}
	return [...byText].flatMap(([text, reasons]) => {
		const cause = causeOf(task, key, text);
		return cause ? [{ reasons, cause }] : [];
	});
}

/** Every slip that shows, and every two in different steps. */
function slipsOf({ method, slips }: Task): Slips[] {
	const ids = [...slips.keys()];
	const stepOf = (id: string) => method.slips[id]?.step;
	const pairs = ids.flatMap((one, i) =>
		ids
			.slice(i + 1)
			.filter((other) => stepOf(one) !== stepOf(other))
			.map((other) => [one, other])
	);
	return [...ids.map((id) => [id]), ...pairs];
}

function valueBy({ method, drawn }: Task, key: string, ids: Slips): Value | undefined {
	const slips = Object.fromEntries(ids.map((id) => [method.slips[id]?.step ?? '', id]));
	try {
		return evaluate(method, drawn.given, { slips })[key];
	} catch (error) {
		if (error instanceof TradeError) return undefined;
		throw error;
	}
}

function fateOf({ reasons, cause }: Answer, slips: Slips): Fate {
	if (cause.kind === 'unknown') return 'untold';
	const choices = choicesIn(cause);
	const told = choices.length > 0 ? choices : [cause];
	const isOne = (one: Cause, of: Slips) =>
		one.kind === 'slip' && !one.also && isSame(one.slips, of);
	if (told.some((one) => isOne(one, slips))) return told.length === 1 ? 'named' : 'offered';
	if (told.every((one) => one.kind !== 'slip')) return 'writing';
	return told.every((one) => reasons.some((of) => isOne(one, of))) ? 'other' : 'false';
}

function isSame(one: Slips, other: Slips): boolean {
	return one.length === other.length && one.every((id) => other.includes(id));
}

function seldom({ method }: Task, slips: Slips): number {
	return slips.filter((id) => method.slips[id]?.rare).length;
}

function companyOf(task: Task, { reasons }: Answer, slips: Slips): Company {
	const fewest = Math.min(...reasons.map(({ length }) => length));
	if (fewest < slips.length) return 'one';
	const alike = reasons.filter(({ length }) => length === fewest);
	const least = Math.min(...alike.map((one) => seldom(task, one)));
	if (seldom(task, slips) > least) return 'seldom';
	const likely = alike.filter((one) => seldom(task, one) === least).length;
	return likely === 1 ? 'alone' : likely <= 3 ? 'few' : 'many';
}

function tallies(): Record<Company | 'all', Count> {
	const tally = () => ({ n: 0, ...Object.fromEntries(fates.map((fate) => [fate, 0])) }) as Count;
	return Object.fromEntries(['all', ...companies].map((one) => [one, tally()])) as Record<
		Company | 'all',
		Count
	>;
}

function note(into: Record<Company | 'all', Count>, fate: Fate, company: Company): void {
	for (const tally of [into.all, into[company]]) {
		tally.n += 1;
		tally[fate] += 1;
	}
}

function byChance(into: Diagnosis['chance'], task: Task, key: string): void {
	const right = task.right[key];
	if (typeof right !== 'number' || task.method.steps[key]?.tolerance?.amount === '0') return;
	const random = randomFrom(`chance ${task.number}`);
	for (let n = 0; n < 15; n++) {
		const value = right * (random.int(300, 2500) / 1000);
		if (!differs(task.method, key, task.right, { [key]: value })) continue;
		const cause = causeOf(task, key, textOf(task, key, value));
		if (!cause) continue;
		into.n += 1;
		const [told] = [...choicesIn(cause), cause];
		if (told?.kind === 'slip') into[told.slips.length > 1 || told.also ? 'two' : 'one'] += 1;
	}
}

function textOf({ method }: Task, key: string, value: Value): string {
	return textAt(method, key, value)
		.replace(/ \(.*\)$/, '')
		.replaceAll(', ', '; ');
}

function causeOf(task: Task, key: string, text: string): Cause | null {
	const entry = entryOf(readAnswer(task.method, key, text, 'in'));
	const verdict = entry ? mark(task, { [key]: entry })[key] : undefined;
	return verdict?.kind === 'rework' ? verdict.cause : null;
}
