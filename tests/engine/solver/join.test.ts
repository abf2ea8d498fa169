import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	panelRivets,
	panelRows,
	panelTwoStacks,
	partsOf
} from '../../../src/lib/engine/families/panel/parts/joined.ts';
import { drillForRivet } from '../../../src/lib/engine/methods/drill-for-rivet.ts';
import { removalDrill } from '../../../src/lib/engine/methods/removal-drill.ts';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { rivetNumber } from '../../../src/lib/engine/methods/rivet-number.ts';
import { rivetRow } from '../../../src/lib/engine/methods/rivet-row.ts';
import { setback } from '../../../src/lib/engine/methods/setback.ts';
import type { Value } from '../../../src/lib/engine/quantity/value.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { evaluate, withSlip } from '../../../src/lib/engine/solver/evaluate.ts';
import { join, type JoinedPart, part, stepsIn } from '../../../src/lib/engine/solver/join.ts';
import { limitsOf } from '../../../src/lib/engine/solver/limits.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { seenAt } from '../../../src/lib/engine/solver/outcome.ts';
import { showStep } from '../../../src/lib/engine/solver/show-step.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';

const sheets = [0.02, 0.025, 0.032, 0.04, 0.05, 0.063, 0.071, 0.08];
const stack = fc.array(fc.constantFrom(...sheets), { minLength: 2, maxLength: 4 });

/** Whatever any of the joined methods takes. */
const all = {
	layers: stack,
	layersB: stack,
	head: fc.constantFrom('protruding', 'countersunk'),
	rowLength: fc.integer({ min: 40, max: 400 }).map((eighths) => eighths / 8),
	greatestPitch: fc.integer({ min: 4, max: 16 }).map((eighths) => eighths / 8),
	rows: fc.integer({ min: 1, max: 6 }),
	count: fc.integer({ min: 2, max: 40 })
} satisfies Record<string, fc.Arbitrary<Value>>;

function givensOf({ given }: Method): fc.Arbitrary<Values> {
	return fc.record(
		Object.fromEntries(Object.entries(all).filter(([key]) => Object.hasOwn(given, key)))
	) as fc.Arbitrary<Values>;
}

/** A slip of a joined method: its step there, and its id. */
interface Made {
	readonly step: string;
	readonly id: string;
}

/** The slips that a part brings, by their keys in its method. */
function slipsIn(one: JoinedPart): [string, Made][] {
	return Object.entries(one.method.slips)
		.filter(([, { step }]) => stepsIn(one).includes(step))
		.map(([key, { id, step }]) => [key, { id, step: one.as[step] ?? step }]);
}

/** The parts worked one after another by hand, results fed on under the joined names. */
function byParts(parts: readonly JoinedPart[], given: Values, made?: Made): Values {
	let known: Values = given;
	for (const one of parts) {
		const right = evaluate(one.method, inOwnNames(one, known));
		// A step of two parts is worked once, and so is a slip in it.
		const slip = slipsIn(one).find(([, { id, step }]) => id === made?.id && step === made.step);
		known = {
			...known,
			...inJoinedNames(one, slip ? withSlip(one.method, right, slip[0]) : right)
		};
	}
	return known;
}

function inOwnNames({ method, feed, as }: JoinedPart, known: Values): Values {
	const keys = Object.keys(method.given);
	return Object.fromEntries(keys.map((key) => [key, known[feed[key] ?? as[key] ?? key] ?? '']));
}

function inJoinedNames(one: JoinedPart, worked: Values): Record<string, Value> {
	return Object.fromEntries(stepsIn(one).map((key) => [one.as[key] ?? key, worked[key] ?? '']));
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

const panels = [
	['panel-rivets', panelRivets, partsOf.rivets],
	['panel-rows', panelRows, partsOf.rows],
	['panel-two-stacks', panelTwoStacks, partsOf.twoStacks]
] as const;

describe.each(panels)('%s equals its parts, one after another', (_, panel, parts) => {
	const givens = givensOf(panel);

	test('for every value', () => {
		fc.assert(
			fc.property(givens, (given) => {
				expect(orWhy(() => evaluate(panel, given))).toEqual(orWhy(() => byParts(parts, given)));
			}),
			{ numRuns: 200, seed: 7 }
		);
	});

	test('for every slip', () => {
		const slips = parts.flatMap(slipsIn).map(([, made]) => made);
		const names = new Set(slips.map(({ id, step }) => `${step} ${id}`));
		expect(Object.values(panel.slips).map(({ id, step }) => `${step} ${id}`)).toEqual([...names]);
		fc.assert(
			fc.property(givens, fc.constantFrom(...Object.entries(panel.slips)), (given, [key, made]) => {
				if (typeof orWhy(() => byParts(parts, given)) === 'string') return;
				const right = evaluate(panel, given);
				expect(orWhy(() => withSlip(panel, right, key))).toEqual(
					orWhy(() => byParts(parts, given, made))
				);
			}),
			{ numRuns: 800, seed: 7 }
		);
	});

	test('for every limit', () => {
		fc.assert(
			fc.property(givens, (given) => {
				const worked = orWhy(() => byParts(parts, given));
				if (typeof worked === 'string') return;
				const own = parts.flatMap((one) => {
					const values = evaluate(one.method, inOwnNames(one, worked));
					return limitsOf(one.method, values).map(({ margin, verdict }) => ({ margin, verdict }));
				});
				const joined = limitsOf(panel, evaluate(panel, given));
				expect(joined.map(({ margin, verdict }) => ({ margin, verdict }))).toEqual(own);
			}),
			{ numRuns: 100, seed: 7 }
		);
	});

	test('what an answer does to the metal is told as by the part', () => {
		const keys = new Set(panel.outcomes.flatMap(({ at }) => at));
		fc.assert(
			fc.property(givens, fc.constantFrom(...keys), (given, key) => {
				const worked = orWhy(() => byParts(parts, given));
				if (typeof worked === 'string') return;
				const one = parts.findLast((each) => stepsIn(each).some((k) => (each.as[k] ?? k) === key));
				const inner = stepsIn(one as JoinedPart).find((k) => (one?.as[k] ?? k) === key) ?? '';
				const own = inOwnNames(one as JoinedPart, worked);
				const method = (one as JoinedPart).method;
				const entered = Number(worked[key]) * 1.25;
				const joined = seenAt(panel, given, evaluate(panel, given), key, entered);
				const alone = seenAt(method, own, evaluate(method, own), inner, entered);
				expect([joined?.case, joined?.says]).toEqual([alone?.case, alone?.says]);
				expect(alone).not.toBeNull();
			}),
			{ numRuns: 300, seed: 7 }
		);
	});
});

test('the working is shown in the names of the whole', () => {
	const values = evaluate(panelRows, {
		layers: [0.032, 0.04],
		head: 'protruding',
		rowLength: 12,
		greatestPitch: 1,
		rows: 3
	});
	const text = showStep(panelRows, 'shank', values).symbols.replace(/<[^>]*>/g, '');
	expect(text).toBe('1.5×diameter');
	expect(panelRows.steps.run?.formula).toBe('rowLength - 2 * preferred');
	expect(panelRows.steps.shank?.skill).toBe('piece/shank');
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
