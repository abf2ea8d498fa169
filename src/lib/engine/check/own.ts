import type { Family } from '../families/family.ts';
import { tell } from '../families/tell.ts';
import { readWorked } from '../marking/entries.ts';
import { entryOf } from '../marking/answer.ts';
import { mark } from '../marking/mark.ts';
import { sayVerdict } from '../marking/say.ts';
import type { Entries, Entry, Verdict, Verdicts } from '../marking/verdict.ts';
import type { LengthUnit } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { kindAt } from '../solver/kind-at.ts';
import { GivenError } from '../solver/read-givens.ts';
import type { Task } from '../tasks/task.ts';
import type { Checkup } from './check.ts';
import { only } from './only.ts';

/** A result of the student's own, marked like an answer. */
export interface OwnResult {
	readonly key: string;
	/** Which item it is of, from 0; null where it is the same for all. */
	readonly place: number | null;
	readonly entry: string;
	/** As it was read. */
	readonly read: string;
	readonly verdict: Verdict;
	readonly says: string;
}

/** The student's own results, and the tasks that they answer, one an item. */
export interface Owned {
	readonly results: readonly OwnResult[];
	readonly marked: readonly { readonly task: Task; readonly verdicts: Verdicts }[];
}

/**
 * Marks own results beside a check. What differs from item to item is given once for each, with
 * commas or semicolons between.
 *
 * @param own what was typed, by step
 * @throws GivenError
 */
export async function markOwn(
	family: Family,
	checkup: Checkup,
	own: Readonly<Record<string, string>>,
	units: LengthUnit
): Promise<Owned> {
	const typed = Object.entries(own).map(([key, text]) => ({
		key,
		texts: textsOf(checkup, key, text)
	}));
	if (typed.length > 0) await tell();
	const results: OwnResult[] = [];
	const marked: Owned['marked'][number][] = [];
	for (const [item, values] of checkup.items.entries()) {
		const task = taskOf(family, checkup, values);
		const entries: Record<string, Entry> = {};
		const here: Omit<OwnResult, 'verdict' | 'says'>[] = [];
		for (const { key, texts } of typed) {
			const entry = texts[item];
			if (entry === undefined) continue;
			const read = await readOwn(task, key, entry, units);
			entries[key] = read.value;
			here.push({ key, entry, read: read.said, place: texts.length > 1 ? item : null });
		}
		if (here.length === 0) continue;
		const verdicts = mark(task, entries satisfies Entries);
		marked.push({ task, verdicts });
		for (const one of here) {
			const verdict = verdicts[one.key];
			if (!verdict) throw new Error(`not marked: ${one.key}`);
			results.push({ ...one, verdict, says: sayVerdict(task, verdict, one.key) });
		}
	}
	return { results, marked };
}

/** What was typed at a step, item by item where the step differs from item to item. */
function textsOf({ check, items }: Checkup, key: string, text: string): string[] {
	const { steps } = check.of;
	if (!Object.hasOwn(steps, key) || !steps[key]?.tolerance) {
		const known = Object.keys(steps).filter((one) => steps[one]?.tolerance);
		const plain = key.replace(/\p{Cc}/gu, '').slice(0, 30);
		throw new GivenError(`${check.of.id} has no result ${plain}; it has ${known.join(', ')}.`);
	}
	const first = JSON.stringify(items[0]?.[key]);
	const varies = items.some((one) => JSON.stringify(one[key]) !== first);
	const texts = text.split(/[;,\n]/).map((one) => one.trim());
	const each = items.length > 1 && (varies || texts.length === items.length);
	if (!each || kindAt(check.of, key).isList) return [text];
	if (texts.length === items.length) return texts;
	throw new GivenError(`${key}: give ${items.length}, one for every ${check.each}.`);
}

async function readOwn(
	{ method }: Task,
	key: string,
	text: string,
	units: LengthUnit
): Promise<{ value: Entry; said: string }> {
	const reading = await readWorked(method, key, text, units);
	const value = entryOf(reading);
	if (value && reading.state === 'read') return { value, said: reading.said };
	if (reading.state === 'unread') throw new GivenError(`${key}: ${reading.why}`);
	if (reading.state === 'which') throw new GivenError(`${key}: ${reading.question}`);
	throw new GivenError(`${key}: give your result.`);
}

/** The part as a task with these numbers, which nobody drew. */
function taskOf(family: Family, { check }: Checkup, values: Values): Task {
	const method = check.of;
	const given = only(Object.keys(method.given), values);
	const asked = Object.keys(method.steps).filter((key) => method.steps[key]?.tolerance);
	return {
		number: '',
		id: { code: family.code, level: 1, seed: 0, rev: family.rev },
		family,
		method,
		drawn: { given, story: '', question: '', asked, cautions: [] },
		right: { ...given, ...only(Object.keys(method.steps), values) },
		slips: new Map()
	};
}
