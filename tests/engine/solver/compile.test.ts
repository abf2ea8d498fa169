import { describe, expect, test } from 'vitest';
import { compileMethod } from '../../../src/lib/engine/solver/compile.ts';
import { angle, length, listOf, word } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import {
	atLeast,
	type LimitText,
	method,
	otherwise,
	outcome,
	slip,
	type SlipText,
	step,
	when
} from '../../../src/lib/engine/solver/write.ts';
import type { Case, Origin } from '../../../src/lib/engine/solver/method.ts';
import { functions } from '../../../src/lib/engine/trade/functions.ts';

/** A method of one step, with the givens that formulas here may name. */
function oneStep(formula: string, slips: Record<string, SlipText> = {}, limits: LimitText[] = []) {
	return method({
		id: 'trial',
		title: 'Trial',
		given: {
			D: given(length, 'Diameter'),
			N: given(angle, 'Angle'),
			layers: given(listOf(length), 'Layers'),
			alloy: given(word, 'Alloy')
		},
		steps: { result: step(formula, 'Result', { slips }) },
		limits
	});
}

const origin: Origin = { unit: 'trial', key: '0', names: {} };

function compiled(formula: string): string {
	return compileMethod(oneStep(formula), functions).unit;
}

describe('a formula that cannot be right fails the build', () => {
	test.each([
		['D + N', 'a length [+] an angle makes no sense'],
		['D + 1', 'a length [+] a plain number makes no sense: a size wants its unit'],
		['D * D', 'a step may not end in in × in: look at'],
		['D / N', 'a step may not end in'],
		['upTo(D, 1 deg)', 'upTo takes values of one kind'],
		['setbackK(D)', 'setbackK takes a value of the kind angle'],
		['density(D)', 'density takes a value of the kind text'],
		['sum(D)', 'sum takes a list'],
		['upTo(D)', 'upTo takes 2 values'],
		['upTo(D, D, D)', 'upTo takes 2 values'],
		['E + D', 'E is neither a given, an earlier step nor a unit: there are D, N, layers, alloy'],
		['result + D', 'result is neither'],
		['sqrt(D)', 'no trade function is called sqrt'],
		['constructor(D)', 'no trade function is called constructor'],
		['config({number: "BigNumber"})', 'no trade function|has no place']
	])('%s', (formula, says) => {
		expect(() => compiled(formula)).toThrow(new RegExp(`trial.result: .*(${says})`));
	});

	test.each([
		'D = 1 in',
		'f(x) = x',
		'[1, 2]',
		'{a: D}',
		'1:900000000',
		'layers[1]',
		'D.value',
		'D > 1 in',
		'D ? D : D',
		'D > 1 in ? D : N',
		'D > N ? D : D',
		'alloy > "x" ? D : D',
		'right.D',
		'D; D',
		'D in mm',
		'D!',
		"D'"
	])('%s is no formula', (formula) => {
		expect(() => compiled(formula)).toThrow('trial.result: ');
	});

	test('a slip must give the same kind of value as its step', () => {
		const trial = (formula: string) => oneStep('2 * D', { wrong: slip(formula, 'Wrong.') });
		expect(() => compileMethod(trial('3 * D'), functions)).not.toThrow();
		expect(() => compileMethod(trial('N'), functions)).toThrow(
			'trial.result, slip wrong: a slip must give the same kind'
		);
		expect(() => compileMethod(trial('layers'), functions)).toThrow('same kind of value');
	});

	test('the last case of an outcome, and no other, has no condition', () => {
		const trial = (...cases: Case[]) => {
			const told = outcome(['result'], {}, Object.fromEntries(cases.entries()));
			return () =>
				compileMethod({ ...oneStep('D'), outcomes: [{ ...told, from: origin }] }, functions);
		};
		const [short, long] = [when('D < 1 in', 'Short.'), otherwise('Long.')];
		expect(trial(short, long)).not.toThrow();
		for (const wrong of [trial(short), trial(long, short), trial(long, long)]) {
			expect(wrong).toThrow('trial outcome 1: its last case, and no other');
		}
	});

	test('a limit compares values of one kind', () => {
		const trial = (bound: string) => oneStep('2 * D', {}, [atLeast('D', bound, 'No.')]);
		expect(() => compileMethod(trial('1 in'), functions)).not.toThrow();
		expect(() => compileMethod(trial('N'), functions)).toThrow(
			'trial limit 1: D and N are of unlike kinds'
		);
	});
});

describe('what a formula becomes', () => {
	test.each([
		['1.5 * D', '(1.5 * v.D)'],
		['D / 2 + D', '((v.D / 2) + v.D)'],
		['(D + D) * 2', '((v.D + v.D) * 2)'],
		['D / 2 D * 1 in', '((v.D / (2 * v.D)) * 1)'],
		['D - (1/16 in)', '(v.D - (1 / 16))'],
		['D + 2 mm', '(v.D + (2 * (5/127)))'],
		['-D + D', '((-v.D) + v.D)'],
		['sum(layers)', 'f.sum.run(v.layers)'],
		['D > 1 in ? D : 2 * D', '((v.D - 1 > 1e-9) ? v.D : (2 * v.D))'],
		[
			'alloy == "A" and not (D < 1 in) ? D : 0 * D',
			'(((v.alloy === "A") && !((1 - v.D > 1e-9))) ? v.D : (0 * v.D))'
		],
		['layers', 'v.layers'],
		['layers * 2', 'v.layers.map((_, i) => (v.layers[i] * 2))'],
		['upTo(layers, D)', 'v.layers.map((_, i) => f.upTo.run(v.layers[i], v.D))']
	])('%s', (formula, source) => {
		expect(compiled(formula)).toContain(`run: (v) => ${source}, needs:`);
	});

	test('lists and kinds are told', () => {
		expect(compiled('D > 1 in ? alloy : "x"')).toContain("dimension: 'text', list: false");
		expect(compiled('layers')).toContain("dimension: 'length', list: true");
		expect(compiled('D / (1 in)')).toContain("dimension: 'number', list: false");
		expect(compiled('N')).toContain("dimension: 'angle'");
		expect(compiled('alloy')).toContain("dimension: 'text'");
	});
});
