import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drillForRivet } from '../../../src/lib/engine/methods/drill-for-rivet.ts';
import { removalDrill } from '../../../src/lib/engine/methods/removal-drill.ts';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { rivetNumber } from '../../../src/lib/engine/methods/rivet-number.ts';
import { rivetRow } from '../../../src/lib/engine/methods/rivet-row.ts';
import { setback } from '../../../src/lib/engine/methods/setback.ts';
import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { evaluate, withSlip } from '../../../src/lib/engine/solver/evaluate.ts';
import { join, type JoinedPart, part } from '../../../src/lib/engine/solver/join.ts';
import { limitsOf } from '../../../src/lib/engine/solver/limits.ts';
import { showStep } from '../../../src/lib/engine/solver/show-step.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';
import { panel, panelParts } from './panel.ts';

const sheets = [0.02, 0.025, 0.032, 0.04, 0.05, 0.063, 0.071, 0.08];

const givens = fc.record({
	layers: fc.array(fc.constantFrom(...sheets), { minLength: 2, maxLength: 4 }),
	head: fc.constantFrom('protruding', 'countersunk'),
	pieceLength: fc.integer({ min: 40, max: 400 }).map((eighths) => eighths / 8),
	greatestPitch: fc.integer({ min: 4, max: 16 }).map((eighths) => eighths / 8)
});

/** The parts worked one after another by hand, results fed on under the joined names. */
function byParts(given: Values, slip?: { part: number; id: string }): Values {
	let known: Values = given;
	panelParts.forEach((one, i) => {
		const own = inOwnNames(one, known);
		const right = evaluate(one.method, own);
		const worked = slip?.part === i ? withSlip(one.method, right, slip.id) : right;
		known = { ...known, ...inJoinedNames(one, worked) };
	});
	return known;
}

function inOwnNames({ method, feed, as }: JoinedPart, known: Values): Values {
	const keys = Object.keys(method.given);
	return Object.fromEntries(keys.map((key) => [key, known[feed[key] ?? as[key] ?? key] ?? '']));
}

function inJoinedNames({ method, as }: JoinedPart, worked: Values): Record<string, Value> {
	const keys = Object.keys(method.steps);
	return Object.fromEntries(keys.map((key) => [as[key] ?? key, worked[key] ?? '']));
}

/** The values, or the sentence why there are none. */
function orWhy(work: () => Values): Values | string {
	try {
		return { ...work() };
	} catch (error) {
		if (error instanceof TradeError) return error.message;
		throw error;
	}
}

describe('a joined method equals its parts, one after another', () => {
	test('for every value', () => {
		fc.assert(
			fc.property(givens, (given) => {
				expect(orWhy(() => evaluate(panel, given))).toEqual(orWhy(() => byParts(given)));
			}),
			{ numRuns: 300, seed: 7 }
		);
	});

	test('for every slip', () => {
		const all = panelParts.flatMap((one, at) =>
			Object.keys(one.method.slips).map((id) => ({
				part: at,
				id,
				step: one.method.slips[id]?.step
			}))
		);
		expect(Object.keys(panel.slips).length).toBe(all.length);
		fc.assert(
			fc.property(givens, fc.constantFrom(...all), (given, { part: at, id, step }) => {
				const joined = Object.entries(panel.slips).find(
					([, one]) => one.step === step && one.id === panelParts[at]?.method.slips[id]?.id
				);
				if (!joined || typeof orWhy(() => byParts(given)) === 'string') return;
				const right = evaluate(panel, given);
				expect(orWhy(() => withSlip(panel, right, joined[0]))).toEqual(
					orWhy(() => byParts(given, { part: at, id }))
				);
			}),
			{ numRuns: 1500, seed: 7 }
		);
	});

	test('for every limit', () => {
		fc.assert(
			fc.property(givens, (given) => {
				const worked = orWhy(() => byParts(given));
				if (typeof worked === 'string') return;
				const own = panelParts.flatMap((one) => {
					const values = {
						...inOwnNames(one, worked),
						...evaluate(one.method, inOwnNames(one, worked))
					};
					return limitsOf(one.method, values).map(({ margin, verdict }) => ({ margin, verdict }));
				});
				const joined = limitsOf(panel, evaluate(panel, given));
				expect(joined.map(({ margin, verdict }) => ({ margin, verdict }))).toEqual(own);
			}),
			{ numRuns: 200, seed: 7 }
		);
	});
});

test('the working is shown in the names of the whole', () => {
	const values = evaluate(panel, {
		layers: [0.032, 0.04],
		head: 'protruding',
		pieceLength: 12,
		greatestPitch: 1
	});
	const text = showStep(panel, 'shank', values).symbols.replace(/<[^>]*>/g, '');
	expect(text).toBe('1.5×diameter');
	expect(panel.steps.run?.formula).toBe('pieceLength - 2 * preferred');
	expect(panel.steps.shank?.skill).toBe('piece/shank');
});

test('a step that two parts work alike is worked once, with the slips of both', () => {
	const both = join({
		id: 'out',
		title: 'Out and in',
		parts: [part(rivetLength), part(removalDrill)]
	});
	expect(Object.keys(both.steps).filter((key) => both.steps[key]?.skill === 'piece/grip')).toEqual([
		'grip'
	]);
	const values = evaluate(both, { layers: [0.04, 0.05], D: 1 / 8 });
	expect(values.grip).toBeCloseTo(0.09, 12);
	expect(values.tightDepth).toBeCloseTo(0.06, 12);
});

describe('parts that do not fit together are refused, with what to do', () => {
	test.each([
		[
			[part(rivetLength), part(rivetRow)],
			'rivet-row takes length, and length is a result before it'
		],
		[[part(rivetLength, { E: 'D' })], 'rivet-length has neither a given nor a step called E'],
		[
			[part(drillForRivet, { D: 'diameter' })],
			'takes D from diameter, which no part before it gives'
		],
		[
			[part(setback), part(drillForRivet, { D: 'K' })],
			'takes D as one value of the kind length; K is one value of the kind number'
		],
		[
			[part(rivetLength), part(drillForRivet, { D: 'layers' })],
			'layers is a list of the kind length'
		],
		[
			[part(rivetRow), part(rivetNumber, {}, { number: 'count' })],
			'has a step count, and so has a part before it'
		]
	])('%#', (parts, says) => {
		expect(() => join({ id: 'wrong', title: 'Wrong', parts })).toThrow(says);
		expect(() => join({ id: 'wrong', title: 'Wrong', parts })).toThrow(/^wrong: /);
	});
});
