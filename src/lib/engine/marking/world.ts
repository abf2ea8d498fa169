import type { Value } from '../quantity/value.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import { cutTo, roundedTo } from '../quantity/kinds/rounding.ts';
import { evaluateAsFar, withSlipAsFar } from '../solver/as-far.ts';
import { compiledOf, type Values } from '../solver/compiled.ts';
import { type Changes } from '../solver/evaluate.ts';
import { kindAt } from '../solver/kind-at.ts';
import { carriedIn } from '../solver/tolerance.ts';
import type { Task } from '../tasks/task.ts';
import { stepOfSlip } from './verdict.ts';

/** Two slips in different steps, the earlier one first, and what they lead to at a step. */
export interface Pair {
	readonly ids: readonly [string, string];
	readonly value: Value;
}

/** Charts of factors, as that of K, print so many. */
const printedFigures = 4;

const plain = new WeakMap<Task, World>();

/**
 * The method of a task worked with slips, on top of the student's own earlier values. What a slip
 * leads to is worked once, whatever number of entries is held against it. Where the trade has no
 * answer, the steps from there on have no value.
 */
export class World {
	readonly #task: Task;
	readonly #put: Values;
	readonly #singles = new Map<string, Values>();
	readonly #pairs = new Map<string, readonly Pair[]>();
	readonly #leading = new Map<string, ReadonlySet<string>>();
	readonly #rest = new Map<string, Values>();
	readonly #places: readonly string[];
	/** All values without a slip. */
	readonly base: Values;
	/** Slips in steps that are worked and not put in. */
	readonly slipIds: readonly string[];

	/** The world of a task as it stands, worked once for all of its checks. */
	static of(task: Task): World {
		const known = plain.get(task);
		if (known) return known;
		const world = new World(task);
		plain.set(task, world);
		return world;
	}

	/** @param put the student's own values, by step */
	constructor(task: Task, put: Values = {}) {
		this.#task = task;
		this.#put = put;
		this.#places = Object.keys(task.method.steps);
		this.base = this.#worked({});
		this.slipIds = Object.entries(task.method.slips)
			.filter(([, { step }]) => put[step] === undefined)
			.map(([id]) => id);
	}

