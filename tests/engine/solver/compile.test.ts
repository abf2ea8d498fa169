import { describe, expect, test } from 'vitest';
import { compileMethod } from '../../../src/lib/engine/solver/compile.ts';
import {
	angle,
	length,
	lengths,
	limit,
	method,
	slip,
	step,
	words
} from '../../../src/lib/engine/solver/method.ts';
import { functions } from '../../../src/lib/engine/trade/functions.ts';

/** A method of one step, with the givens that formulas here may name. */
function oneStep(formula: string) {
	return method({
		id: 'trial',
		title: 'Trial',
		given: {
			D: length('Diameter'),
			N: angle('Angle'),
			layers: lengths('Layers'),
			alloy: words('Alloy')
		},
		steps: { result: step(formula, 'Result') },
		slips: {}
	});
}

function compiled(formula: string): string {
	return compileMethod(oneStep(formula), functions);
}

describe('a formula that cannot be right fails the build', () => {
	test.each([
		['D + N', 'Units do not match'],
		['D + 1', 'Units do not match|Unexpected type'],
		['D * D', 'a step may not end in'],
		['D / N', 'a step may not end in'],
		['upTo(D, 1 deg)', 'upTo takes values of one kind'],
		['setbackK(D)', 'setbackK takes a value of the kind angle'],
		['density(D)', 'density takes a value of the kind text'],
		['sum(D)', 'sum takes a list'],
		['upTo(D)', 'upTo takes 2 values'],
		['upTo(D, D, D)', 'upTo takes 2 values'],
		['E + D', 'E is neither a given, an earlier step nor a unit'],
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
		'D; D',
		'D in mm',
		'D!',
		"D'"
	])('%s is no formula', (formula) => {
		expect(() => compiled(formula)).toThrow('trial.result: ');
	});

	test('a slip must sit in a step of the method and give the same kind of value', () => {
		const trial = (at: 'result', formula: string) =>
			method({ ...oneStep('2 * D'), slips: { wrong: slip(at, formula, 'Wrong.') } });
		expect(() => compileMethod(trial('result', '3 * D'), functions)).not.toThrow();
		expect(() => compileMethod(trial('result', 'N'), functions)).toThrow('same kind of value');
		expect(() => compileMethod(trial('result', 'layers'), functions)).toThrow('same kind of value');
		expect(() => compileMethod(trial('other' as 'result', 'D'), functions)).toThrow(
			'no step other'
		);
	});

	test('a limit is read as well', () => {
		const trial = method({ ...oneStep('2 * D'), limits: [limit('D - N', 'No.')] });
		expect(() => compileMethod(trial, functions)).toThrow('trial limit 1');
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
		['layers', 'v.layers'],
		['layers * 2', 'v.layers.map((_, i) => (v.layers[i] * 2))'],
		['upTo(layers, D)', 'v.layers.map((_, i) => f.upTo.run(v.layers[i], v.D))']
	])('%s', (formula, source) => {
		expect(compiled(formula)).toContain(`run: (v) => ${source}, show:`);
	});

	test('lists and kinds are told', () => {
		expect(compiled('layers')).toContain("kind: 'length', list: true");
		expect(compiled('D / (1 in)')).toContain("kind: 'number', list: false");
		expect(compiled('N')).toContain("kind: 'angle'");
		expect(compiled('alloy')).toContain("kind: 'text'");
	});
});
