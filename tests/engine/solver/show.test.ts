import { describe, expect, test } from 'vitest';
import { developedWidth } from '../../../src/lib/engine/methods/developed-width.ts';
import { leastBendRadius } from '../../../src/lib/engine/methods/least-bend-radius.ts';
import { rivetDiameterFromStack } from '../../../src/lib/engine/methods/rivet-diameter-from-stack.ts';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { shopHeadCheck } from '../../../src/lib/engine/methods/shop-head-check.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { showStep, symbolOf } from '../../../src/lib/engine/solver/show-step.ts';

/** MathML as a person would read it. */
function read(mathml: string): string {
	return mathml
		.replace(
			/<mfrac>(?:<mrow>)?<mn>(\d+)<\/mn>(?:<\/mrow>)?(?:<mrow>)?<mn>(\d+)<\/mn>(?:<\/mrow>)?<\/mfrac>/g,
			' $1/$2 '
		)
		.replace(/<mspace[^>]*>/g, ' ')
		.replace(/<[^>]*>/g, '')
		.replace(/\s+/g, ' ')
		.trim();
}

const rivet = evaluate(rivetLength, { layers: [0.05, 0.051, 0.063], D: 1 / 8 });

describe('a step is shown in symbols, with numbers, and with its result', () => {
	test.each([
		['grip', 'sum of layers', '0.050+0.051+0.063', '0.164 in'],
		['shank', '1.5×D', '1.5× 1/8', '0.1875 in'],
		['needed', 'grip+shank', '0.164+0.1875', '0.3515 in'],
		['length', 'needed→up to a full 1/16 in', '0.3515→up to a full 1/16 in', '3/8 in (−6)']
	])('%s', (key, symbols, numbers, result) => {
		const shown = showStep(rivetLength, key, rivet);
		expect(read(shown.symbols)).toBe(symbols);
		expect(shown.numbers.map(read)).toEqual([numbers]);
		expect(shown.results.map(read)).toEqual([result]);
		expect(shown.signs).toEqual(['=']);
	});

	test('as about, where the numbers shown come to another last digit', () => {
		// 2 mm is 0.07874 in, three times that 0.23622; 3 × 0.0787 is 0.2361.
		const metric = evaluate(rivetDiameterFromStack, { layers: [2 / 25.4, 1 / 25.4] });
		const { numbers, results, signs } = showStep(rivetDiameterFromStack, 'threeT', metric);
		expect([read(numbers[0] ?? ''), read(results[0] ?? '')]).toEqual(['3×0.0787', '0.2362 in']);
		expect(signs).toEqual(['≈']);
		expect(showStep(rivetDiameterFromStack, 'threeT', metric, 'mm').signs).toEqual(['=']);
		const below = { ...rivet, grip: -0.25, shank: -1.375, needed: -1.625 };
		expect(showStep(rivetLength, 'needed', below).signs).toEqual(['=']);
		// 4.166 + 4.763 is 8.929, and 8.928 mm are right.
		expect(showStep(rivetLength, 'needed', rivet, 'mm').signs).toEqual(['≈']);
	});

	test('in millimetres on request', () => {
		const shown = showStep(rivetLength, 'needed', rivet, 'mm');
		expect(shown.numbers.map(read)).toEqual(['4.166+4.763']);
		expect(shown.results.map(read)).toEqual(['8.928 mm']);
	});

	test('as a slip works it', () => {
		const values = evaluate(
			rivetLength,
			{ layers: [0.05, 0.051], D: 1 / 8 },
			{ slips: { shank: 'oneD' } }
		);
		expect(read(showStep(rivetLength, 'shank', values, 'in', 'oneD').symbols)).toBe('D');
	});
});

test('a step that makes a list is shown member by member', () => {
	const values = evaluate(developedWidth, { R: 0.16, T: 0.04, legs: [1, 2, 1], angles: [90, 90] });
	const shown = showStep(developedWidth, 'flats', values);
	expect(shown.numbers.map(read)).toEqual(['1−0.200', '2−0.400', '1−0.200']);
	expect(shown.results.map(read)).toEqual([
		'0.800 in (≈ 51/64 in)',
		'1.600 in (≈ 1 19/32 in)',
		'0.800 in (≈ 51/64 in)'
	]);
});

test('a laid-out width has the nearest 64th beside it', () => {
	const values = evaluate(developedWidth, { R: 0.16, T: 0.04, legs: [1, 2, 1], angles: [90, 90] });
	expect(read(showStep(developedWidth, 'width', values).results.join())).toBe(
		'3.7581 in (≈ 3 49/64 in)'
	);
});

test('a branch is shown as cases, an alternative a line', () => {
	const values = evaluate(shopHeadCheck, { D: 1 / 8, width: 0.18, height: 0.06 });
	const { symbols } = showStep(shopHeadCheck, 'judgement', values);
	const rows = symbols
		.split('<mtr>')
		.slice(1)
		.map((row) => read(row.replace('</mtd><mtd>', ' ; ')));
	expect(rows).toEqual([
		'replace ; if width &gt; most width',
		'; or height &lt; least height',
		'drive more ; if width &lt; least width',
		'; or height &gt; most height',
		'accept ; otherwise'
	]);
	for (const tag of ['mtr', 'mtd', 'mtable', 'mrow']) {
		expect(symbols.split(`<${tag}>`).length, tag).toBe(symbols.split(`</${tag}>`).length);
	}
});

test('words from the outside cannot become markup', () => {
	const values = {
		...evaluate(leastBendRadius, { alloy: '2024-T3', T: 0.04 }),
		alloy: '<img src=x>'
	};
	expect(showStep(leastBendRadius, 'radius', values).numbers.join()).not.toContain('<img');
});

test('names and values are written as the shop writes them', () => {
	expect(symbolOf(rivetLength, 'D')).toBe('D');
	expect(textAt(rivetLength, 'D', 1 / 8)).toBe('1/8 in (−4)');
	expect(textAt(rivetLength, 'layers', 0.05)).toBe('0.050 in');
});
