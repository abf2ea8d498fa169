import type { Value } from '../quantity/value.ts';
import type { Entry, Kind } from '../quantity/kinds/kind.ts';
import { roundedTo } from '../quantity/kinds/rounding.ts';
import type { Values } from '../solver/compiled.ts';
import type { Method } from '../solver/method.ts';
import { differs } from '../solver/tolerance.ts';
import { chanceOf } from './chance.ts';
import {
	type Candidate,
	isContradicted,
	isOff,
	kindOf,
	numbersIn,
	type Question,
	supportOf
} from './question.ts';
import { isSameAct } from './same-act.ts';
import { isSeldom, type SlipCause, stepOfSlip } from './verdict.ts';
import type { Pair, World } from './world.ts';

/** What speaks against a cause: fewer slips before more, exact before rounded, common before rare. */
const costs = {
	slip: 1,
	rare: 0.04,
	told: -1,
	carried: 0.2,
	/** So many of the last places carried may be lost by it. */
	places: 2,
	/** Charts of factors are cut off sooner. */
	chart: 0.001,
	coarseExact: 0.04,
	coarse: 0.8,
	second: 0.2,
	unused: 0.5,
	notWorkedOn: 0.3,
	/** The same was not done in another step, or it was done in two. */
	notAlike: 0.1,
	twice: 0.06
};

/** More of a chance than this, and two slips are not named: both met often, or any. */
const mostChance = { common: 0.06, seldom: 0.03 };

/** Every single slip that leads to the entry, and every act that does: a slip made in two steps alike. */
export function singleSlips(question: Question): Candidate[] {
	return [...slipsAlone(question, madeCost), ...actsInTwo(question)];
}

/**
 * Slips whose own step was entered right and then not worked on with. A stocked size or a fraction is
 * come to in so many ways that none is told of it.
 */
export function unusedSlips(question: Question): Candidate[] {
	const { mistakes } = kindOf(question);
	const isFraction = question.entry.grain === 0 && mistakes.coarse.length > 0;
	return mistakes.stocked || isFraction ? [] : slipsAlone(question, unusedCost);
}

type CostOf = (
	question: Question,
	world: World,
	id: string,
	carried: () => readonly Value[]
) => number | null;

function slipsAlone(question: Question, costBy: CostOf): Candidate[] {
	return question.worlds.flatMap((world) => {
		const hits: { readonly id: string; readonly found: Candidate }[] = [];
		for (const id of idsIn(question, world)) {
			const values = world.single(id);
			const carried = () => world.carried(id, question.key);
			const cost = costBy(question, world, id, carried);
			if (cost === null) continue;
			// Of slips that are one act in this task, the first is told.
			if (hits.some((hit) => isSameAct(question.task, hit.id, id))) continue;
			const match = cost + (isElsewhereRight(question, world, id) ? costs.notAlike : 0);
			hits.push({ id, found: candidate(question, { kind: 'slip', slips: [id] }, values, match) });
		}
		return hits.map(({ found }) => found);
	});
}

/** Whether another slip of the same act would have shown in an entry that is right. */
function isElsewhereRight({ task, sheet }: Question, world: World, id: string): boolean {
	const { method } = task;
	return partners(world, method, id).some((other) => {
		const values = world.single(other);
		return sheet.some(
			({ key, state }) => state === 'right' && differs(method, key, world.base, values)
		);
	});
}

/** The slips of other steps that are the same act. */
function partners(world: World, method: Method, id: string): readonly string[] {
	const { act, step } = method.slips[id] ?? {};
	if (act === undefined) return [];
	return world.slipIds.filter((other) => {
		const slip = method.slips[other];
		return slip?.act === act && slip.step !== step;
	});
}

/** Two slips of one act, made together, that lead to exactly the entry. */
function actsInTwo(question: Question): Candidate[] {
	const [world] = question.worlds;
	if (!world) return [];
	const { method } = question.task;
	const ids = idsIn(question, world).filter((id) => !world.isIdle(id));
	return ids.flatMap((id, i) => {
		const others = partners(world, method, id).filter((other) => ids.includes(other));
		const [other] = others;
		if (other === undefined || others.length > 1 || ids.indexOf(other) < i) return [];
		const values = world.together([id, other]);
		const cost = costOf(question, world, values, () => []);
		if (cost === null) return [];
		const cause: SlipCause = { kind: 'slip', slips: [id, other] };
		return [{ ...candidate(question, cause, values, cost), cost: costs.slip + costs.twice + cost }];
	});
}

/** Two slips that may have been made together, or one and a unit, and what they lead to. */
interface Double {
	readonly cause: SlipCause;
	readonly value: Value;
	/** By how much a wrong unit makes what is typed another number. */
	readonly factor: number;
	/** What would be written by them: the entry, or that in the right unit. */
	readonly entry: Entry;
}

/**
 * Two slips in different steps, and one with a wrong unit, that lead to exactly the entry: two that
 * are met often, or else any. None where so many lead near it that one may well do so by chance.
 */
export function doubleSlips(question: Question): Candidate[] {
	// Whoever has a wrong value before works on with it: one slip more would be needed there.
	const [own] = question.worlds;
	if (!own) return [];
	const all = doublesIn(question, own);
	const common = all.filter(({ cause }) => !cause.also && !hasSeldom(question, cause.slips));
	const found = likely(question, own, common, mostChance.common);
	return found.length > 0 ? found : likely(question, own, all, mostChance.seldom);
}

