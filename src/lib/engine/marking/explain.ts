import { compiledOf } from '../solver/compiled.ts';
import { misreadGivens } from './misread-given.ts';
import { type Candidate, kindOf, type Question } from './question.ts';
import { isActOf } from './same-act.ts';
import { singleSlips, unusedSlips } from './slips.ts';
import { doubleSlips } from './two-slips.ts';
import { type Cause, mostOffered, nameOf, offered, stepOfSlip } from './verdict.ts';
import { mistyped, writingFaults } from './writing.ts';

/** Causes whose costs are nearer than this are equal. */
const slack = 0.05;
const equal = 1e-6;

/** By so much less may a seldom slip cost, and a common one is told instead. */
const hides = 0.1;

/** Under this, two entries were exchanged. */
const mostSwapped = 0.92;

/** A candidate, and the wrong entries that it leads to. */
interface Covering {
	readonly cause: Cause;
	/** What is told of each entry. */
	readonly causes: Readonly<Record<string, Cause>>;
	readonly cost: number;
	readonly rarity: number;
	readonly support: number;
	readonly keys: readonly string[];
}

/**
 * The causes of the wrong entries of a sheet, together: again and again the one that costs least
 * for each entry it leads to. Causes that cost the same are all told.
 *
 * @returns by step key; `unknown` rather than a guess
 */
export function explain(questions: readonly Question[]): Record<string, Cause> {
	const told = oneByOne(questions);
	return misreadThroughout(questions, told.cost) ?? told.causes;
}

/**
 * One number of the task misread, where that leads to every wrong entry and what was found for them takes
 * more to believe; null where it does not.
 */
function misreadThroughout(
	questions: readonly Question[],
	cost: number
): Record<string, Cause> | null {
	if (questions.length < 2) return null;
	const found = questions.map((question) => misreadGivens(question, cost));
	const [first = [], ...others] = found;
	const all = first.filter(({ cause }) =>
		others.every((some) => some.some((one) => nameOf(one.cause) === nameOf(cause)))
	);
	if (all.length === 0) return null;
	const cause = offered(all.map((one) => one.cause));
	return Object.fromEntries(questions.map(({ key }) => [key, cause]));
}

/** The causes of the wrong entries, and what they cost together. */
interface Told {
	readonly causes: Record<string, Cause>;
	readonly cost: number;
}

/** What it costs to leave an entry without a cause. */
const untold = 2;

function oneByOne(questions: readonly Question[]): Told {
	const found = questions.map(candidatesFor);
	const names = found.flat().map(({ cause }) => nameOf(cause));
	const isSome = found.flat().some(({ cause }) => cause.kind === 'misread');
	const all = questions.flatMap((question, i) => {
		// What was misread for one entry was misread for all of them.
		const others = isSome ? misreadGivens(question) : [];
		const same = others.filter(({ cause }) => names.includes(nameOf(cause)));
		return [...(found[i] ?? []), ...same].map((one) => ({ ...one, key: question.key }));
	});
	const causes: Record<string, Cause> = {};
	let cost = 0;
	let open = questions.map(({ key }) => key);
	for (;;) {
		const left = shown(coverings(all.filter(({ key }) => open.includes(key))));
		const least = Math.min(...left.map(rate));
		const best = left.filter((one) => rate(one) <= least + slack);
		const [first] = best;
		if (!first) break;
		const alike = best.filter(({ keys }) => isSame(keys, first.keys));
		const likeliest = alike.filter((one) => rate(one) <= least + equal);
		// Too many to choose among: the likeliest, if they are fewer.
		const few = alike.length > mostOffered ? likeliest : alike;
		const fitting = wordSlips(questions, few);
		for (const key of first.keys) {
			causes[key] = offered(fitting.map(({ causes, cause }) => causes[key] ?? cause));
		}
		cost += first.cost;
		open = open.filter((key) => !first.keys.includes(key));
	}
	for (const question of questions.filter(({ key }) => open.includes(key))) {
		causes[question.key] = { kind: 'unknown', ...(isHere(question) && { here: true }) };
	}
	return { causes, cost: cost + untold * open.length };
}

/** Whether all that a step is worked from stands in the task, or was entered right. */
function isHere({ task: { method }, key, sheet }: Question): boolean {
	const needs = compiledOf(method).steps[key]?.needs ?? [];
	return needs.every(
		(name) =>
			Object.hasOwn(method.given, name) ||
			sheet.some((seen) => seen.key === name && seen.state === 'right')
	);
}

