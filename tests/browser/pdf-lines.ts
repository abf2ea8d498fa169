import { inflateSync } from 'node:zlib';

/** A straight line on paper, in points from the lower left corner of its page. */
export interface PaperLine {
	readonly x1: number;
	readonly y1: number;
	readonly x2: number;
	readonly y2: number;
}

type Matrix = readonly [number, number, number, number, number, number];

/**
 * The straight lines of every page of a PDF, read out of its drawing commands: what a ruler would
 * be laid on.
 */
export function linesInPdf(pdf: Buffer): PaperLine[][] {
	const text = pdf.toString('latin1');
	const pages = [...text.matchAll(/\/Type \/Page\b[^]*?\/Contents (\d+) 0 R/g)];
	return pages.map(([, number = '']) => linesIn(contentOf(pdf, text, number)));
}

function contentOf(pdf: Buffer, text: string, number: string): string {
	const at = text.search(new RegExp(`(^|\\n)${number} 0 obj\\b`));
	const begin = text.indexOf('stream', at);
	const head = text.slice(at, begin);
	const start = begin + (text[begin + 6] === '\r' ? 8 : 7);
	const length = Number(/\/Length (\d+)/.exec(head)?.[1]);
	const bytes = pdf.subarray(start, start + length);
	return (head.includes('/FlateDecode') ? inflateSync(bytes) : bytes).toString('latin1');
}

function linesIn(content: string): PaperLine[] {
	const lines: PaperLine[] = [];
	const kept: Matrix[] = [];
	let matrix: Matrix = [1, 0, 0, 1, 0, 0];
	let pen: readonly [number, number] = [0, 0];
	let numbers: number[] = [];
	for (const token of content.split(/\s+/)) {
		const number = Number(token);
		if (token !== '' && Number.isFinite(number)) {
			numbers.push(number);
			continue;
		}
		const [x = 0, y = 0] = numbers;
		if (token === 'q') kept.push(matrix);
		if (token === 'Q') matrix = kept.pop() ?? matrix;
		if (token === 'cm') matrix = times(numbers, matrix);
		if (token === 'c') pen = onPage(matrix, numbers[4] ?? 0, numbers[5] ?? 0);
		if (token === 'm') pen = onPage(matrix, x, y);
		if (token === 'l') {
			const [x2, y2] = onPage(matrix, x, y);
			lines.push({ x1: pen[0], y1: pen[1], x2, y2 });
			pen = [x2, y2];
		}
		numbers = [];
	}
	return lines;
}

function onPage([a, b, c, d, e, f]: Matrix, x: number, y: number): readonly [number, number] {
	return [a * x + c * y + e, b * x + d * y + f];
}

function times(numbers: readonly number[], [a, b, c, d, e, f]: Matrix): Matrix {
	const [p = 1, q = 0, r = 0, s = 1, t = 0, u = 0] = numbers;
	return [
		p * a + q * c,
		p * b + q * d,
		r * a + s * c,
		r * b + s * d,
		t * a + u * c + e,
		t * b + u * d + f
	];
}
