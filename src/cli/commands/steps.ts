import type { Plain } from '../../lib/engine/quantity/kinds/kind.ts';
import type { Values } from '../../lib/engine/solver/compiled.ts';
import { kindAt } from '../../lib/engine/solver/kind-at.ts';
import type { Method } from '../../lib/engine/solver/method.ts';
import { textAt } from '../../lib/engine/solver/show.ts';
import { symbolOf, symbolsIn } from '../../lib/engine/solver/show-step.ts';
import { formulaText } from './formula-text.ts';

export interface StepAnswer {
	readonly key: string;
	readonly label: string;
	readonly value: Plain;
	readonly text: string;
}

export function stepAnswers(method: Method, values: Values): StepAnswer[] {
	return Object.entries(method.steps).map(([key, step]) => {
		const value = values[key] ?? '';
		return {
			key,
			label: step.label,
			value: kindAt(method, key).plain(value),
			text: textAt(method, key, value)
		};
	});
}

/** The steps for people: label, formula in words, result. */
export function stepRows(method: Method, answers: readonly StepAnswer[]): string[][] {
	return answers.map(({ key, label, text }) => [
		`${label}`,
		`${symbolOf(method, key)} = ${formulaText(symbolsIn(method, key))}`,
		`= ${text}`
	]);
}

export function plainGivens(method: Method, given: Values): Record<string, Plain> {
	return Object.fromEntries(
		Object.entries(given).map(([key, value]) => [key, kindAt(method, key).plain(value)])
	);
}
