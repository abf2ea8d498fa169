import { expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import {
	identifier,
	showStep,
	symbolOf,
	symbolsIn
} from '../../../src/lib/engine/solver/show-step.ts';
import { drawTask, stepsOf } from '../../../src/lib/engine/tasks/task.ts';
import { wrapping } from '../../../src/lib/ui/sheet/wrapping.ts';

const maths = (markup: string) =>
	wrapping(markup)
		.split('\u200b')
		.map((piece) => piece.replace(/<[^>]*>/g, ''));

const sum = '<mn>1</mn><mo>+</mo><mn>2</mn>';

test('a formula breaks before its operators, in brackets too', () => {
	expect(
		maths(`<mi>a</mi><mo>=</mo><mn>3</mn><mo>×</mo><mrow><mo>(</mo>${sum}<mo>)</mo></mrow>`)
	).toEqual(['a', '=3', '×(1', '+2)']);
});

test('brackets around a fraction stay whole, since they are as high as it', () => {
	const fraction =
		'<mfrac><mrow><mi>a</mi></mrow><mrow><mi>b</mi></mrow></mfrac><mo>+</mo><mn>2</mn>';
	expect(maths(`<mrow><mo>(</mo>${fraction}<mo>)</mo></mrow>`)).toEqual(['(ab+2)']);
});

test('cases are lines, and each of them breaks by itself', () => {
	const row = (value: string, when: string) => `<mtr><mtd>${value}</mtd><mtd>${when}</mtd></mtr>`;
	const markup = wrapping(
		`<mi>a</mi><mo>=</mo><mrow><mo>{</mo><mtable>${row(sum, '<mtext>if\u00a0</mtext><mi>b</mi><mo>&gt;</mo><mn>2</mn>')}${row('<mn>4</mn>', '<mtext>otherwise</mtext>')}</mtable></mrow>`
	);
	const lines = markup.split('<span class="cases">')[1]?.match(/<span>.*?<\/span>/g) ?? [];
	expect(lines.map((line) => line.replace(/<[^>]*>/g, '').replaceAll('\u200b', '|'))).toEqual([
		'1|+2 if\u00a0b|&gt;2',
		'4 otherwise'
	]);
});

test('a size in brackets stands on one line, and words around it do not have to', () => {
	expect(wrapping('<mtext>0.094\u00a0in (≈\u00a03/32\u00a0in) of metal</mtext>')).toBe(
		'<span>0.094 in (≈\u00a03/32\u00a0in) of metal</span>'
	);
});

/** What browsers do not break in. */
const unbroken = /<math>(.*?)<\/math>/g;

/** A fraction is as wide as the longer of its two lines. */
function lettersAcross(piece: string): number {
	const letters = (markup: string) => markup.replace(/<[^>]*>/g, '');
	const longer = (_: string, above: string, below: string) =>
		letters(above).length > letters(below).length ? above : below;
	const fraction = /<mfrac><mrow>(.*?)<\/mrow><mrow>(.*?)<\/mrow><\/mfrac>/g;
	return letters(piece.replace(fraction, longer)).length;
}

test('a fraction too long for a line gets a stroke, and words that join break behind themselves', () => {
	const above =
		'<mn>360</mn><mo>−</mo><mtext>the larger of\u00a0</mtext><mi>N</mi><mo>+</mo><mn>12345678</mn>';
	const pieces = wrapping(`<mfrac><mrow>${above}</mrow><mn>2</mn></mfrac>`);
	expect(pieces.replace(/<[^>]*>/g, '').split('\u200b')).toEqual([
		'(360',
		'−',
		'the larger of ',
		'N',
		'+12345678)',
		'/2'
	]);
});

test('no formula or slip of any task holds a piece that a narrow phone has no room for', async () => {
	const wide = new Set<string>();
	for (const family of await loadFamilies()) {
		for (const level of levels) {
			const task = drawTask(family, level, 7);
			for (const key of stepsOf(task)) {
				const { symbols, numbers } = showStep(task.method, key, task.right, 'in');
				const name = identifier(symbolOf(task.method, key));
				const slips = Object.entries(task.method.slips)
					.filter(([, { step }]) => step === key)
					.map(([id]) => symbolsIn(task.method, key, id));
				for (const line of [symbols, ...numbers, ...slips]) {
					for (const [, piece = ''] of wrapping(`${name}<mo>=</mo>${line}`).matchAll(unbroken)) {
						if (lettersAcross(piece) > 30) wide.add(`${task.method.id}, ${key}: ${piece}`);
					}
				}
			}
		}
	}
	expect([...wide]).toEqual([]);
});

test('a comma stays by what it follows', () => {
	expect(maths('<mn>1</mn><mo>,</mo><mn>2</mn>')).toEqual(['1,', '2']);
});
