import { describe, expect, test } from 'vitest';
import { sightLine } from '../../../src/lib/engine/methods/sight-line.ts';
import { evaluate, withSlip } from '../../../src/lib/engine/solver/evaluate.ts';
import { count, length } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { inverseOf } from '../../../src/lib/engine/solver/inverse.ts';
import { showStep } from '../../../src/lib/engine/solver/show-step.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { method, slip, step } from '../../../src/lib/engine/solver/write.ts';
import { finerThanRule, thousandths } from '../../../src/lib/engine/trade/tolerances.ts';
import { compiledHere } from './compile-here.ts';

const leg = inverseOf(sightLine, 'leg');
const bend = { R: 0.16, T: 0.04, angle: 90, tangentLine: 0.8 };

describe('a given asked for from a step', () => {
	test('is what leads to the step', () => {
		expect(Object.keys(leg.given)).toEqual(['R', 'T', 'angle', 'tangentLine']);
		expect(Object.keys(leg.steps)).toEqual(['K', 'setback', 'leg']);
		const values = evaluate(leg, bend);
		expect(values.leg).toBeCloseTo(1, 9);
		const back = evaluate(sightLine, { R: 0.16, T: 0.04, angle: 90, leg: Number(values.leg) });
		expect(back.tangentLine).toBeCloseTo(0.8, 9);
	});

	test('a slip leads to what somebody who makes it would find', () => {
		const right = evaluate(leg, bend);
		// Setback not added back: the flat taken for the leg; added the wrong way; T left out.
		expect(withSlip(leg, right, 'moldLines').leg).toBeCloseTo(0.8, 9);
		expect(withSlip(leg, right, 'added').leg).toBeCloseTo(0.6, 9);
		expect(withSlip(leg, right, 'noT').leg).toBeCloseTo(0.96, 9);
		expect(leg.slips.noT?.step).toBe('setback');
		expect(leg.slips.added?.step).toBe('leg');
	});

	test('a slip is told this way round, and one without a sentence is not made', () => {
		expect(leg.slips.moldLines?.says).toMatch(/^No setback added/);
		expect(leg.slips.added?.says).toMatch(/^Setback taken off/);
		expect(leg.slips.inside?.says).toMatch(/^T added to the flat/);
		expect(leg.slips.noT?.says).toBe(sightLine.slips.noT?.says);
		const { leg: written } = sightLine.inverses;
		if (!written || 'by' in written) throw new Error('no root');
		const one = { ...written, slips: { added: slip('tangentLine - setback', 'Taken off.') } };
		const other = inverseOf({ ...sightLine, inverses: { leg: one } }, 'leg');
		const made = Object.values(other.slips).filter(({ step }) => step === 'leg');
		expect(made.map(({ says }) => says)).toEqual(['Taken off.']);
	});

	test('is shown as it is worked this way round, and so are its slips', () => {
		const right = evaluate(leg, bend);
		const line = (values: Values, slip?: string) => {
			const { symbols, numbers, results } = showStep(leg, 'leg', values, 'in', slip);
			return [symbols, ...numbers, ...results].map((one) =>
				one.replace(/<[^>]*>/g, '').replace(/\s/g, ' ')
			);
		};
		expect(line(right)).toEqual(['tangent line+SB', '0.800+0.200', '1 in']);
		expect(line(withSlip(leg, right, 'added'), 'added').slice(0, 2)).toEqual([
			'tangent line−SB',
			'0.800−0.200'
		]);
	});

	test('is turned round before what it tells has come', () => {
		const untold = Object.entries(sightLine.slips).map(([id, { step, from, rare }]) => [
			id,
			{
				...{ id, step, from, rare },
				get formula(): string {
					throw new Error('read too early');
				},
				get says(): string {
					throw new Error('read too early');
				}
			}
		]);
		const early = inverseOf({ ...sightLine, slips: Object.fromEntries(untold) }, 'leg');
		expect(Object.keys(early.slips)).toEqual(Object.keys(leg.slips));
	});

	test('what is shown comes to what is found', () => {
		const { leg: written } = sightLine.inverses;
		if (!written || 'by' in written) throw new Error('no root');
		const slips = Object.entries(written.slips).map(([id, one]) => [
			id,
			slip(one.formula, one.says)
		]);
		const shown = compiledHere(
			method({
				id: 'leg-as-shown',
				title: 'Leg as shown',
				given: { ...leg.given, setback: given(length, 'Setback') },
				steps: { leg: step(written.formula, 'Leg', { slips: Object.fromEntries(slips) }) }
			})
		);
		const known = { R: 5 / 32, T: 0.063, angle: 60, tangentLine: 1.37 };
		const right = evaluate(leg, known);
		const { setback } = right;
		const asShown = evaluate(shown, { ...known, setback: Number(setback) } as never);
		expect(asShown.leg).toBeCloseTo(Number(right.leg), 9);
		expect(Object.keys(written.slips)).toHaveLength(4);
		for (const id of Object.keys(written.slips)) {
			expect(withSlip(shown, asShown, id).leg, id).toBeCloseTo(
				Number(withSlip(leg, right, id).leg),
				9
			);
		}
	});

	test('a formula on what hangs on the wanted given fails the build', () => {
		const { leg: written } = sightLine.inverses;
		if (!written || 'by' in written) throw new Error('no root');
		const wrong = (formula: string) => () =>
			compiledHere({
				...sightLine,
				id: 'wrong-way-round',
				inverses: { leg: { ...written, formula } }
			});
		expect(wrong('leg')).toThrow('wrong-way-round, inverse leg');
		expect(wrong('sightLine - R + setback')).toThrow('wrong-way-round, inverse leg');
		expect(wrong('tangentLine * setback')).toThrow('another kind of value than leg');
	});

	test('is one method, asked for as often as one likes', () => {
		expect(inverseOf(sightLine, 'leg')).toBe(leg);
		expect(() => inverseOf(sightLine, 'R')).toThrow('sight-line does not say how to find R');
	});

	test('says so when nothing leads there', () => {
		expect(() => evaluate(leg, { ...bend, tangentLine: 1e6 })).toThrow(
			'These numbers give no answer for “leg, to the mold line”: check them.'
		);
	});
});

