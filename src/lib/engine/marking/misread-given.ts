import { decimalText, exactly } from '../quantity/exact.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import { swaps } from '../quantity/kinds/find-digits.ts';
import { isFraction } from '../quantity/kinds/rounding.ts';
import type { Value } from '../quantity/value.ts';
import { evaluateAsFar } from '../solver/as-far.ts';
import type { Values } from '../solver/compiled.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Task } from '../tasks/task.ts';
import { sheetThicknesses } from '../trade/stock.ts';
import { chanceOf } from './chance.ts';
import { isRounded } from './match-slip.ts';
import { type Candidate, isContradicted, isOff, kindOf, type Question } from './question.ts';
import type { MisreadHow } from './verdict.ts';
import { World } from './world.ts';

/*
 * A number of the task that was read or keyed in wrong, and worked on with rightly: the next size, two
 * digits exchanged, the point misplaced, another fraction.
 */

/** Dearer than any slip of the method: each of those is met more often. */
const cost = 1.5;
const mostChance = 0.12;

/** What would come of reading a given in another way. */
interface Misread {
	readonly given: string;
	readonly how: MisreadHow;
	readonly values: Values;
}

/**
 * Every misreading of one given that leads to the entry; none of a whole number, a word or a stocked size, and
 * none where so many lead near it that one may well do so by chance.
 *
 * @param most what other causes cost, where several entries are held against them together: chance hardly leads
 * to all of them
 */
export function misreadGivens(question: Question, most?: number): Candidate[] {
	const { task, key, entry } = question;
	const kind = kindOf(question);
	const isAlone = most === undefined;
	const isWords = kind.dimension.formula === null && kind.choices.length === 0;
	const isSized = isWords || kind.mistakes.coarse.length > 0;
	if (isAlone ? !isSized : most <= cost) return [];
	const plain = World.of(task);
	const all = misreadingsOf(task).filter(({ values }) => isOff(question, plain, values));
	const reached = all.flatMap(({ values }) => values[key] ?? []);
	if (isAlone && chanceOf(kind, entry, reached) > mostChance) return [];
	// Whoever misread a number worked on with it: what is wrong before this entry comes of it, too.
	const hits = all.filter(({ values }) => {
		const value = values[key];
		if (value === undefined) return false;
		const isHit = kind.isWritten(entry, value, 'exact') || isRounded(kind, entry, value);
		return isHit && !isContradicted(question, plain, values);
	});
	return hits.map(({ given, how }) => ({
		cause: { kind: 'misread', given, how },
		cost,
		rarity: 0,
		support: 0
	}));
}

const known = new WeakMap<Task, readonly Misread[]>();

/** What comes of every misreading of a task's givens, worked once. */
export function misreadingsOf(task: Task): readonly Misread[] {
	const all = known.get(task) ?? workedOut(task);
	known.set(task, all);
	return all;
}

function workedOut({ method, drawn }: Task): Misread[] {
	return Object.entries(drawn.given).flatMap(([given, value]) => {
		const kind = kindAt(method, given);
		return waysFor(kind.member, kind.numbers(value)).flatMap(({ at, how, read }) => {
			const changed = kind.map(value, (one, i) => (i === at ? read : one));
			const values = evaluateAsFar(method, { ...drawn.given, [given]: changed as Value }, {});
			return [{ given, how, values }];
		});
	});
}

interface Way {
	readonly at: number;
	readonly how: MisreadHow;
	readonly read: number;
}

function waysFor(kind: Kind, numbers: readonly number[]): Way[] {
	// Nobody counts a tenth of a row, or ten for one.
	const isCount = kind.mistakes.coarse.length === 0 && !kind.mistakes.stocked;
	if (isCount) return [];
	return numbers.flatMap((one, at) => {
		const misreadings = isFraction(kind, one) ? fractionsOf(kind, one) : digitsOf(one);
		return [...nextSizes(kind, one), ...misreadings].map((way) => ({ at, ...way }));
	});
}

/** The stocked sizes beside one: of a rivet by 32nds, of sheet by its gauges. */
function nextSizes(kind: Kind, one: number): Omit<Way, 'at'>[] {
	const sizes: readonly number[] = kind.mistakes.stocked
		? [one - 1 / 32, one, one + 1 / 32]
		: sheetThicknesses;
	const place = sizes.indexOf(one);
	if (place < 0) return [];
	const beside = [
		['larger', sizes[place + 1]],
		['smaller', sizes[place - 1]]
	] as const;
	return beside.flatMap(([how, read]) => (read === undefined ? [] : [{ how, read }]));
}

/** A decimal with its point misplaced, or two neighbouring places exchanged. */
function digitsOf(one: number): Omit<Way, 'at'>[] {
	const [whole = '', places = ''] = decimalText(exactly(one), 3, 4).split('.');
	const moved = [one * 10, one / 10];
	// 0.040 with its digits exchanged is 0.4 as well.
	const swapped = swaps(places)
		.map((exchanged) => Number(`${whole}.${exchanged}`))
		.filter((read) => moved.every((point) => Math.abs(point - read) > 1e-9));
	return [
		...moved.map((read) => ({ how: 'point' as const, read })),
		...swapped.map((read) => ({ how: 'swapped' as const, read }))
	];
}

/**
 * A fraction of an inch with its numerator read as the next odd one, its denominator as twice or half, run
 * into by the whole inches before it, or keyed in by its denominator, as 0.16 for 1/16; or the whole inches
 * with two digits exchanged. None of a stocked size, whose dash number has slips of its own.
 */
function fractionsOf(kind: Kind, one: number): Omit<Way, 'at'>[] {
	if (kind.mistakes.stocked) return [];
	const whole = Math.floor(one);
	const { n, d } = exactly(one - whole);
	const [over, under] = [Number(n), Number(d)];
	const read = [(over - 2) / under, (over + 2) / under, over / (2 * under), (2 * over) / under]
		.filter((part) => part > 0 && part < 1)
		.map((part) => ({ how: 'fraction' as const, read: whole + part }));
	const keyed = over === 1 && under >= 16;
	return [
		...read,
		...swaps(String(whole)).map((turned) => ({
			how: 'swapped' as const,
			read: Number(turned) + over / under
		})),
		// 1 1/16 is 11/16 where its 1 runs into the fraction.
		...(whole > 0 && whole < 10 && over > 0 && 10 * whole + over < under
			? [{ how: 'fraction' as const, read: (10 * whole + over) / under }]
			: []),
		...(keyed ? [{ how: 'keyed' as const, read: whole + under / 100 }] : [])
	];
}
