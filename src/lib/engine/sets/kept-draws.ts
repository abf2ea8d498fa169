import * as v from 'valibot';
import type { Family } from '../families/family.ts';
import type { Level } from '../families/level.ts';
import { randomFrom } from '../families/random.ts';
import { evaluate } from '../solver/evaluate.ts';
import type { Method } from '../solver/method.ts';
import { TradeError } from '../solver/trade-function.ts';
import { carriedIn } from '../solver/tolerance.ts';
import { readTaskNumber, TaskNumberError } from '../tasks/task-number.ts';
import { slipsThatShow, type Task } from '../tasks/task.ts';
import { type CautionId, cautions } from '../trade/cautions.ts';
import { keptOptions, optionsOf, reopenedOn } from './kept-question.ts';
import type { SetTask } from './open-set.ts';
import type { Question } from './rehearsal.ts';

/*
 * What the tasks of a set drew, kept as plain data. A family of a later revision draws other tasks
 * from the same numbers; what was handed out before stays as it was where this was kept.
 */

const word = v.pipe(v.string(), v.maxLength(400));
const key = v.pipe(v.string(), v.regex(/^[\w-]{1,60}$/));
const amount = v.pipe(v.number(), v.finite());
const piece = v.object({ count: amount, size: amount });
const value = v.union([
	amount,
	word,
	v.array(v.union([amount, word])),
	v.object({ parts: v.array(v.array(piece)) })
]);

const keptDraw = v.object({
	/** Place in the set, from 1. */
	place: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(999)),
	/** The task's number. */
	number: v.pipe(v.string(), v.maxLength(30)),
	/** Id of its method. */
	method: key,
	given: v.record(key, value),
	story: v.pipe(v.string(), v.maxLength(2000)),
	question: word,
	asked: v.pipe(v.array(key), v.minLength(1)),
	labels: v.optional(v.record(key, v.union([word, v.array(word)]))),
	told: v.optional(v.array(v.tuple([word, word]))),
	basis: v.optional(word),
	cautions: v.array(key),
	/** The step whose answer is chosen from options, and what leads to each; null where it is typed. */
	choice: v.nullable(v.object({ key, options: keptOptions }))
});

const keptDraws = v.array(keptDraw);

export type KeptDraw = Readonly<v.InferOutput<typeof keptDraw>>;

/** A sheet as the log keeps it, packed: that of one code, or with null that of everybody. */
export interface KeptSheet {
	readonly code: string | null;
	readonly draws: string;
}

/** What is kept of one set: by place, for one code or, with null, for everybody. */
export interface KeptDraws {
	readonly at: (code: string | null, place: number) => KeptDraw | undefined;
}

export const nothingKept: KeptDraws = { at: () => undefined };

/** What tasks drew, to be kept. */
export function drawsOf(tasks: readonly SetTask[]): KeptDraw[] {
	return tasks.map(({ place, task, question }) => {
		const { given, story, question: asks, asked, labels, told, basis, cautions: ids } = task.drawn;
		const draw = { given, story, question: asks, asked, labels, told, basis, cautions: ids };
		const choice = question && { key: question.key, options: optionsOf(question) };
		const { number, method } = task;
		// By way of JSON, as it is kept: what is undefined is left out.
		const plain: unknown = JSON.parse(
			JSON.stringify({ place, number, method: method.id, ...draw, choice })
		);
		return v.parse(keptDraw, plain);
	});
}

/** Reads what was kept; nothing where it is damaged. */
export function readDraws(data: unknown): readonly KeptDraw[] {
	const read = v.safeParse(keptDraws, data);
	return read.success ? read.output : [];
}

/** The task of a kept draw by today's method; null where that is gone or asks something else. */
export function taskFromDraw(kept: KeptDraw, family: Family): Task | null {
	try {
		const id = readTaskNumber(kept.number);
		const method = methodIn(family, id.level, kept.method);
		if (id.code !== family.code || !method || !fits(method, kept)) return null;
		const { given, story, question, asked, labels, told, basis } = kept;
		const known = kept.cautions.filter((one): one is CautionId => Object.hasOwn(cautions, one));
		const more = { ...(labels && { labels }), ...(told && { told }), ...(basis && { basis }) };
		const drawn = { method, given, story, question, asked, ...more, cautions: known };
		const right = evaluate(method, given);
		const rounded = evaluate(method, given, { carry: carriedIn(method) });
		const parts = { number: kept.number, id, family, method, drawn };
		return { ...parts, right, slips: slipsThatShow(parts, right, rounded) };
	} catch (error) {
		if (error instanceof TaskNumberError || error instanceof TradeError) return null;
		throw error;
	}
}

/** Draws that are looked at for a method. */
const looks = 200;

/** A method of a family by its id; null where none of its draws names that any more. */
function methodIn(family: Family, level: Level, id: string): Method | null {
	const { method, others = [] } = family;
	const known = [method, ...others].find((one) => one.id === id);
	if (known) return known;
	// One that is joined for a task is named by the draw alone.
	for (let n = 0; n < looks; n++) {
		const drawn = family.draw(randomFrom(`method ${n}`), level);
		if (drawn.method?.id === id) return drawn.method;
	}
	return null;
}

function fits({ given, steps }: Method, kept: KeptDraw): boolean {
	const sameGivens = Object.keys(given).every((one) => Object.hasOwn(kept.given, one));
	return sameGivens && kept.asked.every((one) => Object.hasOwn(steps, one));
}

/** The options as they stood on the sheet; null where answers were typed, or they can be no more. */
export function questionFromDraw(task: Task, { choice }: KeptDraw): Question | null {
	return choice && reopenedOn(task, choice);
}
