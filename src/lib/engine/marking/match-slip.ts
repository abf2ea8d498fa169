import type { Entry, Kind } from '../quantity/kinds/kind.ts';
import { numbersIn } from '../quantity/kinds/numbers-in.ts';
import { roundedTo } from '../quantity/kinds/rounding.ts';
import type { Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import {
	type Candidate,
	isContradicted,
	isOff,
	kindOf,
	type Question,
	supportOf
} from './question.ts';
import { isSeldom, type SlipCause, stepOfSlip } from './verdict.ts';
import type { World } from './world.ts';

/* Whether an entry is what slips lead to, and what speaks against its being so. */

/** What speaks against a cause: fewer slips before more, exact before rounded, common before rare. */
export const costs = {
	slip: 1,
	rare: 0.04,
	told: -1,
	carried: 0.2,
	/** So many of the last places carried may be lost by it. */
	places: 2,
	coarseExact: 0.04,
	coarse: 0.8,
	second: 0.2,
	unused: 0.5,
	notWorkedOn: 0.3,
	/** It takes the place of a step that was entered right. */
	passedOver: 0.06,
	/** The same was not done in another step, or it was done in two. */
	notAlike: { right: 0.06, carried: 0.16 },
	twice: 0.06
};

/** The slips that may have been made, seldom ones last: none where the right value had been shown. */
export function idsIn({ task, key, opened }: Question, world: World): readonly string[] {
	const { method } = task;
	const ids = world.slipsAt(key).filter((id) => !opened.includes(stepOfSlip(method, id)));
	const seldom = ids.filter((id) => isSeldom(method, id));
	return [...ids.filter((id) => !seldom.includes(id)), ...seldom];
}

/** Slips as a cause of the entry, with what speaks against them. */
export function candidate(
	question: Question,
	cause: SlipCause,
	values: Values,
	match: number
): Candidate {
	const { method } = question.task;
	const rarity = costs.rare * cause.slips.filter((id) => isSeldom(method, id)).length;
	const prior = cause.slips.map((id) => costs.slip + (question.told.includes(id) ? costs.told : 0));
	const also = cause.also === undefined ? 0 : costs.slip;
	const cost = prior.reduce((sum, one) => sum + one, also + match + rarity);
	return { cause, cost, rarity, support: supportOf(question, values) };
}

/** What a match with these values costs; null when the entry is not what they lead to. */
export function costOf(
	question: Question,
	world: World,
	values: Values,
	carried: () => readonly Value[],
	unused?: string
): number | null {
	const value = values[question.key];
	if (value === undefined || !isOff(question, world, values)) return null;
	const cost = matchCost(question, value, carried);
	if (cost === null || isContradicted(question, world, values, unused)) return null;
	return cost + strays(question, world);
}

/** Whoever has a wrong value before works on with it. */
function strays({ worlds }: Question, world: World): number {
	return world === worlds[0] ? 0 : costs.notWorkedOn;
}

/** @param carried the values that come out when every step is rounded, or cut off, as it is carried */
function matchCost(
	question: Question,
	value: Value,
	carried: () => readonly Value[]
): number | null {
	const { entry } = question;
	const kind = kindOf(question);
	if (isCoarse(kind, entry)) {
		if (kind.isWritten({ ...entry, grain: 0 }, value, 'exact')) return costs.coarseExact;
		const isIt = kind.isWritten(entry, value) || isRounded(kind, entry, value);
		return isIt ? costs.coarse : null;
	}
	if (kind.isWritten(entry, value, 'exact')) return 0;
	if (isRounded(kind, entry, value)) return costs.coarseExact;
	const typed = kind.toValue(entry, value);
	const isNear = typed !== null && !kind.differs(typed, value, costs.places / kind.fine);
	if (isNear && carried().some((one) => kind.isWritten(entry, one, 'exact'))) return costs.carried;
	// The last of places finer than the shop carries is off by one where steps were rounded otherwise.
	const isFiner = entry.grain > 0 && entry.grain * kind.fine < 0.1;
	if (isFiner && typed !== null && !kind.differs(typed, value, 3 * entry.grain))
		return costs.carried;
	// Fractions may have been read off a rule.
	return entry.grain === 0 && kind.isWritten(entry, value) ? costs.coarse : null;
}

/** Whether an entry is a value rounded to the places typed, with three digits left: 27.9 for 27.92. */
export function isRounded(kind: Kind, entry: Entry, value: Value): boolean {
	const parts = 1 / (2 * entry.grain);
	const written = kind.map(value, (one) => roundedTo(one, parts));
	const isLong = kind.numbers(written).every((one) => Math.abs(one) * parts >= 100);
	return isLong && kind.isWritten(entry, written, 'very');
}

/** Whether an entry has so few digits that a slip's number may match it by chance. */
export function isCoarse(kind: Kind, entry: Entry): boolean {
	if (entry.grain * kind.fine < 5) return false;
	return entry.grain > Math.max(...numbersIn(kind, entry)) / 1000;
}
