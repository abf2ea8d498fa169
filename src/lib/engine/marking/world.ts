import type { Value } from '../quantity/value.ts';
import { roundedTo } from '../quantity/kinds/rounding.ts';
import type { Values } from '../solver/compiled.ts';
import { evaluateAsFar, withSlipAsFar } from '../solver/as-far.ts';
import { type Changes } from '../solver/evaluate.ts';
import { kindAt } from '../solver/kind-at.ts';
import { carriedIn } from '../solver/tolerance.ts';
import type { Task } from '../tasks/task.ts';
import { stepOfSlip } from './verdict.ts';

/**
 * The method of a task worked with slips, on top of the student's own earlier values. What a slip
 * leads to is worked once, whatever number of entries is held against it. Where the trade has no
 * answer, the steps from there on have no value.
 */
export class World {
	readonly #task: Task;
	readonly #put: Values;
	readonly #singles = new Map<string, Values>();
	readonly #places: readonly string[];
	/** All values without a slip. */
	readonly base: Values;
	/** Slips in steps that are worked and not put in. */
	readonly slipIds: readonly string[];

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

	/** The values that one slip leads to. */
	single(id: string): Values {
		const known = this.#singles.get(id);
		if (known !== undefined) return known;
		const values = this.#with(this.base, id);
		this.#singles.set(id, values);
		return values;
	}

	/** The same with every step rounded as the shop carries it. */
	carried(id: string): Values {
		const { method } = this.#task;
		const slips = { [stepOfSlip(method, id)]: id };
		return this.#worked({ slips, carry: carriedIn(method) });
	}

	/** The values that two slips in different steps lead to. */
	pair(one: string, other: string): Values {
		const [first, second] = this.#place(one) < this.#place(other) ? [one, other] : [other, one];
		const values = this.single(first);
		const before = this.#places.slice(0, this.#place(second));
		return before.every((key) => values[key] !== undefined) ? this.#with(values, second) : values;
	}

	/** Every step before `last` rounded to the first, second or third of the parts its kind may be. */
	roundedOnTheWay(last: string, at: number): Values {
		const { method } = this.#task;
		const carry = (value: Value, key: string) => {
			const kind = kindAt(method, key);
			const parts = kind.mistakes.onTheWay[at];
			const stays = key === last || parts === undefined;
			return stays ? value : kind.map(value, (one) => roundedTo(one, parts));
		};
		return this.#worked({ carry });
	}

	#place(slipId: string): number {
		return this.#places.indexOf(stepOfSlip(this.#task.method, slipId));
	}

	#worked(changes: Changes): Values {
		const { method, drawn } = this.#task;
		return evaluateAsFar(method, drawn.given, { ...changes, values: this.#put });
	}

	#with(values: Values, slipId: string): Values {
		return withSlipAsFar(this.#task.method, values, slipId, this.#put);
	}
}
