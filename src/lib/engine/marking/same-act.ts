import { roundedTo } from '../quantity/kinds/rounding.ts';
import type { Value } from '../quantity/value.ts';
import { compiledOf, type Values } from '../solver/compiled.ts';
import { evaluateAsFar } from '../solver/as-far.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Method } from '../solver/method.ts';
import type { Task } from '../tasks/task.ts';
import { type Cause, stepOfSlip } from './verdict.ts';

/**
 * Whether two slips in one step are the same act in this task, and do not only come to the same by
 * its numbers: with two layers alike, “one layer only” and “the thinnest left out”. Then they come
 * to the same with other numbers too, as long as what is alike stays alike.
 */
export function isSameAct(task: Task, one: string, other: string): boolean {
	const { method } = task;
	const step = stepOfSlip(method, one);
	if (step !== stepOfSlip(method, other)) return false;
	// Whole numbers and stocked sizes come to the same by rounding, always one less for two acts. Only a
	// nought makes two acts one: without a kerf, none can be left out.
	const { stocked, coarse } = kindAt(method, step).mistakes;
	const hasNought = Object.values(task.drawn.given).includes(0);
	if (stocked || (coarse.length === 0 && !hasNought)) return false;
	const at =
		(id: string): Worked =>
		({ given }) =>
			evaluateAsFar(method, given, { slips: { [step]: id } })[step];
	return isAlways(task, step, at(one), at(other));
}

/**
 * Whether a slip is the very act that a fault of writing tells of: giving the result of another step,
 * or rounding to those parts, whatever the numbers.
 */
export function isActOf(task: Task, key: string, id: string, cause: Cause): boolean {
	const { method } = task;
	const step = stepOfSlip(method, id);
	// A step that is put in is not worked, and so has no slip.
	const made: Worked = ({ given, values }) => {
		const others = Object.entries(values).filter(([other]) => other !== step);
		const changes = { values: Object.fromEntries(others), slips: { [step]: id } };
		return evaluateAsFar(method, given, changes)[key];
	};
	const right =
		(at: string): Worked =>
		({ given, values }) =>
			evaluateAsFar(method, given, { values })[at];
	if (cause.kind === 'other-step') {
		// The same step of another stack: what was copied from there is nothing else.
		if (isTwin(method, key, cause.step)) return false;
		return givesOn(task, key, id, cause.step) || isAlways(task, key, made, right(cause.step));
	}
	const finest = cause.kind === 'rounding' ? cause.parts : undefined;
	if (finest === undefined) return false;
	// What is right to a sixteenth may be so to a 32nd as well.
	return [finest, finest / 2, finest / 4].some((parts) =>
		isAlways(task, key, made, (numbers) => {
			const value = right(key)(numbers);
			return value === undefined
				? value
				: kindAt(method, key).map(value, (one) => roundedTo(one, parts));
		})
	);
}

/** Whether two steps of a joined method are the same one, for two parts of the work. */
function isTwin({ steps }: Method, one: string, other: string): boolean {
	return steps[one]?.skill === steps[other]?.skill;
}

/** Whether a slip gives the result of another step, whatever it is: twice as much, say. */
function givesOn({ method, drawn, right }: Task, key: string, id: string, step: string): boolean {
	const value = Object.hasOwn(method.steps, step) ? right[step] : undefined;
	if (value === undefined) return false;
	const other = kindAt(method, step).map(value, (one) => one * 2);
	const slips = { [stepOfSlip(method, id)]: id };
	const made = evaluateAsFar(method, drawn.given, { slips, values: { [step]: other } })[key];
	return made !== undefined && !kindAt(method, key).differs(made, other, 1e-9);
}

/** Other numbers: givens, and steps that are read from words. */
interface Numbers {
	readonly given: Values;
	readonly values: Values;
}

type Worked = (numbers: Numbers) => Value | undefined;

/** Numbers to try: whole numbers and stocked sizes are often the same by rounding, others hardly ever. */
const tries = { rounded: 30, other: 6 };

/** Whether two ways of working come to the same at a step, whatever the numbers: to more than one value. */
function isAlways(task: Task, step: string, one: Worked, other: Worked): boolean {
	const kind = kindAt(task.method, step);
	const { stocked, coarse } = kind.mistakes;
	const found: Value[] = [];
	for (let i = 1; i <= (stocked || coarse.length === 0 ? tries.rounded : tries.other); i++) {
		const numbers = otherNumbers(task, i);
		const [first, second] = [one(numbers), other(numbers)];
		// Tables have no row for many a size.
		if (first === undefined || second === undefined) continue;
		if (!kind.isSound(second) || kind.differs(first, second, 1e-9)) return false;
		if (found.every((value) => kind.differs(value, first, 1e-9))) found.push(first);
	}
	return found.length > 1;
}

/**
 * The givens of a task, each number larger by a share of its own, a list as a whole, and a stocked
 * size another one; what is read from a rivet's number, another number too, while its head stays one. A square bend stays
 * square: that K is 1 there is what makes two slips one.
 */
function otherNumbers({ method, drawn, right }: Task, times: number): Numbers {
	const given = Object.entries(drawn.given).map(([key, value], i) => {
		const kind = kindAt(method, key);
		const turn = times * (i + 1);
		const more = (one: number) => {
			if (kind.mistakes.stocked) return one + (turn % 5) / 32;
			return one === 90 ? one : one * (1 + ((0.0137 * turn) % 0.7));
		};
		return [key, kind.map(value, more)] as const;
	});
	const { steps } = compiledOf(method);
	const isWord = (name: string) => typeof drawn.given[name] === 'string';
	const hasChoices = (name: string) => kindAt(method, name).choices.length > 0;
	const read = Object.entries(steps).flatMap(([key, { needs }]) => {
		const value = right[key];
		const isRead = value !== undefined && needs.some((name) => isWord(name) && !hasChoices(name));
		return isRead ? [[key, kindAt(method, key).map(value, (one) => one + (times % 5) - 2)]] : [];
	});
	return { given: Object.fromEntries(given), values: Object.fromEntries(read) as Values };
}
