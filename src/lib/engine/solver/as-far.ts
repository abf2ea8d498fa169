import { compiledOf, type Values } from './compiled.ts';
import { type Changes, none, workFrom, workInto } from './evaluate.ts';
import type { Method } from './method.ts';
import { TradeError } from './trade-function.ts';

/*
 * Methods worked with what a student put in, which may leave later steps without an answer.
 */

/**
 * `evaluate` as far as the numbers let it be worked: from the first step without an answer on, the
 * steps have no value.
 */
export function evaluateAsFar(method: Method, given: Values, changes: Changes): Values {
	const values = compiledOf(method).copy(given);
	try {
		workInto(values, method, changes);
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
	}
	return values;
}

/** `withSlip` as far as the numbers let it be worked, as in `evaluateAsFar`. */
export function withSlipAsFar(
	method: Method,
	worked: Values,
	slipId: string,
	put: Values = none
): Values {
	const { copy, order, slipAt } = compiledOf(method);
	const values = copy(worked);
	const done = new Set<string>();
	try {
		workFrom(values, method, slipId, put, done);
		return values;
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
		const after = order.slice(slipAt[slipId]).map(({ key }) => key);
		const lost = new Set(after.filter((key) => put[key] === undefined && !done.has(key)));
		return Object.fromEntries(Object.entries(values).filter(([key]) => !lost.has(key)));
	}
}
