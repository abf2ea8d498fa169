import type { Exact } from '../quantity/exact.ts';
import { dimensions } from '../quantity/kinds/all.ts';
import { type Dimension, unitSpelt } from '../quantity/units.ts';
import { math, type Unit } from './math.ts';

/*
 * The dimensions of a formula: a sample is a value of the kind that a formula gives, and the
 * formula is worked once with samples to see that it can be.
 */

/** A number, a dimension, words, or a condition: what mathjs computes dimensions with. */
export type Sample = number | Unit | string | boolean;

/** Units a formula may name, as multiples of the base unit of their dimension. */
export const literalUnits: Readonly<Record<string, string>> = Object.fromEntries(
	dimensions.flatMap((dimension) =>
		dimension.literals.map((name) => [name, factorOf(unitSpelt(name, dimension)?.size, name)])
	)
);

/** Source of a number; a fraction as a division, so that nothing is rounded here. */
function factorOf(size: Exact | undefined, name: string): string {
	if (!size) throw new Error(`no dimension has the unit ${name}`);
	return size.d === 1n ? String(size.n) : `(${size.n}/${size.d})`;
}

/** What a value of a dimension is like; `more` are dimensions besides those that kinds/all.ts lists. */
export function sampleOf(name: string, ...more: readonly Dimension[]): Sample {
	const found = [...more, ...dimensions].find((one) => one.name === name);
	if (!found) throw new Error(`unknown dimension: ${name}; add its kind to kinds/all.ts`);
	const { formula } = found;
	if (formula === null) return 'words';
	return formula === '' ? 1 : math.unit(1, formula);
}

/**
 * Name of the dimension of a step's result; `where` names the step if it is none that a step may
 * end in. Of dimensions that formulas do not tell apart, `wanted` comes first.
 */
export function dimensionOf(sample: Sample, where: string, wanted?: Dimension): string {
	if (typeof sample === 'boolean') throw new Error(`${where}: a step may not end in a condition`);
	const all = wanted ? [wanted] : dimensions;
	const found = all.find(({ name }) => alike(sample, sampleOf(name, ...all)));
	if (found) return found.name;
	throw new Error(
		wanted
			? `${where}: ${wanted.noun} is wanted, and the formula gives ${nounOf(sample)}`
			: `${where}: a step may not end in ${nounOf(sample)}: look at what it multiplies and divides`
	);
}

/** What a sample is, in words: `a length`, or its units where no kind has them. */
export function nounOf(sample: Sample): string {
	if (typeof sample === 'boolean') return 'a condition';
	const found = dimensions.find(({ name }) => alike(sample, sampleOf(name)));
	if (found) return found.noun;
	return typeof sample === 'object'
		? sample.formatUnits().replace(/(\w) (?=\w)/g, '$1 × ')
		: 'words';
}

/** Whether two samples measure the same thing. */
export function alike(one: Sample, other: Sample): boolean {
	if (typeof one === 'object' && typeof other === 'object') return one.equalBase(other);
	return typeof one === typeof other;
}
