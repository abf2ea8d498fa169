import type { Family } from '../families/family.ts';
import type { Level } from '../families/level.ts';
import { randomFrom } from '../families/random.ts';
import { givensOf, numbersIn } from '../tasks/givens.ts';
import { seedCount } from '../tasks/task-number.ts';
import { drawTask, type Task } from '../tasks/task.ts';
import { SetError } from './set-error.ts';

/*
 * Which tasks a seed deals. Everything is ranked by a hash of the seed and of the one thing that
 * is ranked (rendezvous hashing), so that what a family contributes does not hang on which others
 * there are: one more family, or one fewer, moves only the tasks that make room or fill it. In the
 * hashed texts the seed, which may hold anything, stands last.
 */

/** What is dealt from: families, or their cards. */
export type Dealable = Pick<Family, 'code' | 'every'> & { readonly topic: string };

/** Where one task comes from. */
export interface Place<F extends Dealable = Family> {
	readonly family: F;
	readonly level: Level;
	/** How often the family came before. */
	readonly copy: number;
}

export interface Deal<F extends Dealable> {
	/** Any text but none. */
	readonly seed: string;
	/** Their order does not matter. */
	readonly families: readonly F[];
	/** How many tasks. */
	readonly count: number;
	/** A family takes them in turn; their order does not matter. */
	readonly levels: readonly Level[];
}

/**
 * Places for so many tasks: every topic as often as any other, give or take one, but for those of long
 * tasks, which wait some rounds; neighbours from different topics, and in a topic every family before
 * one comes again.
 *
 * @throws Error on an empty seed, or without a family or a level
 */
export function deal<F extends Dealable>({ seed, families, count, levels }: Deal<F>): Place<F>[] {
	if (seed === '') throw new Error('empty seed');
	const topics = [...new Set(families.map(({ topic }) => topic))];
	const order = rounds(
		topics,
		count,
		(topic, round) => `topic ${topic} ${round} ${seed}`,
		(topic, round) => round % everyOf(topic, families) === 0
	);
	const piles = new Map(
		topics.map((topic) => {
			const own = families.filter((family) => family.topic === topic);
			const places = order.filter(({ member }) => member === topic).length;
			return [topic, rounds(own, places, ({ code }, copy) => `family ${code} ${copy} ${seed}`)];
		})
	);
	return order.flatMap(({ member: topic }) => {
		const next = piles.get(topic)?.splice(0, 1) ?? [];
		return next.map(({ member: family, round: copy }) => {
			const inTurn = ranked(levels, (level) => `level ${family.code} ${level} ${seed}`);
			return { family, level: inTurn[copy % inTurn.length] ?? nothing(), copy };
		});
	});
}

/** How many draws may be unfit, or repeat numbers, before a family is given up. */
const tries = 100;

/**
 * What `made` makes of a task for each place; where that is null, or a family's numbers come
 * twice, another task is drawn.
 *
 * @param there tasks that there are besides, whose numbers may not come again
 * @throws SetError when a family gives no such task
 */
export function drawDealt<T>(
	seed: string,
	places: readonly Place[],
	made: (task: Task) => T | null,
	there: readonly Task[] = []
): T[] {
	const used = new Set(there.map((task) => numbersIn(givensOf(task))));
	return places.map(({ family, level, copy }) => {
		const place = `${family.code} ${level} ${copy}`;
		for (let n = 0; n < tries; n++) {
			const own = randomFrom(`task ${place} ${n} ${seed}`).int(0, seedCount - 1);
			const task = drawTask(family, level, own);
			// The text begins with the family's code, so that other families cannot be in the way.
			const numbers = numbersIn(givensOf(task));
			const result = used.has(numbers) ? null : made(task);
			if (result === null) continue;
			used.add(numbers);
			return result;
		}
		throw new SetError(
			`${family.code}${level} gives no more tasks with other numbers; ask for fewer of it.`
		);
	});
}

/** In which rounds a topic takes part: those of its families that come most often. */
function everyOf(topic: string, families: readonly Dealable[]): number {
	const own = families.filter((family) => family.topic === topic);
	return Math.min(...own.map(({ every = 1 }) => every));
}

interface Turn<T> {
	readonly member: T;
	readonly round: number;
}

/** The members in rounds, each ranked by itself; none comes twice running if there are others. */
function rounds<T>(
	members: readonly T[],
	count: number,
	keyOf: (member: T, round: number) => string,
	takesPart: (member: T, round: number) => boolean = () => true
): Turn<T>[] {
	if (members.length === 0) nothing();
	const turns: Turn<T>[] = [];
	for (let round = 0; turns.length < count; round++) {
		const taking = members.filter((member) => takesPart(member, round));
		const next = ranked(taking, (member) => keyOf(member, round));
		if (next[0] === turns.at(-1)?.member) next.splice(1, 0, ...next.splice(0, 1));
		turns.push(...next.map((member) => ({ member, round })));
	}
	return turns.slice(0, count);
}

/** The members by the hash of their keys, so that each has its rank whatever the others are. */
function ranked<T>(members: readonly T[], keyOf: (member: T) => string): T[] {
	const rows = members.map((member) => {
		const key = keyOf(member);
		return { member, key, rank: randomFrom(key).int(0, 2 ** 32 - 1) };
	});
	rows.sort((one, other) => one.rank - other.rank || (one.key < other.key ? -1 : 1));
	return rows.map(({ member }) => member);
}

function nothing(): never {
	throw new Error('nothing to deal');
}
