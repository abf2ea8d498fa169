import { compiledOf, type Values } from '../solver/compiled.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Checked } from '../solver/checked.ts';
import { GivenError } from '../solver/read-givens.ts';
import { mostFeatures } from './readings.ts';

/** What a go/no-go gauge tells of a feature: inside the limits, or which of them it breaks. */
export type Gauged = 'go' | 'under' | 'over';

export const gaugeWords: readonly Gauged[] = ['go', 'under', 'over'];

/** What a gauge told of every feature: one word each, with commas, semicolons or lines between. */
export function readGauged(check: Checked, key: string, text: string): Gauged[] {
	if (kindAt(check, key).isList) {
		throw new GivenError(`${key}: a gauge tells no size; measure this with a scale or a caliper.`);
	}
	const words = text.split(/[;,\n\t]+/).map((word) => word.trim().toLowerCase());
	const told = words.filter((word) => word !== '').slice(0, mostFeatures);
	return told.map((word) => {
		const known = gaugeWords.find((one) => one === word);
		if (known) return known;
		throw new GivenError(`${key}: say go, under or over for every ${check.each}.`);
	});
}

/** Values without the steps that are worked from a size that no gauge tells. */
export function withoutSizes(check: Checked, values: Values): Values {
	const steps = compiledOf(check).steps;
	const isOpen = (key: string) =>
		check.measured.includes(key) ||
		(steps[key]?.needs.some((name) => check.measured.includes(name)) ?? false);
	return Object.fromEntries(Object.entries(values).filter(([key]) => !isOpen(key)));
}
