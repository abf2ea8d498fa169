import type { Candidate, Question } from './question.ts';
import { doubleSlips, singleSlips } from './slips.ts';
import { type Cause, nameOf, offered } from './verdict.ts';
import { writingFaults } from './writing.ts';

/** Causes whose costs are nearer than this are equal. */
const slack = 0.05;

/** A single cause that costs no more is believed before two slips are looked for. */
const plain = 2;

/** A candidate, and the wrong entries that it leads to. */
interface Covering {
	readonly cause: Cause;
	readonly cost: number;
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
	const all = questions.flatMap((question) =>
		candidatesFor(question).map((one) => ({ ...one, key: question.key }))
	);
	const causes: Record<string, Cause> = {};
	let open = questions.map(({ key }) => key);
	while (open.length > 0) {
		const left = coverings(all.filter(({ key }) => open.includes(key)));
		const least = Math.min(...left.map(rate));
		const best = left.filter((one) => rate(one) <= least + slack);
		const [first] = best;
		if (!first) break;
		const told = offered(
			best.filter(({ keys }) => isSame(keys, first.keys)).map(({ cause }) => cause)
		);
		for (const key of first.keys) causes[key] = told;
		open = open.filter((key) => !first.keys.includes(key));
	}
	for (const key of open) causes[key] = { kind: 'unknown' };
	return causes;
}

function candidatesFor(question: Question): Candidate[] {
	const found = [...singleSlips(question), ...writingFaults(question)];
	return found.some(({ cost }) => cost <= plain) ? found : [...found, ...doubleSlips(question)];
}

/** Equal causes as one, with every entry they lead to. */
function coverings(all: readonly (Candidate & { readonly key: string })[]): Covering[] {
	const byName = new Map<string, Covering>();
	for (const { cause, cost, support, key } of all) {
		// What is wrong with the writing of one entry is not what is wrong with another.
		const name = cause.kind === 'slip' ? nameOf(cause) : `${key} ${nameOf(cause)}`;
		const before = byName.get(name);
		const keys = before ? [...new Set([...before.keys, key])] : [key];
		byName.set(name, {
			cause,
			cost: Math.min(cost, before?.cost ?? cost),
			support: Math.max(support, before?.support ?? 0),
			keys
		});
	}
	return [...byName.values()];
}

function rate({ cost, keys, support }: Covering): number {
	return cost / (keys.length + support);
}

function isSame(one: readonly string[], other: readonly string[]): boolean {
	return one.length === other.length && one.every((key) => other.includes(key));
}