test('a closed form is another method', () => {
	const pitchFromCount = compiledHere(
		method({
			id: 'pitch-from-count',
			title: 'Pitch from a count',
			given: { run: given(length, 'Run'), count: given(count, 'Rivets') },
			steps: {
				pitch: step('run / (count - 1)', 'Pitch', {
					tolerance: thousandths,
					slips: { byRivets: slip('run / count', 'Divided by the rivets.') }
				})
			}
		})
	);
	const row = compiledHere(
		method({
			id: 'row',
			title: 'Row',
			given: { run: given(length, 'Run'), pitch: given(length, 'Pitch') },
			steps: { count: step('upTo(run / pitch, 1) + 1', 'Rivets') },
			inverses: { pitch: { by: pitchFromCount } }
		})
	);
	expect(inverseOf(row, 'pitch')).toBe(pitchFromCount);
	expect(evaluate(inverseOf(row, 'pitch'), { run: 11, count: 12 }).pitch).toBe(1);
});

test('a root between bounds, where no closed form is written', () => {
	const cube = compiledHere(
		method({
			id: 'cube',
			title: 'Cube',
			given: { side: given(length, 'Side') },
			steps: { volume: step('side^3 / (1 in)^2', 'Volume for an inch of height') },
			inverses: {
				side: {
					from: 'volume',
					between: [0, 100],
					formula: '(1 in) * (volume / (1 in))^(1 / 3)',
					label: 'Side',
					rule: null,
					tolerance: finerThanRule,
					slips: {}
				}
			}
		})
	);
	expect(evaluate(inverseOf(cube, 'side'), { volume: 27 }).side).toBeCloseTo(3, 9);
});
