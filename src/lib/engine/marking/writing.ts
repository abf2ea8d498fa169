import { digitsIn, mistypedIn } from '../quantity/kinds/find-digits.ts';
import { roundingIn, unitSlipIn } from '../quantity/kinds/find-mistakes.ts';
import type { Entry, Kind } from '../quantity/kinds/kind.ts';
import { numbersIn } from '../quantity/kinds/numbers-in.ts';
import { isFraction } from '../quantity/kinds/rounding.ts';
import type { Value } from '../quantity/value.ts';
import { kindAt } from '../solver/kind-at.ts';
import { copied } from './copied.ts';
import { factorCause } from './factor.ts';
import { type Candidate, isContradicted, isOff, kindOf, type Question } from './question.ts';
import type { Cause, OrderHow } from './verdict.ts';

/*
 * Causes that are no slips of the method: the right number in another unit, rounded, with its
 * digits misplaced, in another order, copied from another place, or not worked out.
 */

/**
 * None of these hides a slip that fits as well, and none but a moved point and a rounding on the way
 * is much less likely than a seldom slip.
 */
const costs = {
	factor: 1,
	used: 0.1,
	rounding: { near: 1.04, far: 1.1 },
	unit: 1.12,
	swapped: 1.1,
	order: 0.96,
	point: 1.3
};
/** Whoever rounds away more of a value sees that it is another one. A stocked size is hardly rounded. */
const coarsely = 0.15;

/** Of a number with two digits, many a slip is likelier. */
const onTheWay = { fine: 1.4, coarse: 1.9 };

/** Every such cause that leads to the entry. */
export function writingFaults(question: Question): Candidate[] {
	const found = question.worlds.flatMap(({ base }) => {
		const value = base[question.key];
		return value === undefined ? [] : [...misread(question, value), ...rounded(question, value)];
	});
	const factor = factorCause(question.task, question.key, question.entry);
	if (factor) {
		// What was worked on with was meant as a size.
		const isUsed = question.sheet.some(({ state }) => state === 'carried');
		const cost = costs.factor + (isUsed ? costs.used : 0);
		found.push({ cause: factor, cost, rarity: 0, support: 0 });
	}
	return [...found, ...roundedOnTheWay(question), ...inMillimetres(question), ...copied(question)];
}

function misread(question: Question, right: Value): Candidate[] {
	const kind = kindOf(question);
	const unit = unitSlipIn(kind, question.entry, right);
	const how = digitsIn(kind, question.entry, right);
	const order = orderIn(kind, question.entry, right);
	return [
		...(order ? [candidate({ kind: 'order', how: order }, costs.order)] : []),
		...(unit ? [candidate({ kind: 'unit', unit: unit.id }, costs.unit)] : []),
		...(how ? [candidate({ kind: 'digits', how }, costs[how])] : [])
	];
}

/** How a list holds the right values in another order; null where it does not. */
function orderIn(kind: Kind, entry: Entry, right: Value): OrderHow | null {
	if (!kind.isList) return null;
	const typed = numbersIn(kind, entry);
	const wanted = kind.numbers(right);
	const inOrder = (ones: readonly number[]) => kind.isWritten(entry, ones);
	if (inOrder(wanted)) return null;
	if (inOrder([...wanted].reverse())) return 'reversed';
	if (isShifted(typed, wanted)) return 'shifted';
	const places = typed.map((_, at) => at).sort((a, b) => (typed[a] ?? 0) - (typed[b] ?? 0));
	const sorted = [...wanted].sort((a, b) => a - b);
	return inOrder(typed.map((_, at) => sorted[places.indexOf(at)] ?? NaN)) ? 'mixed' : null;
}

/** Whether two numbers or more are right, and all after them off by as much. */
function isShifted(typed: readonly number[], wanted: readonly number[]): boolean {
	const off = typed.map((one, at) => one - (wanted[at] ?? NaN));
	const first = off.findIndex((one) => Math.abs(one) > 1e-3);
	const by = off[first] ?? 0;
	const isAlike = off.slice(first).every((one) => Math.abs(one - by) < 1e-3);
	return first >= 2 && first < off.length - 1 && isAlike;
}

