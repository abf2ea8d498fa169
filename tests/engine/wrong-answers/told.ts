import { entryOf, readAnswer, workArithmetic } from '../../../src/lib/engine/marking/answer.ts';
import { mark } from '../../../src/lib/engine/marking/mark.ts';
import {
	type Cause,
	choicesIn,
	type Entry,
	type Verdict
} from '../../../src/lib/engine/marking/verdict.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import type { Typed } from './rule.ts';

/** What marking tells about one entry. Each cause has its names, the most particular first. */
export type Told =
	| { readonly kind: 'right' }
	| { readonly kind: 'named'; readonly cause: readonly string[] }
	| { readonly kind: 'offered'; readonly causes: readonly (readonly string[])[] }
	| { readonly kind: 'cannot tell' }
	| { readonly kind: 'unread' };

/** Kinds of cause that are no slip of a method; half-list is to come. */
export const kinds = [
	'other-step',
	'unit',
	'rounding',
	'digits',
	'order',
	'half-list',
	'factor',
	'misread'
];

/** Reads a verdict: the one place that knows its shape. */
export function toldBy(verdict: Verdict): Told {
	if (verdict.kind === 'accept') return { kind: 'right' };
	if (verdict.kind === 'holds') return { kind: 'named', cause: ['holds'] };
	// Told what is missing, and not charged.
	if (verdict.kind === 'unread') return { kind: 'unread' };
	const { cause } = verdict;
	if (cause.kind === 'unknown') return { kind: 'cannot tell' };
	const choices = choicesIn(cause);
	return choices.length > 0
		? { kind: 'offered', causes: choices.map(namesOf) }
		: { kind: 'named', cause: namesOf(cause) };
}

function namesOf(cause: Cause): string[] {
	switch (cause.kind) {
		case 'slip':
			return [together([...cause.slips, cause.also ?? []].flat())];
		case 'other-step':
			return [`other-step:${cause.step}`, cause.kind];
		case 'unit':
			return [`unit:${cause.unit}`, cause.kind];
		case 'misread':
			return [`misread:${cause.given}`, cause.kind];
		case 'rounding':
		case 'digits':
		case 'order':
			return [`${cause.kind}:${cause.how}`, cause.kind];
		default:
			return [cause.kind];
	}
}

/** Slips made together go by one name. */
const together = (slips: readonly string[]): string => [...slips].sort().join('+');

/** What is told about every entry of a check, in the task's order; null where one is not read. */
export async function toldOf(task: Task, typed: Typed): Promise<Map<string, Told> | null> {
	const entries: Record<string, Entry> = {};
	for (const [key, text] of Object.entries(typed)) {
		const entry = await entryFor(task, key, text);
		if (!entry) return null;
		entries[key] = entry;
	}
	const verdicts = mark(task, entries);
	const told = new Map<string, Told>();
	for (const key of task.drawn.asked) {
		const verdict = verdicts[key];
		if (verdict) told.set(key, toldBy(verdict));
	}
	return told;
}

async function entryFor({ method }: Task, key: string, text: string): Promise<Entry | null> {
	const reading = readAnswer(method, key, text, 'in');
	return (
		entryOf(
			reading.state === 'arithmetic' ? await workArithmetic(method, key, text, 'in') : reading
		) ?? null
	);
}
