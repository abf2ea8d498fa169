import type { Task } from '../tasks/task.ts';
import { differs, toleranceAt } from '../solver/tolerance.ts';
import type { Value } from '../quantity/value.ts';
import { digitsIn, roundingIn, unitSlipIn } from '../quantity/kinds/find-mistakes.ts';
import type { Kind, Nearness } from '../quantity/kinds/kind.ts';
import { roundedTo } from '../quantity/kinds/rounding.ts';
import type { Values } from '../solver/compiled.ts';
import { type Changes, evaluate } from '../solver/evaluate.ts';
import { kindAt } from '../solver/kind-at.ts';
import { TradeError } from '../solver/trade-function.ts';
import type { Cause, Entry } from './verdict.ts';

/** One answer to explain: the step it was given for, and the student's own earlier values. */
export interface Question {
	readonly task: Task;
	readonly key: string;
	readonly entry: Entry;
	/** Earlier wrong answers, which the student worked on with. */
	readonly put: Values;
}

/**
 * Finds why an answer is off, the simplest cause first: one slip, another step's result, a unit,
 * rounding, digits, then two slips together. Says `unknown` rather than guess.
 */
export function diagnose(question: Question): Cause {
	return (
		coarseEnd(question) ??
		oneSlip(question) ??
		unlikeWanted(question) ??
		otherStep(question) ??
		unitSlip(question) ??
		roundingSlip(question) ??
		digitSlip(question) ??
		twoSlips(question) ??
		slipAndUnit(question) ?? { kind: 'unknown' }
	);
}

function kindOf({ task, key }: Question): Kind {
	return kindAt(task.method, key);
}

/** The method worked with some changes, on top of the student's own earlier values. */
function workedWith({ task, key, put }: Question, changes: Changes): Value | undefined {
	try {
		const values = { ...put, ...changes.values };
		return evaluate(task.method, task.drawn.given, { ...changes, values })[key];
	} catch (error) {
		if (error instanceof TradeError) return undefined;
		throw error;
	}
}

/** Whether the entry is what these changes lead to, and that is not simply right. */
function leadsHere(
	question: Question,
	changes: Changes,
	entry = question.entry,
	nearness: Nearness = 'rounded'
): boolean {
	const value = workedWith(question, changes);
	if (value === undefined || !kindOf(question).isWritten(entry, value, nearness)) return false;
	const { task, key } = question;
	return differs(task.method, key, task.right, { [key]: value });
}

/** Not as many values as are wanted, or something that cannot be made. */
function unlikeWanted(question: Question): Cause | null {
	const { task, key, entry, put } = question;
	const right = workedWith(question, {});
	if (right === undefined) return null;
	const known = { ...task.right, ...put };
	const judgement = kindOf(question).judge(entry, right, toleranceAt(task.method, key), known);
	if (judgement.is === 'breaks') return { kind: 'breaks', says: judgement.says };
	if (judgement.is !== 'miscounted') return null;
	return { kind: 'order', wanted: judgement.wanted, got: judgement.got };
}

function slipIds({ task }: Question): string[] {
	return Object.keys(task.method.slips);
}

function oneSlip(question: Question): Cause | null {
	const { slips } = question.task.method;
	const steps = Object.keys(question.task.method.steps);
	const place = (id: string) => steps.indexOf(slips[id]?.step ?? '');
	// What was done last is the likelier one to have been done wrong.
	const hits = slipIds(question)
		.filter((id) => leadsHere(question, made([id], question)))
		.sort((one, other) => place(other) - place(one));
	const [first] = hits;
	if (first === undefined) return null;
	const elsewhere = hits.find((id) => slips[id]?.step !== slips[first]?.step);
	return elsewhere === undefined
		? { kind: 'slip', slips: [first] }
		: { kind: 'either', slips: [first, elsewhere] };
}

/** The changes that make these slips. */
function made(ids: readonly string[], { task }: Question): Changes {
	const { slips } = task.method;
	return { slips: Object.fromEntries(ids.map((id) => [slips[id]?.step ?? '', id])) };
}

function otherStep(question: Question): Cause | null {
	const { task, key, entry } = question;
	const kind = kindOf(question);
	// Words and orders of unlike things are never the same.
	if (kind.dimension.formula === null) return null;
	const step = Object.keys(task.method.steps).find((other) => {
		const value = task.right[other];
		if (other === key || value === undefined) return false;
		const { dimension, isList } = kindAt(task.method, other);
		const alike = dimension === kind.dimension && isList === kind.isList;
		return alike && kind.isWritten(entry, value);
	});
	return step === undefined ? null : { kind: 'other-step', step };
}

function unitSlip(question: Question): Cause | null {
	const right = workedWith(question, {});
	const slip = right === undefined ? null : unitSlipIn(kindOf(question), question.entry, right);
	return slip && { kind: 'unit', unit: slip.id };
}

/** Two places or fewer: so coarse that a slip's number would match it as well. */
function coarseEnd(question: Question): Cause | null {
	return question.entry.grain >= 0.005 ? roundedAtTheEnd(question) : null;
}

function roundingSlip(question: Question): Cause | null {
	return roundedAtTheEnd(question) ?? roundedOnTheWay(question);
}

function roundedAtTheEnd(question: Question): Cause | null {
	const { task, key, entry } = question;
	const right = workedWith(question, {});
	if (right === undefined || task.method.steps[key]?.tolerance?.amount === '0') return null;
	const how = roundingIn(kindOf(question), entry, right);
	return how && { kind: 'rounding', how };
}

/** Every step before rounded to the first, second or third of the parts that its kind may be. */
function roundedOnTheWay(question: Question): Cause | null {
	const { method } = question.task;
	for (const at of [0, 1, 2]) {
		const carry = (value: Value, key: string) => {
			const kind = kindAt(method, key);
			const parts = kind.mistakes.onTheWay[at];
			const stays = key === question.key || parts === undefined;
			return stays ? value : kind.map(value, (one) => roundedTo(one, parts));
		};
		if (leadsHere(question, { carry })) return { kind: 'rounding', how: 'way' };
	}
	return null;
}

function digitSlip(question: Question): Cause | null {
	const right = workedWith(question, {});
	const how = right === undefined ? null : digitsIn(kindOf(question), question.entry, right);
	return how && { kind: 'digits', how };
}

/** Two slips in different steps; only when a single pair explains the number. */
function twoSlips(question: Question): Cause | null {
	const { slips } = question.task.method;
	const ids = slipIds(question);
	const pairs = ids.flatMap((one, i) =>
		ids
			.slice(i + 1)
			.filter((two) => slips[one]?.step !== slips[two]?.step)
			.map((two) => [one, two])
	);
	// So many pairs are tried that a chance number would often be near one of them.
	const hits = pairs.filter((pair) =>
		leadsHere(question, made(pair, question), question.entry, 'exact')
	);
	return hits.length === 1 && hits[0] ? { kind: 'slip', slips: hits[0] } : null;
}

function slipAndUnit(question: Question): Cause | null {
	const kind = kindOf(question);
	const hits = kind.mistakes.units.flatMap(({ id: also, factor }) => {
		const entry = kind.scaled(question.entry, factor);
		return slipIds(question)
			.filter((id) => leadsHere(question, made([id], question), entry, 'exact'))
			.map((id): Cause => ({ kind: 'slip', slips: [id], also }));
	});
	return hits.length === 1 && hits[0] ? hits[0] : null;
}