function likely(
	question: Question,
	world: World,
	doubles: readonly Double[],
	most: number
): Candidate[] {
	const { key, entry } = question;
	const kind = kindOf(question);
	const shows = ({ value }: Double) => isOff(question, world, { [key]: value });
	// First those that are written so, which are few.
	const near = doubles.filter((one) => kind.isWritten(one.entry, one.value, 'exact')).filter(shows);
	if (near.length === 0) return [];
	const reached = doubles
		.filter(shows)
		.map(({ value, factor }) => kind.map(value, (one) => one / factor));
	if (chanceOf(kind, entry, reached) > most) return [];
	return near.flatMap(({ cause }) => {
		const [one = '', other] = cause.slips;
		const values = other === undefined ? world.single(one) : world.pair(one, other);
		if (isContradicted(question, world, values)) return [];
		return [candidate(question, cause, values, costs.second)];
	});
}

function doublesIn(question: Question, world: World): Double[] {
	const { key, entry } = question;
	const kind = kindOf(question);
	const ids = idsIn(question, world);
	const pairs = pairsIn(question, world, ids).map(({ ids: [one, other], value }): Double => ({
		cause: { kind: 'slip', slips: [one, other] },
		value,
		factor: 1,
		entry
	}));
	const { units } = kind.mistakes;
	const misread = units
		.filter(({ foreign }) => foreign)
		.flatMap(({ id: also, factor }) => {
			const scaled = kind.scaled(entry, factor);
			return ids.flatMap((id): Double[] => {
				const value = world.single(id)[key];
				const cause: SlipCause = { kind: 'slip', slips: [id], also };
				return value === undefined
					? []
					: [{ cause, value, factor: factor.valueOf(), entry: scaled }];
			});
		});
	return [...pairs, ...misread];
}

/** The slips that may have been made, seldom ones last: none where the right value had been shown. */
function idsIn({ task, key, opened }: Question, world: World): readonly string[] {
	const { method } = task;
	const ids = world.slipsAt(key).filter((id) => !opened.includes(stepOfSlip(method, id)));
	const seldom = ids.filter((id) => isSeldom(method, id));
	return [...ids.filter((id) => !seldom.includes(id)), ...seldom];
}

/** Pairs of the slips that may have been made. None with one that another entry speaks against. */
function pairsIn(question: Question, world: World, ids: readonly string[]): readonly Pair[] {
	const open = ids.filter((id) => !isContradicted(question, world, world.single(id)));
	const places = new Map(open.map((id, i) => [id, i]));
	const rank = ({ ids: [one, other] }: Pair) =>
		(places.get(one) ?? NaN) * places.size + (places.get(other) ?? NaN);
	return world
		.pairsAt(question.key)
		.filter((pair) => rank(pair) >= 0)
		.sort((one, other) => rank(one) - rank(other));
}

function hasSeldom({ task }: Question, ids: readonly string[]): boolean {
	return ids.some((id) => isSeldom(task.method, id));
}

function candidate(question: Question, cause: SlipCause, values: Values, match: number): Candidate {
	const { method } = question.task;
	const rarity = costs.rare * cause.slips.filter((id) => isSeldom(method, id)).length;
	const prior = cause.slips.map((id) => costs.slip + (question.told.includes(id) ? costs.told : 0));
	const also = cause.also === undefined ? 0 : costs.slip;
	const cost = prior.reduce((sum, one) => sum + one, also + match + rarity);
	const [id = '', other] = cause.slips;
	const act = other === undefined && !cause.also ? method.slips[id]?.act : undefined;
	return { cause, cost, rarity, support: supportOf(question, values), act };
}

/** What a match with these values costs; null when the entry is not what they lead to. */
function costOf(
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

function madeCost(
	question: Question,
	world: World,
	id: string,
	carried: () => readonly Value[]
): number | null {
	return costOf(question, world, world.single(id), carried);
}

/** The same where the slip's own step was entered right, and then not worked on with. */
function unusedCost(
	question: Question,
	world: World,
	id: string,
	carried: () => readonly Value[]
): number | null {
	const step = stepOfSlip(question.task.method, id);
	const isRight = question.sheet.some(({ key, state }) => key === step && state === 'right');
	if (!isRight || step === question.key) return null;
	const cost = costOf(question, world, world.single(id), carried, step);
	return cost === null ? null : cost + costs.unused;
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
	const typed = kind.toValue(entry, value);
	const lost = kind.dimension.formula === '' ? costs.chart : costs.places / kind.fine;
	const isNear = typed !== null && !kind.differs(typed, value, lost);
	if (isNear && carried().some((one) => kind.isWritten(entry, one, 'exact'))) return costs.carried;
	// Fractions may have been read off a rule.
	return entry.grain === 0 && kind.isWritten(entry, value) ? costs.coarse : null;
}

/** Whether an entry is a value rounded to the places typed, with three digits left: 27.9 for 27.92. */
function isRounded(kind: Kind, entry: Entry, value: Value): boolean {
	const parts = 1 / (2 * entry.grain);
	const written = kind.map(value, (one) => roundedTo(one, parts));
	const isLong = kind.numbers(written).every((one) => Math.abs(one) * parts >= 100);
	return isLong && kind.isWritten(entry, written, 'very');
}

/** Whether an entry has so few digits that a slip's number may match it by chance. */
function isCoarse(kind: Kind, entry: Entry): boolean {
	if (entry.grain * kind.fine < 5) return false;
	return entry.grain > Math.max(...numbersIn(kind, entry)) / 1000;
}