	/** The slips that can change the value of a step. */
	slipsAt(key: string): readonly string[] {
		const leading = this.#leadingTo(key);
		return this.slipIds.filter((id) => leading.has(stepOfSlip(this.#task.method, id)));
	}

	/** Whether a slip changes nothing with these numbers, so that none was made. */
	isIdle(id: string): boolean {
		const { method } = this.#task;
		const step = stepOfSlip(method, id);
		const [made, right] = [this.single(id)[step], this.base[step]];
		if (made === undefined || right === undefined) return made === right;
		return !kindAt(method, step).differs(made, right, 1e-12);
	}

	/** The values that one slip leads to. */
	single(id: string): Values {
		const known = this.#singles.get(id);
		if (known !== undefined) return known;
		const values = this.#with(this.base, id);
		this.#singles.set(id, values);
		return values;
	}

	/**
	 * What it leads to at `last` where the steps were rounded as the shop carries them, cut off there, or
	 * rounded to a place more.
	 */
	carried(id: string, last: string): readonly Value[] {
		const { method } = this.#task;
		const slips = { [stepOfSlip(method, id)]: id };
		const round = carriedIn(method);
		const rounding =
			(to: (one: number, kind: Kind) => number) =>
			(value: Value, key: string): Value => {
				const kind = kindAt(method, key);
				return kind.mistakes.stocked ? value : kind.map(value, (one) => to(one, kind));
			};
		const cut = rounding((one, { fine }) => cutTo(one, fine));
		// As givens and steps are written out, a place more.
		const finer = rounding((one, { fine }) => roundedTo(one, 10 * fine));
		// A factor off a chart may be cut off itself.
		const isRead = kindAt(method, last).dimension.formula === '';
		const isFactor = (key: string) => {
			const { dimension, mistakes } = kindAt(method, key);
			return dimension.formula === '' && mistakes.coarse.length > 0;
		};
		const printed = (value: Value, key: string) =>
			isFactor(key)
				? kindAt(method, key).map(value, (one) => cutToFigures(one, printedFigures))
				: value;
		const { given } = this.#task.drawn;
		const written = Object.fromEntries(
			Object.entries(given).map(([key, value]) => [key, finer(value, key)])
		);
		const ways = this.#places.some(isFactor) ? [round, cut, finer, printed] : [round, cut, finer];
		return ways.flatMap((way) => {
			const carry = (value: Value, key: string) => (key === last ? value : way(value, key));
			const value = this.#worked({ slips, carry }, way === finer ? written : given)[last];
			if (value === undefined) return [];
			return [
				value,
				round(value, last),
				...(isRead ? [cut, printed].map((as) => as(value, last)) : [])
			];
		});
	}

	/** The values that two slips in different steps lead to; `key` where only that step is wanted. */
	pair(one: string, other: string, key?: string): Values {
		const [first, second] = this.#place(one) < this.#place(other) ? [one, other] : [other, one];
		const values = this.single(first);
		const before = this.#places.slice(0, this.#place(second));
		if (before.some((step) => values[step] === undefined)) return values;
		return this.#with(values, second, key === undefined ? this.#put : this.#onlyFor(key));
	}

	/** What every two slips in different steps lead to at `key`: none with an earlier one that is idle. */
	pairsAt(key: string): readonly Pair[] {
		const known = this.#pairs.get(key);
		if (known) return known;
		const ids = this.slipsAt(key);
		const pairs = ids
			.filter((one) => !this.isIdle(one))
			.flatMap((one) => {
				const later = ids.filter((other) => this.#place(one) < this.#place(other));
				return later.flatMap((other): Pair[] => {
					const value = this.pair(one, other, key)[key];
					return value === undefined ? [] : [{ ids: [one, other], value }];
				});
			});
		this.#pairs.set(key, pairs);
		return pairs;
	}

	/** The values that slips in different steps lead to, all made at once. */
	together(ids: readonly string[]): Values {
		const slips = ids.map((id) => [stepOfSlip(this.#task.method, id), id] as const);
		return this.#worked({ slips: Object.fromEntries(slips) });
	}

	/**
	 * Every step before `last` rounded to each of the parts its kind may be, or cut off to thousandths
	 * or hundredths.
	 */
	roundedOnTheWay(last: string): Values[] {
		const ways: ((value: number, kind: Kind) => number)[] = [
			...[0, 1, 2].map((at) => (value: number, { mistakes }: Kind) => {
				const parts = mistakes.onTheWay[at];
				return parts === undefined ? value : roundedTo(value, parts);
			}),
			...[1, 10].map(
				(coarser) =>
					(value: number, { fine }: Kind) =>
						cutTo(value, fine / coarser)
			)
		];
		const { method } = this.#task;
		return ways.map((way) => {
			const carry = (value: Value, key: string) => {
				const kind = kindAt(method, key);
				return key === last ? value : kind.map(value, (one) => way(one, kind));
			};
			return this.#worked({ carry });
		});
	}

	#place(slipId: string): number {
		return this.#places.indexOf(stepOfSlip(this.#task.method, slipId));
	}

	#worked(changes: Changes, given = this.#task.drawn.given): Values {
		return evaluateAsFar(this.#task.method, given, { ...changes, values: this.#put });
	}

	#with(values: Values, slipId: string, put = this.#put): Values {
		return withSlipAsFar(this.#task.method, values, slipId, put);
	}

	/** The values put in, and those that `key` does not hang on, so that they are not worked anew. */
	#onlyFor(key: string): Values {
		const known = this.#rest.get(key);
		if (known) return known;
		const leading = this.#leadingTo(key);
		const rest = this.#places.flatMap((step) => {
			const value = this.base[step];
			return leading.has(step) || value === undefined ? [] : [[step, value] as const];
		});
		const put = { ...Object.fromEntries(rest), ...this.#put };
		this.#rest.set(key, put);
		return put;
	}

	/** The steps that `key` is worked from, by a slip too, and itself; nothing leads to what was put in. */
	#leadingTo(key: string): ReadonlySet<string> {
		const known = this.#leading.get(key);
		if (known) return known;
		const { steps, slips } = compiledOf(this.#task.method);
		const found = new Set<string>();
		const open = [key];
		for (let step = open.pop(); step !== undefined; step = open.pop()) {
			const work = steps[step];
			if (!work || found.has(step) || this.#put[step] !== undefined) continue;
			found.add(step);
			const made = this.slipIds.filter((id) => stepOfSlip(this.#task.method, id) === step);
			open.push(...work.needs, ...made.flatMap((id) => slips[id]?.needs ?? []));
		}
		this.#leading.set(key, found);
		return found;
	}
}

/** To so many figures, the rest cut off, as charts of factors print them. */
function cutToFigures(value: number, figures: number): number {
	if (value === 0) return 0;
	const whole = Math.floor(Math.log10(Math.abs(value))) + 1;
	return cutTo(value, 10 ** (figures - whole));
}
