import { compiledOf, type Values } from './compiled.ts';
import { type Changes, none, workFrom, workInto } from './evaluate.ts';
import { kindAt } from './kind-at.ts';
import type { Method } from './method.ts';
import { orNull, TradeError } from './trade-function.ts';

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

/**
 * `withSlip` as far as the numbers let it be worked: a step without an answer has no value, and neither
 * have those that are worked from it.
 */
export function withSlipAsFar(
	method: Method,
	worked: Values,
	slipId: string,
	put: Values = none
): Values {
	const { copy, order, steps, slipAt } = compiledOf(method);
	const values = copy(worked);
	const done = new Set<string>();
	try {
		workFrom(values, method, slipId, put, done);
		return values;
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
	}
	const left = order.slice(slipAt[slipId]).filter(({ key }) => put[key] === undefined);
	const lost = new Set<string>();
	for (const { key, run } of left.filter(({ key }) => !done.has(key))) {
		// The first of them is the one that threw.
		const hangs = lost.size === 0 || steps[key]?.needs.some((name) => lost.has(name));
		const value = hangs ? null : orNull(() => run(values));
		if (value !== null && kindAt(method, key).isSound(value)) values[key] = value;
		else lost.add(key);
	}
	return Object.fromEntries(Object.entries(values).filter(([key]) => !lost.has(key)));
}
