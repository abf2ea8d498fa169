import { expect, test } from 'vitest';
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
