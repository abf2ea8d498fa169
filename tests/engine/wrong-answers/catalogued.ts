import type { Family } from '../../../src/lib/engine/families/family.ts';
import { randomFrom } from '../../../src/lib/engine/families/random.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import { differs } from '../../../src/lib/engine/solver/tolerance.ts';
import { entryOf, readAnswer } from '../../../src/lib/engine/marking/answer.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import type { Cause } from '../../../src/lib/engine/marking/verdict.ts';
import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';
import { loadReader } from '../../../src/lib/engine/quantity/reader.ts';

await loadReader();

const tasksEach = 60;

/** Of so many wrong answers, so many were explained rightly. */
interface Tally {
	n: number;
	/** Named, alone. */
	hit: number;
	/** Among the two that were offered. */
	offered: number;
	/** Another slip was named. */
	miss: number;
	/** Told nothing. */
	untold: number;
}

/**
 * What marking can tell of a slip in one task: the slip, where its number is its own; two or three
 * to choose among, where so many lead to it; a commoner one that leads to it; nothing, where more do.
 */
export const company = ['alone', 'few', 'commoner', 'many'] as const;
export type Company = (typeof company)[number];

export interface Diagnosis {
	readonly single: Tally;
	/** The same, by how many slips lead to the number. */
	readonly singleBy: Readonly<Record<Company, Tally>>;
	readonly pair: Tally;
	/** Wrong answers out of nowhere; `hit` counts those for which a slip was named all the same. */
	readonly random: Tally;
}

/** Wrong answers by one slip, by two, and by chance, written to the places of the shop. */
export function diagnosisOf(families: readonly Family[]): Diagnosis {
	const found: Diagnosis = {
		single: tally(),
		singleBy: { alone: tally(), few: tally(), commoner: tally(), many: tally() },
		pair: tally(),
		random: tally()
	};
	for (const family of families) {
		for (let seed = 0; seed < tasksEach; seed++) {
			const task = drawTask(family, levels[seed % levels.length] ?? 1, seed + 9000);
			const key = task.drawn.asked.at(-1) ?? '';
			for (const id of task.slips.keys()) {
				note([found.single, found.singleBy[companyOf(task, key, id)]], task, key, [id]);
			}
			for (const pair of pairsOf(task)) note([found.pair], task, key, pair);
			byChance(found.random, task, key);
		}
	}
	return found;
}

function tally(): Tally {
	return { n: 0, hit: 0, offered: 0, miss: 0, untold: 0 };
}

function pairsOf({ method, slips }: Task): [string, string][] {
	const ids = [...slips.keys()];
	const stepOf = (id: string) => method.slips[id]?.step;
	return ids.flatMap((one, i) =>
		ids
			.slice(i + 1)
			.flatMap((two): [string, string][] => (stepOf(one) === stepOf(two) ? [] : [[one, two]]))
	);
}

function companyOf({ method, slips }: Task, key: string, id: string): Company {
	const own = slips.get(id) ?? {};
	const alike = [...slips].filter(([, values]) => !differs(method, key, own, values));
	const common = alike.filter(([other]) => !method.slips[other]?.rare);
	if (alike.length === 1) return 'alone';
	if (method.slips[id]?.rare && common.length > 0) return 'commoner';
	return (common.length || alike.length) > 3 ? 'many' : 'few';
}

function note(tallies: readonly Tally[], task: Task, key: string, ids: readonly string[]): void {
	const { method } = task;
	try {
		const slips = Object.fromEntries(ids.map((id) => [method.slips[id]?.step ?? '', id]));
		const value = evaluate(method, task.drawn.given, { slips })[key];
		if (value === undefined || !differs(method, key, task.right, { [key]: value })) return;
		// Two slips that come to what one alone comes to are one slip to anybody who sees them.
		if (ids.length > 1 && sameAsOne(task, key, value)) return;
		const cause = causeOf(task, key, value);
		if (!cause) return;
		const fate = fateOf(cause, ids);
		for (const into of tallies) {
			into.n += 1;
			if (fate) into[fate] += 1;
		}
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
	}
}

function fateOf(cause: Cause, ids: readonly string[]): Exclude<keyof Tally, 'n'> | null {
	if (cause.kind === 'slip') return ids.every((id) => cause.slips.includes(id)) ? 'hit' : 'miss';
	if (cause.kind === 'unknown') return 'untold';
	const isOffered = cause.kind === 'either' && ids.some((id) => cause.slips.includes(id));
	return isOffered ? 'offered' : null;
}

function sameAsOne({ method, slips }: Task, key: string, value: Value): boolean {
	return [...slips.values()].some((values) => !differs(method, key, values, { [key]: value }));
}

function byChance(into: Tally, task: Task, key: string): void {
	const right = task.right[key];
	if (typeof right !== 'number' || task.method.steps[key]?.tolerance?.amount === '0') return;
	const random = randomFrom(`chance ${task.number}`);
	for (let n = 0; n < 5; n++) {
		const value = right * (random.int(300, 2500) / 1000);
		if (!differs(task.method, key, task.right, { [key]: value })) continue;
		const cause = causeOf(task, key, value);
		if (!cause) continue;
		into.n += 1;
		if (cause.kind === 'slip' || cause.kind === 'either') into.hit += 1;
	}
}

function causeOf(task: Task, key: string, value: Value): Cause | null {
	const text = textAt(task.method, key, value)
		.replace(/ \(.*\)$/, '')
		.replaceAll(', ', '; ');
	const entry = entryOf(readAnswer(task.method, key, text, 'in'));
	const verdict = entry ? mark(task, { [key]: entry })[key] : undefined;
	return verdict?.kind === 'rework' ? verdict.cause : null;
}
