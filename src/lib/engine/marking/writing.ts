import { digitsIn, roundingIn, unitSlipIn } from '../quantity/kinds/find-mistakes.ts';
import type { Value } from '../quantity/value.ts';
import { kindAt } from '../solver/kind-at.ts';
import { factorCause } from './factor.ts';
import { type Candidate, isContradicted, isOff, kindOf, type Question } from './question.ts';
import type { Cause } from './verdict.ts';

/*
 * Causes that are no slips of the method: the right number in another unit, rounded, with its
 * digits misplaced, for another step, or not worked out.
 */

const costs = { factor: 1, rounding: 1.1, unit: 1.1, otherStep: 1.1, exchanged: 0.9, digits: 1.3 };
const onTheWay = 1.4;

/** Every such cause that leads to the entry. */
export function writingFaults(question: Question): Candidate[] {
	const found = question.worlds.flatMap(({ base }) => {
		const value = base?.[question.key];
		return value === undefined ? [] : [...misread(question, value), ...rounded(question, value)];
	});
	const factor = factorCause(question.task, question.key, question.entry);
	if (factor) found.push({ cause: factor, cost: costs.factor, support: 0 });
	return [...found, ...roundedOnTheWay(question), ...otherSteps(question)];
}

function misread(question: Question, right: Value): Candidate[] {
	const kind = kindOf(question);
	const unit = unitSlipIn(kind, question.entry, right);
	const how = digitsIn(kind, question.entry, right);
	return [
		...(unit ? [candidate({ kind: 'unit', unit: unit.id }, costs.unit)] : []),
		...(how ? [candidate({ kind: 'digits', how }, costs.digits)] : [])
	];
}

function rounded(question: Question, right: Value): Candidate[] {
	const { task, key, entry } = question;
	// What must be the very value is not rounded, but another one.
	if (task.method.steps[key]?.tolerance?.amount === '0') return [];
	const rounding = roundingIn(kindOf(question), entry, right);
	return rounding ? [candidate({ kind: 'rounding', ...rounding }, costs.rounding)] : [];
}

function roundedOnTheWay(question: Question): Candidate[] {
	const { key, entry } = question;
	// So few sizes are made that rounded numbers come to many a wrong one.
	const { stocked, coarse } = kindOf(question).mistakes;
	if (stocked || coarse.length === 0) return [];
	const hit = question.worlds.some((world) =>
		[0, 1, 2].some((at) => {
			const values = world.roundedOnTheWay(key, at);
			const value = values?.[key];
			if (!values || value === undefined || !isOff(question, world, values)) return false;
			const isIt = kindOf(question).isWritten(entry, value, 'exact');
			return isIt && !isContradicted(question, world, values);
		})
	);
	return hit ? [candidate({ kind: 'rounding', how: 'way' }, onTheWay)] : [];
}

/** The result of another step; surer where the two fields were exchanged. */
function otherSteps(question: Question): Candidate[] {
	const { task, key, entry, sheet } = question;
	const kind = kindOf(question);
	// Words and orders of unlike things are never the same.
	if (kind.dimension.formula === null) return [];
	const right = task.right[key];
	return Object.keys(task.method.steps).flatMap((step) => {
		const value = task.right[step];
		const { dimension, isList } = kindAt(task.method, step);
		// A bare number may stand in the field of another kind, if that is asked as well.
		const asked = task.drawn.asked.includes(step) && dimension.formula !== null;
		const alike = isList === kind.isList && (dimension === kind.dimension || asked);
		if (step === key || value === undefined || !alike) return [];
		if (!kind.isWritten(entry, value, 'exact')) return [];
		const there = sheet.find((seen) => seen.key === step && !seen.earlier);
		const exchanged = there && right !== undefined && kind.isWritten(there.entry, right, 'exact');
		const cost = exchanged ? costs.exchanged : costs.otherStep;
		return [candidate({ kind: 'other-step', step }, cost)];
	});
}

function candidate(cause: Cause, cost: number): Candidate {
	return { cause, cost, support: 0 };
}
