import Fraction from 'fraction.js';
import type { Task } from '../tasks/task.ts';
import { differs } from '../solver/tolerance.ts';
import type { Value } from '../quantity/kind.ts';
import { compiledOf, type Values } from '../solver/compiled.ts';
import { type Changes, evaluate } from '../solver/evaluate.ts';
import { TradeError } from '../solver/trade-function.ts';
import { isWritten, listed, type Nearness, plainValue, scaled } from './match.ts';
import type { Cause, Entry, UnitSlip } from './verdict.ts';

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
		wrongLength(question) ??
		otherStep(question) ??
		unitSlip(question) ??
		roundingSlip(question) ??
		digitSlip(question) ??
		twoSlips(question) ??
		slipAndUnit(question) ?? { kind: 'unknown' }
	);
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
	if (value === undefined || !isWritten(entry, value, nearness)) return false;
	const { task, key } = question;
	return differs(task.method, key, task.right, { [key]: value });
}

function wrongLength({ task, key, entry }: Question): Cause | null {
	const right = task.right[key];
	if (typeof right !== 'object' || typeof entry.value === 'string') return null;
	const got = listed(entry.value).length;
	return got === right.length ? null : { kind: 'order', wanted: right.length, got };
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

function otherStep({ task, key, entry }: Question): Cause | null {
	const { steps } = compiledOf(task.method);
	const kind = steps[key]?.kind;
	const step = Object.keys(steps).find((other) => {
		const value = task.right[other];
		return (
			other !== key &&
			steps[other]?.kind === kind &&
			kind !== 'text' &&
			value !== undefined &&
			isWritten(entry, value)
		);
	});
	return step === undefined ? null : { kind: 'other-step', step };
}

const lengthUnits: readonly (readonly [UnitSlip, Fraction])[] = [
	['mm-for-inch', new Fraction(5, 127)],
	['inch-for-mm', new Fraction(127, 5)],
	['thousandths', new Fraction(1, 1000)],
	['sixteenths', new Fraction(1, 16)]
];

const angleUnits: readonly (readonly [UnitSlip, Fraction])[] = [
	['radians', new Fraction(180 / Math.PI)]
];

function unitsFor({ task, key }: Question): readonly (readonly [UnitSlip, Fraction])[] {
	const kind = compiledOf(task.method).steps[key]?.kind;
	return kind === 'length' ? lengthUnits : kind === 'angle' ? angleUnits : [];
}

function unitSlip(question: Question): Cause | null {
	const right = workedWith(question, {});
	if (right === undefined) return null;
	const hit = unitsFor(question).find(([, factor]) =>
		isWritten(scaled(question.entry, factor), right)
	);
	return hit ? { kind: 'unit', unit: hit[0] } : null;
}

/** Two places or fewer: so coarse that a slip's number would match it as well. */
function coarseEnd(question: Question): Cause | null {
	return question.entry.grain >= 0.005 ? roundedAtTheEnd(question) : null;
}

/** Places somebody may round to, as parts of the base unit. */
const coarse = [100, 10, 1, 64, 32, 16, 8] as const;

function roundedAll(value: Value, round: (one: number) => number): Value {
	if (typeof value === 'string') return value;
	return typeof value === 'number' ? round(value) : value.map(round);
}

function roundingSlip(question: Question): Cause | null {
	return roundedAtTheEnd(question) ?? roundedOnTheWay(question);
}

function roundedAtTheEnd(question: Question): Cause | null {
	const { task, key, entry } = question;
	const right = workedWith(question, {});
	if (right === undefined || task.method.steps[key]?.tolerance?.amount === '0') return null;
	for (const parts of coarse) {
		const near = (one: number) => Math.floor(one * parts + 0.5 + 1e-9) / parts;
		if (same(entry, roundedAll(right, near))) return { kind: 'rounding', how: 'end' };
	}
	for (const parts of [1000, 100, 10]) {
		const cut = (one: number) => Math.floor(one * parts + 1e-9) / parts;
		if (same(entry, roundedAll(right, cut))) return { kind: 'rounding', how: 'cut' };
	}
	return null;
}

function roundedOnTheWay(question: Question): Cause | null {
	for (const parts of [100, 10, 16]) {
		const near = (one: number) => Math.floor(one * parts + 0.5 + 1e-9) / parts;
		const carry = (value: Value, key: string) =>
			key === question.key ? value : roundedAll(value, near);
		if (leadsHere(question, { carry })) return { kind: 'rounding', how: 'way' };
	}
	return null;
}

/** Whether the entry is this very value and not merely near it. */
function same(entry: Entry, value: Value): boolean {
	return isWritten({ ...entry, grain: 0 }, value) && isWritten({ ...entry, grain: 1e-6 }, value);
}

function digitSlip(question: Question): Cause | null {
	const { entry } = question;
	const right = workedWith(question, {});
	// A fraction or a whole number has no digits to misplace.
	if (typeof right !== 'number' || entry.grain === 0) return null;
	const typed = plainValue(entry);
	if (typeof typed !== 'number') return null;
	for (const factor of [10, 100, 0.1, 0.01]) {
		if (isWritten({ ...entry, grain: entry.grain * factor }, right * factor))
			return { kind: 'digits', how: 'point' };
	}
	return swapped(right).some((value) => Math.abs(value - typed) < 1e-9)
		? { kind: 'digits', how: 'swapped' }
		: null;
}

/** The value to three or four places with two unlike neighbouring digits swapped. */
function swapped(value: number): number[] {
	return [3, 4].flatMap((places) => {
		const text = value.toFixed(places);
		return [...text].flatMap((digit, i) => {
			const next = text[i + 1];
			if (next === undefined || digit === next || digit === '.' || next === '.') return [];
			return [Number(text.slice(0, i) + next + digit + text.slice(i + 2))];
		});
	});
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
	const hits = unitsFor(question).flatMap(([unit, factor]) =>
		slipIds(question)
			.filter((id) =>
				leadsHere(question, made([id], question), scaled(question.entry, factor), 'exact')
			)
			.map((id): Cause => ({ kind: 'slip', slips: [id], also: unit }))
	);
	return hits.length === 1 && hits[0] ? hits[0] : null;
}
