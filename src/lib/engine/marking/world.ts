import type { Value } from '../quantity/value.ts';
import { roundedTo } from '../quantity/kinds/rounding.ts';
import type { Values } from '../solver/compiled.ts';
import { type Changes, evaluate, withSlip } from '../solver/evaluate.ts';
import { kindAt } from '../solver/kind-at.ts';
import { carriedIn } from '../solver/tolerance.ts';
import { TradeError } from '../solver/trade-function.ts';
import type { Task } from '../tasks/task.ts';

/**
 * The method of a task worked with slips, on top of the student's own earlier values. What a slip
 * leads to is worked once, whatever number of entries is held against it.
 */
export class World {
	readonly #task: Task;
	readonly #put: Values;
	readonly #singles = new Map<string, Values | null>();
	readonly #places: readonly string[];
	/** All values without a slip; null where the student's own lead nowhere. */
	readonly base: Values | null;
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

	/** The values that one slip leads to; null where the trade has no answer. */
	single(id: string): Values | null {
		const known = this.#singles.get(id);
		if (known !== undefined) return known;
		const values = this.#with(this.base, id);
		this.#singles.set(id, values);
		return values;
	}

	/** The same with every step rounded as the shop carries it. */
	carried(id: string): Values | null {
		const { method } = this.#task;
		const slips = { [method.slips[id]?.step ?? '']: id };
		return this.#worked({ slips, carry: carriedIn(method) });
	}

	/** The values that two slips in different steps lead to. */
	pair(one: string, other: string): Values | null {
		const [first, second] = this.#place(one) < this.#place(other) ? [one, other] : [other, one];
		return this.#with(this.single(first), second);
	}

	/** Every step before `last` rounded to the first, second or third of the parts its kind may be. */
	roundedOnTheWay(last: string, at: number): Values | null {
		const { method } = this.#task;
		const carry = (value: Value, key: string) => {
			const kind = kindAt(method, key);
			const parts = kind.mistakes.onTheWay[at];
			const stays = key === last || parts === undefined;
			return stays ? value : kind.map(value, (one) => roundedTo(one, parts));
		};
		return this.#worked({ carry });
	}

	/** The values with others put in besides. */
	withValues(values: Values): Values | null {
		return this.#worked({ values });
	}

	#place(slipId: string): number {
		return this.#places.indexOf(this.#task.method.slips[slipId]?.step ?? '');
	}

	#worked(changes: Changes): Values | null {
		const { method, drawn } = this.#task;
		const values = { ...this.#put, ...changes.values };
		return orNone(() => evaluate(method, drawn.given, { ...changes, values }));
	}

	#with(values: Values | null, slipId: string): Values | null {
		if (!values) return null;
		return orNone(() => withSlip(this.#task.method, values, slipId, this.#put));
	}
}

function orNone(work: () => Values): Values | null {
	try {
		return work();
	} catch (error) {
		if (error instanceof TradeError) return null;
		throw error;
	}
}
