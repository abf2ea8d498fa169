import { digitsIn, roundingIn, unitSlipIn } from '../quantity/kinds/find-mistakes.ts';
import type { Entry, Kind } from '../quantity/kinds/kind.ts';
import type { Value } from '../quantity/value.ts';
import { kindAt } from '../solver/kind-at.ts';
import { factorCause } from './factor.ts';
import {
	type Candidate,
	isContradicted,
	isOff,
	kindOf,
	numbersIn,
	type Question
} from './question.ts';
import type { Cause } from './verdict.ts';

/*
 * Causes that are no slips of the method: the right number in another unit, rounded, with its
 * digits misplaced, for another step, or not worked out.
 */

/**
 * None of these hides a slip that fits as well, and none but a later step, a moved point and a
 * rounding on the way is much less likely than a seldom slip.
 */
const costs = {
	exchanged: 0.9,
	factor: 1,
	rounding: { near: 1.04, far: 1.1 },
	unit: 1.08,
	otherStep: 1.08,
	swapped: 1.08,
	point: 1.3,
	/** A step further on which is not asked. */
	laterStep: 1.4
};
/** Whoever rounds away more of a value sees that it is another one. A stocked size is hardly rounded. */
const coarsely = 0.15;

const onTheWay = 1.4;

/** Every such cause that leads to the entry. */
export function writingFaults(question: Question): Candidate[] {
	const found = question.worlds.flatMap(({ base }) => {
		const value = base[question.key];
		return value === undefined ? [] : [...misread(question, value), ...rounded(question, value)];
	});
	const factor = factorCause(question.task, question.key, question.entry);
	if (factor) found.push({ cause: factor, cost: costs.factor, rarity: 0, support: 0 });
	return [...found, ...roundedOnTheWay(question), ...otherSteps(question)];
}

function misread(question: Question, right: Value): Candidate[] {
	const kind = kindOf(question);
	const unit = unitSlipIn(kind, question.entry, right);
	const how = digitsIn(kind, question.entry, right);
	return [
		...(unit ? [candidate({ kind: 'unit', unit: unit.id }, costs.unit)] : []),
		...(how ? [candidate({ kind: 'digits', how }, costs[how])] : [])
	];
}

function rounded(question: Question, right: Value): Candidate[] {
	const { task, key, entry } = question;
	// What must be the very value is not rounded, but another one.
	if (task.method.steps[key]?.tolerance?.amount === '0') return [];
	const kind = kindOf(question);
	const rounding = roundingIn(kind, entry, right);
	if (!rounding) return [];
	const isFar = kind.mistakes.stocked || lostBy(kind, entry, right) > coarsely;
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
		[0, 1, 2].some((at) => {
			const values = world.roundedOnTheWay(key, at);
			const value = values[key];
			if (value === undefined || !isOff(question, world, values)) return false;
			const isIt = kindOf(question).isWritten(entry, value, 'exact');
			return isIt && !isContradicted(question, world, values);
		})
	);
	return hit ? [candidate({ kind: 'rounding', how: 'way' }, onTheWay)] : [];
}

/** The result of another step: the nearest before this one, or else the first after it. */
function otherSteps(question: Question): Candidate[] {
	const { task, key, sheet } = question;
	const kind = kindOf(question);
	// Words and orders of unlike things are never the same.
	if (kind.dimension.formula === null) return [];
	const right = task.right[key];
	const steps = Object.keys(task.method.steps);
	const found = steps.filter((step) => step !== key && isResultOf(question, step));
	const isExchanged = (step: string) => {
		const there = sheet.find((seen) => seen.key === step && !seen.earlier);
		return there && right !== undefined && kind.isWritten(there.entry, right, 'exact');
	};
	const exchanged = found.find(isExchanged);
	if (exchanged) return [candidate({ kind: 'other-step', step: exchanged }, costs.exchanged)];
	const before = found.filter((step) => steps.indexOf(step) < steps.indexOf(key)).at(-1);
	const nearest = before ?? found[0];
	if (nearest === undefined) return [];
	const isMet = nearest === before || task.drawn.asked.includes(nearest);
	return [
		candidate({ kind: 'other-step', step: nearest }, isMet ? costs.otherStep : costs.laterStep)
	];
}

/** Whether the entry is the right value of another step, and of a kind that may be taken for it. */
function isResultOf(question: Question, step: string): boolean {
	const { task, entry } = question;
	const kind = kindOf(question);
	const value = task.right[step];
	const { dimension, isList, mistakes } = kindAt(task.method, step);
	// A bare number may stand in the field of another kind, if that is asked as well.
	const asked = task.drawn.asked.includes(step) && dimension.formula !== null;
	// A value off a chart, such as K, is typed for what it is to be multiplied by.
	const offChart = dimension.formula === '' && mistakes.coarse.length > 0;
	const alike = isList === kind.isList && (dimension === kind.dimension || asked || offChart);
	return value !== undefined && alike && kind.isWritten(entry, value, 'exact');
}

function candidate(cause: Cause, cost: number): Candidate {
	return { cause, cost, rarity: 0, support: 0 };
}
