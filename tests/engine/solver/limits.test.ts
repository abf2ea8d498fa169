import { describe, expect, test } from 'vitest';
import { developedWidth } from '../../../src/lib/engine/methods/developed-width.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { length, listOf } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { brokenLimit, limitsOf } from '../../../src/lib/engine/solver/limits.ts';
import { measuredLimits } from '../../../src/lib/engine/solver/measured-limits.ts';
import { atLeast, atMost, method, step } from '../../../src/lib/engine/solver/write.ts';
import { compiledHere } from './compile-here.ts';

/** Edge distances as drilled, against 2 D and 4 D. */
const drilled = compiledHere(
	method({
		id: 'drilled',
		title: 'Drilled',
		given: { D: given(length, 'Diameter'), edges: given(listOf(length), 'Edge distances') },
		steps: { least: step('2 * D', 'Least'), most: step('4 * D', 'Most') },
		limits: [
			atLeast('edges', 'least', 'Too near the edge.', { what: 'Edge distance' }),
			atMost('edges', 'most', 'Too far from the edge.', { what: 'Edge distance' })
		]
	})
);

const work = (given: Parameters<typeof evaluate>[1]) => evaluate(drilled, given);

describe('a limit tells by how much it holds', () => {
	test('item by item, to either side', () => {
		const kept = limitsOf(drilled, work({ D: 1 / 8, edges: [0.29, 0.24, 0.52] }));
		const said = kept.map(({ place, value, bound, margin, verdict }) => [
			place,
			value,
			bound,
			Number(margin.toFixed(4)),
			verdict
		]);
		expect(said).toEqual([
			[0, 0.29, 0.25, 0.04, 'holds'],
			[1, 0.24, 0.25, -0.01, 'fails'],
			[2, 0.52, 0.25, 0.27, 'holds'],
			[0, 0.29, 0.5, 0.21, 'holds'],
			[1, 0.24, 0.5, 0.26, 'holds'],
			[2, 0.52, 0.5, -0.02, 'fails']
		]);
	});

	test('on the limit it holds', () => {
		const [kept] = limitsOf(drilled, work({ D: 1 / 8, edges: [0.25] }));
		expect(kept).toMatchObject({ margin: 0, verdict: 'holds', place: null });
	});

	test('the first that is broken says so', () => {
		expect(brokenLimit(drilled, work({ D: 1 / 8, edges: [0.3, 0.2] }))).toBe('Too near the edge.');
		expect(brokenLimit(drilled, work({ D: 1 / 8, edges: [0.3, 0.6] }))).toBe(
			'Too far from the edge.'
		);
		expect(brokenLimit(drilled, work({ D: 1 / 8, edges: [0.3] }))).toBeNull();
	});
});

describe('with an instrument, what it cannot tell is undecided', () => {
	const verdicts = (edges: number[], resolution: Record<string, number>) =>
		measuredLimits(drilled, { D: 1 / 8, edges }, resolution, work)
			.slice(0, edges.length)
			.map(({ verdict }) => verdict);

	test('a scale of 1/64 in', () => {
		const edges = [0.24, 0.2656, 0.266, 0.2343, 0.234];
		expect(verdicts(edges, { edges: 1 / 64 })).toEqual([
			'undecided',
			'undecided',
			'holds',
			'fails',
			'fails'
		]);
	});

	test('a caliper of 0.001 in, and none', () => {
		expect(verdicts([0.2505, 0.2515, 0.2495], { edges: 0.001 })).toEqual([
			'undecided',
			'holds',
			'undecided'
		]);
		expect(verdicts([0.2505, 0.2495], {})).toEqual(['holds', 'fails']);
	});

	test('a measured given counts as often as the limit hangs on it: 2 D', () => {
		expect(verdicts([0.2525], { edges: 0.001 })).toEqual(['holds']);
		expect(verdicts([0.2525], { edges: 0.001, D: 0.001 })).toEqual(['undecided']);
	});
});

test('limits of a method in use hold, leg by leg', () => {
	const values = evaluate(developedWidth, {
		R: 0.16,
		T: 0.04,
		legs: [1, 2, 0.1],
		angles: [90, 90]
	});
	const kept = limitsOf(developedWidth, values).filter(({ place }) => place !== null);
	expect(kept.map(({ margin, verdict }) => [Number(margin.toFixed(3)), verdict])).toEqual([
		[0.8, 'holds'],
		[1.6, 'holds'],
		[-0.1, 'fails']
	]);
});
