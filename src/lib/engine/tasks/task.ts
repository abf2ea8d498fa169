import type { Value } from '../quantity/value.ts';
import { compiledOf, type Values } from '../solver/compiled.ts';
import { evaluate, withSlip } from '../solver/evaluate.ts';
import { brokenLimit } from '../solver/limits.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Method } from '../solver/method.ts';
import { orNull, TradeError } from '../solver/trade-function.ts';
import { cardByCode, loadFamily } from '../families/catalogue.ts';
import type { Draw, Family } from '../families/family.ts';
import { randomFrom } from '../families/random.ts';
import { readTaskNumber, type TaskId, TaskNumberError, writeTaskNumber } from './task-number.ts';
import { carriedIn, differs } from '../solver/tolerance.ts';
import { alikeFault, chiefFault } from './chief-slips.ts';

/** One problem, drawn: the same number gives the same task everywhere. */
export interface Task {
	readonly number: string;
	readonly id: TaskId;
	readonly family: Family;
	/** The family's method, or the one that this draw is worked by. */
	readonly method: Method;
	readonly drawn: Draw;
	/** Right values of the givens and all steps, in base units. */
	readonly right: Values;
	/** Slips that show in this task, with every value they lead to. */
	readonly slips: ReadonlyMap<string, Values>;
}

/** The steps of a task, in order: those of the method up to the last one that is asked. */
export function stepsOf({ method, drawn }: Pick<Task, 'method' | 'drawn'>): string[] {
	const keys = Object.keys(method.steps);
	return keys.slice(0, Math.max(...drawn.asked.map((key) => keys.indexOf(key))) + 1);
}

/** What a task is made of before it is known to be sound. */
type Parts = Pick<Task, 'number' | 'id' | 'family' | 'method' | 'drawn'>;

const tries = 400;

/**
 * Rejects with a TaskNumberError, one sentence, when there is no such task.
 *
 * @param load how its family is fetched: with what it tells of answers, unless that comes later
 */
export async function taskFromNumber(typed: string, load = loadFamily): Promise<Task> {
	const id = readTaskNumber(typed);
	const card = cardByCode(id.code);
	if (!card) throw new TaskNumberError(`No family of tasks has the code ${id.code}.`);
	if (card.rev !== id.rev) {
		throw new TaskNumberError(
			id.rev < card.rev
				? `That number is of revision ${id.rev}; “${card.name}” is now at ${card.rev} and draws other tasks. Open a new one.`
				: `That number is of revision ${id.rev}, newer than this copy of Bucktail; update it first.`
		);
	}
	return drawTask(await load(card), id.level, id.seed);
}

/**
 * Draws the task of a seed. Draws in which a chief slip would pass unnoticed, or the answer hangs
 * on the last digit of a rounding, are drawn again.
 *
 * @throws Error naming family and level, and what is most often wrong, when no draw will do
 */
export function drawTask(family: Family, level: TaskId['level'], seed: number): Task {
	const id: TaskId = { code: family.code, level, seed, rev: family.rev };
	const number = writeTaskNumber(id);
	const random = randomFrom(number);
	const faults: string[] = [];
	for (let round = 0; round < tries; round++) {
		const drawn = family.draw(random, level);
		const task = sound({ number, id, family, method: drawn.method ?? family.method, drawn });
		if (!(task instanceof Error)) return task;
		faults.push(task.message);
	}
	const [fault = ''] = [...new Set(faults)].sort((a, b) => timesIn(faults, b) - timesIn(faults, a));
	throw new Error(
		`${number}: none of ${tries} draws of ${family.id}, level ${level}, can be asked; most often: ${fault}`
	);
}

function timesIn(faults: readonly string[], fault: string): number {
	return faults.filter((one) => one === fault).length;
}

/** The task with its answer and slips, or what is wrong with the draw. */
function sound(parts: Parts): Task | Error {
	const { method, drawn } = parts;
	const stray = drawn.asked.find((key) => !Object.hasOwn(method.steps, key));
	if (stray !== undefined)
		throw new Error(
			`${parts.family.id} asks for ${stray}, which is no step of ${method.id}: its steps are ${Object.keys(method.steps).join(', ')}`
		);
	let right: Values;
	try {
		right = evaluate(method, drawn.given);
	} catch (error) {
		if (error instanceof TradeError) return error;
		throw error;
	}
	const broken = brokenLimit(method, right);
	if (broken) return new Error(broken);
	const rounded = evaluate(method, drawn.given, { carry: carriedIn(method) });
	// Rounding every step as a shop does must leave each asked value where it is.
	const moved = drawn.asked.find((key) => differs(method, key, right, rounded));
	if (moved !== undefined) {
		return new Error(`rounding on the way moves ${moved}: draw rounder numbers`);
	}
	const slips = slipsThatShow(parts, right, rounded);
	const unseen = chiefFault(method, drawn, right, rounded) ?? alikeFault(method, drawn, right);
	if (unseen) return unseen;
	for (const key of drawn.asked) {
		const [seen, wanted] = [distinctAt(method, key, right, slips), slipsWanted(method, key)];
		if (seen < wanted) {
			return new Error(
				`${key} has ${seen} slips that lead to another answer and wants ${wanted}: add slips to its steps, or draw other numbers`
			);
		}
	}
	return { ...parts, right, slips };
}

/** The slips that lead to another answer, with every value they lead to. */
export function slipsThatShow(parts: Parts, right: Values, rounded: Values): Map<string, Values> {
	const slips = new Map<string, Values>();
	for (const slipId of compiledOf(parts.method).slipIds) {
		const values = orNull(() => withSlip(parts.method, right, slipId));
		if (values && showsIn(parts, right, rounded, values)) slips.set(slipId, values);
	}
	return slips;
}

/** Whether an asked value tells these values from the right ones, rounded as in a shop or not. */
function showsIn(
	{ method, drawn }: Parts,
	right: Values,
	rounded: Values,
	values: Values
): boolean {
	for (const key of drawn.asked) {
		if (differs(method, key, right, values) && differs(method, key, rounded, values)) return true;
	}
	return false;
}

/** Different wrong values that the slips lead to at `key`, as far as they are wanted. */
function distinctAt(
	method: Method,
	key: string,
	right: Values,
	slips: ReadonlyMap<string, Values>
): number {
	const kind = kindAt(method, key);
	const seen: Value[] = [];
	for (const [id, values] of slips) {
		if (method.slips[id]?.late) continue;
		const value = values[key];
		if (value === undefined || !differs(method, key, right, values)) continue;
		if (seen.every((other) => kind.differs(value, other, leastApart))) seen.push(value);
		if (seen.length === mostWanted) break;
	}
	return seen.length;
}

/** Wrong values nearer than this, in base units, are one. */
const leastApart = 1e-6;

const mostWanted = 3;

/** A choice of two or three cannot be wrong in three ways. */
function slipsWanted(method: Method, key: string): number {
	const choices = kindAt(method, key).choices.length;
	return choices > 0 ? Math.min(mostWanted, choices - 1) : mostWanted;
}