/**
 * What several slips before it lead to, where it is one of a few words: the slip of choosing that word, whose
 * sentence is true of all of them.
 */
function wordSlips(questions: readonly Question[], all: readonly Covering[]): readonly Covering[] {
	const own = all.filter(({ cause, keys }) =>
		questions.some(
			(question) =>
				cause.kind === 'slip' &&
				question.key === keys[0] &&
				kindOf(question).choices.length > 0 &&
				cause.slips.every((id) => stepOfSlip(question.task.method, id) === question.key)
		)
	);
	return own.length > 0 ? own : all;
}

/**
 * A single cause is believed before one that speaks against a right entry, that before a number of the task
 * misread, and all of them before two slips or a wrong key.
 */
function candidatesFor(question: Question): Candidate[] {
	for (const find of [singlesOf, unusedSlips, singlesSoFar, misreadGivens, doubleSlips, mistyped]) {
		const found = find(question);
		if (found.length > 0) return asSlips(question, found);
	}
	return [];
}

/**
 * What was copied from another place is told as the slip that takes it from there, though an entry further
 * down speaks against it.
 */
function asSlips(question: Question, found: Candidate[]): Candidate[] {
	const { task, key } = question;
	if (!found.every(({ cause }) => cause.kind === 'other-step' && !cause.swapped)) return found;
	const acts = singlesSoFar(question).filter(
		({ cause: slip }) =>
			slip.kind === 'slip' &&
			slip.slips.some((id) => found.some(({ cause }) => isActOf(task, key, id, cause)))
	);
	return acts.length > 0 ? acts : found;
}

/**
 * Where a right entry further down speaks against every slip in the first wrong one: what was worked on
 * with may have come out right by chance.
 */
function singlesSoFar(question: Question): Candidate[] {
	const places = Object.keys(question.task.method.steps);
	const place = places.indexOf(question.key);
	const sheet = question.sheet.filter(({ key }) => places.indexOf(key) <= place);
	const isFirst = question.worlds.length === 1;
	// With as much to hold them against, they have been looked for.
	const isLess = sheet.length < question.sheet.length;
	return isFirst && isLess ? singleSlips({ ...question, sheet }) : [];
}

function singlesOf(question: Question): Candidate[] {
	const { task, key } = question;
	const slips = singleSlips(question);
	const ids = slips.flatMap(({ cause }) => (cause.kind === 'slip' ? cause.slips : []));
	const faults = writingFaults(question).filter(
		({ cause, cost }) => cost < mostSwapped || !ids.some((id) => isActOf(task, key, id, cause))
	);
	return [...slips, ...faults];
}

/** Equal causes as one, with every entry they lead to. */
function coverings(all: readonly (Candidate & { readonly key: string })[]): Covering[] {
	const byName = new Map<string, Covering>();
	for (const { cause, cost, rarity, support, act, key } of all) {
		const name = act === undefined ? nameIn(cause, key) : `act ${act}`;
		const before = byName.get(name);
		const keys = before ? [...new Set([...before.keys, key])] : [key];
		byName.set(name, {
			cause: before?.cause ?? cause,
			causes: { [key]: cause, ...before?.causes },
			cost: Math.min(cost, before?.cost ?? cost),
			rarity: Math.min(rarity, before?.rarity ?? rarity),
			support: Math.max(support, before?.support ?? 0),
			keys
		});
	}
	return [...byName.values()];
}

/**
 * The name of what somebody does once for several entries: a slip, factors for sizes, another unit. What else is
 * wrong with the writing of one entry is not what is wrong with another.
 */
function nameIn(cause: Cause, key: string): string {
	if (cause.kind === 'factor') return `factor of ${cause.of}`;
	const isOnce = ['slip', 'unit', 'misread'].includes(cause.kind);
	return isOnce ? nameOf(cause) : `${key} ${nameOf(cause)}`;
}

/** Those that are to be told: where a common slip leads to the same entries, no seldom one is. */
function shown(all: readonly Covering[]): Covering[] {
	const common = all.filter(({ cause, rarity }) => cause.kind === 'slip' && rarity === 0);
	return all.filter(
		(one) =>
			one.rarity === 0 ||
			!common.some((other) => isSame(other.keys, one.keys) && rate(other) <= rate(one) + hides)
	);
}

function rate({ cost, keys, support }: Covering): number {
	return cost / (keys.length + support);
}

function isSame(one: readonly string[], other: readonly string[]): boolean {
	return one.length === other.length && one.every((key) => other.includes(key));
}
