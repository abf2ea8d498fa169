import type { Entry } from '../quantity/kinds/kind.ts';
import type { Value } from '../quantity/value.ts';
import { chanceOf } from './chance.ts';
import { candidate, costs, idsIn, isCoarse } from './match-slip.ts';
import { type Candidate, isContradicted, isOff, kindOf, type Question } from './question.ts';
import { isSeldom, type SlipCause } from './verdict.ts';
import type { Pair, World } from './world.ts';

/** More of a chance than this, and two slips are not named: both met often, or any. */
const mostChance = { common: 0.06, seldom: 0.03 };

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
 * are met often, or else any. None of a number with hardly a digit, and none where so many lead near it that
 * one may well do so by chance.
 */
export function doubleSlips(question: Question): Candidate[] {
	// Whoever has a wrong value before works on with it: one slip more would be needed there.
	const [own] = question.worlds;
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
	const isIt = ({ entry, value }: Double) =>
		!isCoarse(kind, entry) && kind.isWritten(entry, value, 'exact');
	const near = doubles.filter(isIt).filter(shows);
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
