import { baseUnit, type Kind, type Value } from '../../lib/engine/quantity/kind.ts';
import { compiledOf, type Values } from '../../lib/engine/solver/compiled.ts';
import type { Method } from '../../lib/engine/solver/method.ts';
import { textAt } from '../../lib/engine/solver/show.ts';

/** A value for scripts: numbers with their unit, words as they are, lists as lists. */
export type Plain = string | { number: number; unit: string } | readonly Plain[];

export function plain(value: Value, kind: Kind): Plain {
	if (typeof value === 'string') return value;
	if (typeof value === 'object') return value.map((one) => plain(one, kind));
	// Twelve digits drop what floating point adds and keep what the method computed.
	return { number: Number(value.toPrecision(12)), unit: baseUnit[kind] };
}

export interface StepAnswer {
	readonly key: string;
	readonly label: string;
	readonly value: Plain;
	readonly text: string;
}

export function stepAnswers(method: Method, values: Values): StepAnswer[] {
	const { steps } = compiledOf(method);
	return Object.entries(method.steps).map(([key, step]) => {
		const value = values[key] ?? '';
		return {
			key,
			label: step.label,
			value: plain(value, steps[key]?.kind ?? 'number'),
			text: textAt(method, key, value)
		};
	});
}

/** The steps for people: label, formula, result. */
export function stepRows(method: Method, answers: readonly StepAnswer[]): string[][] {
	return answers.map(({ key, label, text }) => [
		`${label}`,
		`${key} = ${method.steps[key]?.formula ?? ''}`,
		`= ${text}`
	]);
}

export function plainGivens(method: Method, given: Values): Record<string, Plain> {
	return Object.fromEntries(
		Object.entries(given).map(([key, value]) => [
			key,
			plain(value, method.given[key]?.kind ?? 'text')
		])
	);
}
