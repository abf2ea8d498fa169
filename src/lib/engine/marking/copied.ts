import type { Exact } from '../quantity/exact.ts';
import type { Nearness } from '../quantity/kinds/kind.ts';
import type { Value } from '../quantity/value.ts';
import { kindAt } from '../solver/kind-at.ts';
import { type Candidate, kindOf, type Question, type Seen } from './question.ts';

/*
 * A right number in the wrong place: the result of another step, a given, or an entry typed twice.
 */

/** No slip that fits as well is hidden by these, but where two entries are exchanged. */
const costs = {
	exchanged: 0.9,
	/** It stands in the other field as well. */
	twice: 0.94,
	otherStep: 1.08,
	repeated: 1.15,
	given: 1.2,
	/** A step further on which is not asked. */
	laterStep: 1.4
};

/** The likeliest place that the entry was copied from; none where it stands nowhere. */
export function copied(question: Question): Candidate[] {
	// Words and orders of unlike things are never the same.
	if (kindOf(question).dimension.formula === null) return [];
	const found = otherStep(question) ?? repeated(question) ?? given(question);
	return found ? [found] : [];
}

/** The right result of another step: one exchanged with it, the nearest before it, the first after it. */
function otherStep(question: Question): Candidate | null {
	const { task, key, sheet } = question;
	const kind = kindOf(question);
	const right = task.right[key];
	const steps = Object.keys(task.method.steps);
	const near = steps.filter((step) => step !== key && isResultOf(question, step));
	const very = near.filter((step) => isValue(question, task.right[step] ?? [], 'very'));
	const found = very.length > 0 ? very : near;
	const isExchanged = (step: string) => {
		const there = sheet.find((seen) => seen.key === step && !seen.earlier);
		const isWrong = there && there.state !== 'right';
		return isWrong && right !== undefined && kind.isWritten(there.entry, right, 'exact');
	};
	const exchanged = found.find(isExchanged);
	if (exchanged !== undefined) {
		const cause = { kind: 'other-step', step: exchanged, swapped: true } as const;
		return { cause, cost: costs.exchanged, rarity: 0, support: 0 };
	}
	const before = found.filter((step) => steps.indexOf(step) < steps.indexOf(key)).at(-1);
	const nearest = before ?? found[0];
	if (nearest === undefined) return null;
	const isTwice = (seen: Seen) => seen.key === before && !seen.earlier && isSame(question, seen);
	const twice = sheet.find(isTwice);
	if (twice) return from(twice.key, costs.twice);
	const isMet = nearest === before || task.drawn.asked.includes(nearest);
	return from(nearest, isMet ? costs.otherStep : costs.laterStep);
}

/** Whether the entry is the right value of another step, and of a kind that may be taken for it. */
function isResultOf(question: Question, step: string): boolean {
	const { task } = question;
	const kind = kindOf(question);
	const value = task.right[step];
	const { dimension, isList, mistakes } = kindAt(task.method, step);
	// A bare number may stand in the field of another kind, if that is asked as well.
	const asked = task.drawn.asked.includes(step) && dimension.formula !== null;
	// A value off a chart, such as K, is typed for what it is to be multiplied by.
	const offChart = dimension.formula === '' && mistakes.coarse.length > 0;
	const alike = isList === kind.isList && (dimension === kind.dimension || asked || offChart);
	const once = kind.isList && !isList && dimension === kind.dimension;
	return value !== undefined && (alike || once) && isValue(question, value, 'exact');
}

/** Whether the entry is this value; a list, whether it holds a single one in every place. */
function isValue(question: Question, value: Value, nearness: Nearness): boolean {
	const { entry } = question;
	const kind = kindOf(question);
	if (!kind.isList || Array.isArray(value)) return kind.isWritten(entry, value, nearness);
	const ones = entry.value as readonly Exact[];
	const isOne = (one: Exact) =>
		kind.member.isWritten({ value: one, grain: entry.grain }, value, nearness);
	return ones.every(isOne);
}

/** What stands in another field as well, wrong there too. */
function repeated(question: Question): Candidate | null {
	const { task, key, sheet } = question;
	const steps = Object.keys(task.method.steps);
	const isBefore = ({ key: step }: Seen) => steps.indexOf(step) < steps.indexOf(key);
	const there = sheet.find(
		(seen) => seen.state === 'wrong' && !seen.earlier && isBefore(seen) && isSame(question, seen)
	);
	return there ? from(there.key, costs.repeated) : null;
}

function isSame(question: Question, { key, entry }: Seen): boolean {
	const kind = kindOf(question);
	const other = kindAt(question.task.method, key);
	const value = other.toValue(entry);
	return other.id === kind.id && value !== null && kind.isWritten(question.entry, value, 'very');
}

/** A number that stands in the task, or one of several that do. */
function given(question: Question): Candidate | null {
	const { task, entry } = question;
	const kind = kindOf(question);
	if (kind.isList) return null;
	const key = Object.keys(task.method.given).find((one) => {
		const { dimension, members } = kindAt(task.method, one);
		const value: Value | undefined = task.drawn.given[one];
		if (value === undefined || dimension !== kind.dimension) return false;
		return members(value).some((member) => kind.isWritten(entry, member, 'very'));
	});
	return key === undefined ? null : from(key, costs.given);
}

function from(step: string, cost: number): Candidate {
	return { cause: { kind: 'other-step', step }, cost, rarity: 0, support: 0 };
}
