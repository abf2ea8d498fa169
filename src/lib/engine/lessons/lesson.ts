import type { Draw, Family } from '../families/family.ts';
import type { Level } from '../families/level.ts';
import { randomFrom } from '../families/random.ts';
import type { Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { withSlipAsFar } from '../solver/as-far.ts';
import { evaluate } from '../solver/evaluate.ts';
import { brokenLimit } from '../solver/limits.ts';
import type { Method } from '../solver/method.ts';
import { textAt } from '../solver/show.ts';
import { differs } from '../solver/tolerance.ts';
import { orNull } from '../solver/trade-function.ts';
import { Goes } from './goes.ts';
import { type Hand, handsOf, moved, valueUnder } from './hand.ts';

/** One method of a family as a lesson shows it. */
export interface Way {
	readonly family: Family;
	readonly method: Method;
	/** The draw that the lesson begins with: middling sizes of the easiest level, the plainest of them. */
	readonly start: Draw;
	/** The draws it was learned from. */
	readonly draws: readonly Draw[];
	readonly hands: readonly Hand[];
	/** The steps that are worked, in order. */
	readonly steps: readonly string[];
	/** Those of them that tasks ask for. */
	readonly asked: readonly string[];
	/** Ids of the slips that tasks are about. */
	readonly chief: ReadonlySet<string>;
	/** Which sizes tasks let go together. */
	readonly goes: Goes;
}

const levels: readonly Level[] = [1, 2, 3];

/** Draws of each level that a lesson learns its sizes from. */
const drawsPerLevel = 250;

const known = new WeakMap<Family, readonly Way[]>();

/**
 * The methods of a family, each as a lesson shows it; the family's own first. All is read from
 * what the family draws: what is under the hand, how far it moves and what goes with what.
 */
export function waysOf(family: Family): readonly Way[] {
	const ways = known.get(family) ?? newWays(family);
	known.set(family, ways);
	return ways;
}

function newWays(family: Family): Way[] {
	const byMethod = new Map<Method, Drawn[]>([[family.method, []]]);
	for (const level of levels) {
		for (let i = 0; i < drawsPerLevel; i++) {
			const draw = family.draw(randomFrom(`lesson ${family.id} ${level} ${i}`), level);
			const method = draw.method ?? family.method;
			if (!workedBy(method, draw.given)) continue;
			byMethod.set(method, [...(byMethod.get(method) ?? []), { draw, level }]);
		}
	}
	return [...byMethod].flatMap(([method, own]) => wayOf(family, method, own));
}

interface Drawn {
	readonly draw: Draw;
	readonly level: Level;
}

function wayOf(family: Family, method: Method, drawn: readonly Drawn[]): Way[] {
	const draws = drawn.map(({ draw }) => draw);
	const easiest = drawn.filter(({ level }) => level === drawn[0]?.level).map(({ draw }) => draw);
	const keys = Object.keys(method.steps);
	const asked = keys.filter((key) => draws.some((draw) => draw.asked.includes(key)));
	const steps = keys.slice(0, Math.max(...asked.map((key) => keys.indexOf(key))) + 1);
	const chief = new Set(
		draws.flatMap(({ chief = {} }) => Object.values(chief).flatMap((ids) => ids ?? []))
	);
	const goes = new Goes(draws.map(({ given }) => given));
	const seen = (draw: Draw) => slipsSeen(method, draw.given, steps, chief);
	const beginning = (some: readonly Draw[]): Way[] => {
		const start = middling(method, some, seen);
		if (!start) return [];
		// What tasks give in one way only is no choice.
		const hands = handsOf(method, draws, start).filter(({ values }) => values.length > 1);
		return [{ family, method, start, draws, hands, steps, asked, chief, goes }];
	};
	const ways = beginning(easiest);
	// The easiest sizes may hold one of them fast.
	return ways.every(movesAll) ? ways : beginning(draws);
}

function movesAll(way: Way): boolean {
	return way.hands.every((hand) => reachOf(way, way.start.given, hand).length > 1);
}

/**
 * Of the draws near the middle of all sizes, the one that shows most slips; of those alike, the one
 * with the shortest numbers, 1/8 before 3/32, and the nearest to the middle.
 */
function middling(
	method: Method,
	draws: readonly Draw[],
	seen: (draw: Draw) => number
): Draw | undefined {
	const [first] = draws;
	if (!first) return undefined;
	const alike = draws.filter(({ given }) => shapeOf(given) === shapeOf(first.given));
	const keys = Object.keys(first.given);
	const middles = keys.map((key) => median(alike.flatMap(({ given }) => sizesIn(given[key]))));
	const off = ({ given }: Draw) =>
		keys.reduce((sum, key, i) => {
			const middle = middles[i] ?? 0;
			const sizes = sizesIn(given[key]);
			return sum + sizes.reduce((all, size) => all + Math.abs(size / (middle || 1) - 1), 0);
		}, 0);
	const near = [...alike].sort((one, other) => off(one) - off(other)).slice(0, drawsLooked);
	const most = Math.max(...near.map(seen));
	return near
		.filter((one) => seen(one) === most)
		.reduce((best, one) => (written(method, one) < written(method, best) ? one : best));
}

/** How many characters its numbers take. */
function written(method: Method, { given }: Draw): number {
	return Object.entries(given)
		.filter(([, value]) => sizesIn(value).length > 0)
		.reduce((sum, [key, value]) => sum + textAt(method, key, value, 'in').length, 0);
}

/** Draws near the middle that are looked at for their slips. */
const drawsLooked = 40;

/** How many of the slips lead to another number on these givens. */
function slipsSeen(
	method: Method,
	given: Values,
	steps: readonly string[],
	slips: ReadonlySet<string>
): number {
	const right = workedBy(method, given);
	if (!right) return 0;
	return [...slips].filter((id) => {
		if (!method.slips[id]) return false;
		const wrong = withSlipAsFar(method, right, id);
		return steps.some((key) => wrong[key] !== undefined && differs(method, key, right, wrong));
	}).length;
}

/** How many values a draw gives, so that only draws of parts alike are compared. */
function shapeOf(given: Values): string {
	return Object.values(given)
		.map((value) => (Array.isArray(value) ? value.length : 1))
		.join();
}

function sizesIn(value: Value | undefined): number[] {
	const all = Array.isArray(value) ? value : [value];
	return all.filter((one) => typeof one === 'number');
}

function median(sizes: readonly number[]): number {
	return [...sizes].sort((a, b) => a - b)[Math.floor(sizes.length / 2)] ?? 0;
}

/** The givens and steps of a method, or null where these numbers have no sound answer. */
export function workedBy(method: Method, given: Values): Values | null {
	return orNull(() => {
		const values = evaluate(method, given);
		return brokenLimit(method, values) === null ? values : null;
	});
}

/** The values that a hand can be moved to, in their order. Words take the other givens along. */
export function reachOf(way: Way, given: Values, hand: Hand): readonly Value[] {
	const now = valueUnder(given, hand);
	if (hand.by === 'words') return hand.values;
	return hand.values.filter(
		(value) => value === now || stands(way, moved(given, hand, value), hand)
	);
}

/** The first and last of them. */
export function endsOf(way: Way, given: Values, hand: Hand): Value[] {
	const reach = reachOf(way, given, hand);
	return [...new Set([...reach.slice(0, 1), ...reach.slice(-1)])];
}

/** The givens with a hand moved; where the others do not go with its value, those of a draw with it. */
export function move(way: Way, given: Values, hand: Hand, value: Value): Values {
	const alone = moved(given, hand, value);
	if (stands(way, alone, hand)) return alone;
	const drawn = way.draws.filter((draw) => valueUnder(draw.given, hand) === value);
	const kept = (draw: Draw) =>
		way.hands.filter((one) => valueUnder(draw.given, one) === valueUnder(given, one)).length;
	const [first] = drawn;
	if (!first) return given;
	return drawn.reduce((best, one) => (kept(one) > kept(best) ? one : best), first).given;
}

function stands(way: Way, given: Values, { key }: Hand): boolean {
	return way.goes.together(given, key) && workedBy(way.method, given) !== null;
}

/** The steps of a method that can be asked by themselves. */
export function markedKeys(method: Method): string[] {
	return Object.keys(method.steps).filter((key) => method.steps[key]?.tolerance);
}