function rounded(question: Question, right: Value): Candidate[] {
	const { task, key, entry } = question;
	// What must be the very value is not rounded, but another one.
	if (task.method.steps[key]?.tolerance?.amount === '0') return [];
	const kind = kindOf(question);
	const rounding = roundingIn(kind, entry, right);
	if (!rounding) return [];
	// A size that is written as it stands on a common rule is hardly read off a coarser one, and what was read
	// off a rule is hardly typed in decimals.
	// Nobody leaves one decimal where thousandths are wanted.
	const isVeryCoarse = entry.grain * kind.fine >= 50;
	const isRule = rounding.parts !== undefined;
	const isSize = isRule && kind.numbers(right).every((one) => isFraction(kind.member, one));
	const isMuch = lostBy(kind, entry, right) > coarsely;
	// A size is not rounded to a much coarser one, but another one is taken.
	if (isSize && (isMuch || kind.mistakes.stocked)) return [];
	const isTypedOut = isRule && entry.grain > 0 && entry.grain < 0.5;
	const isFar = kind.mistakes.stocked || isSize || isTypedOut || isVeryCoarse || isMuch;
	const cost = isFar ? costs.rounding.far : costs.rounding.near;
	return [candidate({ kind: 'rounding', ...rounding }, cost)];
}

/** The largest share of a right value that an entry is off by. */
function lostBy(kind: Kind, entry: Entry, right: Value): number {
	const entered = numbersIn(kind, entry, right);
	const shares = kind.numbers(right).map((one, i) => Math.abs(one - (entered[i] ?? one)) / one);
	return Math.max(0, ...shares);
}

function roundedOnTheWay(question: Question): Candidate[] {
	const { key, entry } = question;
	// So few sizes are made that rounded numbers come to many a wrong one.
	const { stocked, coarse } = kindOf(question).mistakes;
	if (stocked || coarse.length === 0) return [];
	const hit = question.worlds.some((world) =>
		world.roundedOnTheWay(key).some((values) => {
			const value = values[key];
			if (value === undefined || !isOff(question, world, values)) return false;
			const isIt = kindOf(question).isWritten(entry, value, 'exact');
			return isIt && !isContradicted(question, world, values);
		})
	);
	const cost = entry.grain * kindOf(question).fine < 5 ? onTheWay.fine : onTheWay.coarse;
	return hit ? [candidate({ kind: 'rounding', how: 'way' }, cost)] : [];
}

/**
 * A length that the answer is made of, rounded to whole or half millimetres instead of up to a size
 * in inches: whoever types millimetres works in them.
 */
function inMillimetres(question: Question): Candidate[] {
	const { task, key, entry, worlds } = question;
	const kind = kindOf(question);
	if (!kind.mistakes.stocked) return [];
	const steps = Object.keys(task.method.steps);
	const before = steps.slice(0, steps.indexOf(key) + 1);
	const isRounded = before.some((step) => {
		if (kindAt(task.method, step).dimension !== kind.dimension) return false;
		const value = worlds[0]?.base[step];
		return value !== undefined && roundingIn(kind, entry, value)?.how === 'metric';
	});
	return isRounded ? [candidate({ kind: 'rounding', how: 'metric' }, costs.rounding.far)] : [];
}

/** The right digits but for one that is missing, doubled or another. */
export function mistyped(question: Question): Candidate[] {
	const { key, worlds, entry } = question;
	const right = worlds[0]?.base[key];
	const how = right === undefined ? null : mistypedIn(kindOf(question), entry, right);
	return how ? [candidate({ kind: 'digits', how }, costs.point)] : [];
}

function candidate(cause: Cause, cost: number): Candidate {
	return { cause, cost, rarity: 0, support: 0 };
}
