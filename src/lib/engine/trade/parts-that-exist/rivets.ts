import { source } from '../source.ts';
import { rivetDashes } from '../stock.ts';
import { type Fact, type Job, slack } from './fact.ts';

/** Smallest and largest stocked rivet that goes with a joint, inches. */
export function rivetsFor(thickest: number): { readonly least: number; readonly most: number } {
	const sizes = rivetDashes.map((dash) => dash / 32);
	const up = sizes.findIndex((size) => size >= 3 * thickest - slack);
	return {
		least: Math.max(2.5 * thickest, 3 / 32),
		most: sizes[Math.min(up < 0 ? sizes.length - 1 : up + 1, sizes.length - 1)] ?? 0
	};
}

function thickestIn({ layers, T }: Job): number | undefined {
	return layers && layers.length > 0 ? Math.max(...layers.map((one) => one.T)) : T;
}

const structure = /skin|spar|stringer|rib\b|ribs\b|frame|bulkhead|web|longeron|stiffener/i;

export const rivetFacts: readonly Fact[] = [
	{
		id: 'rivet.size',
		says: 'A rivet is at least 2.5T of the thickest sheet and 3/32 in, and at most one stocked size over the next size above 3T.',
		source: source(
			'airframe',
			'ch. 4, p. 4-32; the size above is accepted by AC 43.13-1B, par. 4-58g(2)(a)'
		),
		holds: (job) => {
			const [T, { D }] = [thickestIn(job), job];
			if (T === undefined || D === undefined) return null;
			const { least, most } = rivetsFor(T);
			return D >= least - slack && D <= most + slack;
		}
	},
	{
		id: 'rivet.1100',
		says: 'An 1100 rivet (A) is not used in structure.',
		source: source('navedtra14315', 'ch. 3'),
		holds: ({ letters, story, layers = [] }) =>
			letters === 'A'
				? !structure.test(story) && !layers.some(({ name }) => structure.test(name))
				: null
	},
	{
		id: 'rivet.small-2024',
		says: 'Rivets of 2017 (D) and 2024 (DD) are not used at 1/8 in and under.',
		source: source('navedtra14315', 'ch. 3: usually 3/16 in and larger'),
		holds: ({ letters, D }) =>
			D === undefined || (letters !== 'D' && letters !== 'DD') ? null : D > 1 / 8 + slack
	}
];
