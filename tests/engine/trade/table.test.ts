import { describe, expect, test } from 'vitest';
import { chartExcerpt } from '../../../src/lib/engine/figures/parts/chart-excerpt.ts';
import { compileMethod } from '../../../src/lib/engine/solver/compile.ts';
import { length, number, word } from '../../../src/lib/engine/quantity/kinds.ts';
import { given } from '../../../src/lib/engine/solver/given.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';
import { method, step } from '../../../src/lib/engine/solver/write.ts';
import { source } from '../../../src/lib/engine/trade/source.ts';
import { byLength, byName } from '../../../src/lib/engine/trade/table/axis.ts';
import { excerpt } from '../../../src/lib/engine/trade/table/excerpt.ts';
import { keyWith } from '../../../src/lib/engine/trade/table/key-with.ts';
import {
	type LookUp,
	lookUp,
	lookUpCrossing
} from '../../../src/lib/engine/trade/table/look-up.ts';
import { misread } from '../../../src/lib/engine/trade/table/misread.ts';
import {
	misreadAs,
	type Misreading,
	misreadingsOf,
	misreadName
} from '../../../src/lib/engine/trade/table/misread-as.ts';
import { holding, measure, measures, table } from '../../../src/lib/engine/trade/table/table.ts';
import { places } from '../../../src/lib/engine/trade/table/writing.ts';

/*
 * A table that no document prints, declared here and nowhere else: everything that a table gives
 * is read from its declaration.
 */
const shims = {
	id: 'made-up',
	title: 'Shims',
	topic: 'bends',
	called: 'the shim chart',
	source: source('none', 'made up'),
	rows: byLength('Gap', [0.1, 0.2, 0.4, 0.8, 1.6], {
		write: places(1),
		means: (gap) => (gap === 0.41 ? 0.4 : gap)
	}),
	columns: byName('Steel', [['soft', 'plain'], ['hard'], ['spring']]),
	holds: holding(length, places(2)),
	cells: [
		[1, 2, 3],
		[4, 5, 6],
		[7, 8, 9],
		[10, 11, 12],
		[null, 14, 15]
	]
} as const;

const shimChart = table({
	...shims,
	suspect: [{ row: 0.8, column: 'hard', why: 'it is made up' }],
	stepped: true
});
const shim = lookUpCrossing(shimChart, {
	name: 'shim',
	shown: 'shim for',
	words: { above: 'the shim of a smaller gap', below: 'the shim of a larger gap' }
});

const tools = table({
	...shims,
	id: 'made-up-tools',
	...measures({
		hammer: measure('Hammer', holding(number, String)),
		file: measure('File', holding(number, String)),
		length: measure('Length', holding(length, places(1)))
	})
});
const file = lookUp(tools, {
	name: 'file',
	column: 'file',
	shown: 'file',
	otherwise: (gap) => (gap === 7 ? 77 : undefined),
	words: { above: 'a finer file', below: 'a coarser file', twoBelow: 'that file is far too coarse' }
});

/** What a look-up that slipped gives; a refusal as its sentence. */
function slipped(of: LookUp, misreading: Misreading, ...keys: readonly (number | string)[]) {
	const run = misreadAs(of, misreading).run as (...keys: unknown[]) => unknown;
	try {
		return run(...keys);
	} catch (error) {
		if (error instanceof TradeError) return error.message;
		throw error;
	}
}

describe('the look-up', () => {
	test('finds the cell of a row and a column, whichever name the column goes by', () => {
		expect(shim.run(0.2, 'hard')).toBe(5);
		expect(shim.run(0.1 + 0.1, ' plain ' as 'plain')).toBe(4);
		expect(shim.takes).toEqual(['length', 'text']);
		expect(shim.gives).toBe('length');
	});

	test('takes the column first where it is told to', () => {
		const other = lookUpCrossing(shimChart, { ...shim, shown: '', columnFirst: true });
		expect(other.run('hard', 0.2)).toBe(5);
		expect(other.takes).toEqual(['text', 'length']);
	});

	test('finds one column of its own', () => {
		expect(file.run(0.4)).toBe(8);
		expect(file.gives).toBe('number');
	});

	test('reads a row also for the key that shares it', () => {
		expect(shim.run(0.41, 'spring')).toBe(9);
	});

	test('gives what stands for a key without a row, where the declaration says so', () => {
		expect(file.run(7)).toBe(77);
		expect(() => file.run(6)).toThrow('has no row');
	});

	test('finds the row of what a column holds', () => {
		expect(keyWith(tools, 'hammer', 7)).toBe(0.4);
		expect(() => keyWith(shimChart, 'hard', 99)).toThrow(
			'The shim chart does not list 99; choose one of 2, 5, 8, 14.'
		);
		expect(() => keyWith(shimChart, 'hard', 11)).toThrow('does not list 11');
	});
});

describe('a refusal is one sentence that says what there is', () => {
	test.each([
		[
			0.3,
			'soft',
			'The shim chart has no row for 0.3 in; its rows are 0.1, 0.2, 0.4, 0.8, 1.6 in: choose one of these.'
		],
		[NaN, 'soft', 'The shim chart has no row for that; its rows are'],
		[0.2, 'brass', 'The shim chart has no column for brass; it has soft, plain, hard, spring.'],
		[0.2, '', 'The shim chart has no column for that; it has'],
		[1.6, 'soft', 'The shim chart prints nothing for 1.6 in and soft.'],
		[
			0.8,
			'hard',
			'What the shim chart prints for 0.8 in and hard is suspect and is not used: it is made up.'
		]
	])('%d, %s', (gap, steel, says) => {
		expect(() => shim.run(gap, steel as 'soft')).toThrow(TradeError);
		expect(() => shim.run(gap, steel as 'soft')).toThrow(says);
	});

	test('a long list is told by its ends, and advice goes before a list', () => {
		const many = Array.from({ length: 60 }, (_, i) => i + 1);
		const long = table({
			...shims,
			rows: byLength('Gap', many),
			cells: many.map((n) => [n, n, n])
		});
		expect(() => lookUpCrossing(long, { ...shim, shown: '' }).run(61, 'soft')).toThrow(
			'has no row for 61 in; its rows run from 1 to 60 in: choose one of these.'
		);
		const advised = table({
			...shims,
			columns: byName('Steel', [['soft'], ['hard'], ['spring']], { advice: 'look at its end' })
		});
		expect(() =>
			lookUpCrossing(advised, { ...shim, shown: '' }).run(0.2, 'brass' as 'soft')
		).toThrow('has no column for brass: look at its end.');
	});
});

describe('the eye that slips', () => {
	test.each<[Misreading, unknown]>([
		['above', 2],
		['below', 8],
		[
			'twoBelow',
			'What the shim chart prints for 0.8 in and hard is suspect and is not used: it is made up.'
		],
		['twoAbove', 'That place is beyond the edge of the shim chart.'],
		['left', 4],
		['right', 6],
		['aboveLeft', 1],
		['aboveRight', 3],
		['belowLeft', 7],
		['belowRight', 9],
		['between', 'There are no two rows that this lies between.']
	])('%s of 0.2, hard', (misreading, value) => {
		expect(slipped(shim, misreading, 0.2, 'hard')).toBe(value);
	});

	test('beyond every edge there is nothing', () => {
		const edge = 'That place is beyond the edge of the shim chart.';
		expect(slipped(shim, 'above', 0.1, 'soft')).toBe(edge);
		expect(slipped(shim, 'below', 1.6, 'hard')).toBe(edge);
		expect(slipped(shim, 'left', 0.1, 'plain')).toBe(edge);
		expect(slipped(shim, 'right', 0.1, 'spring')).toBe(edge);
	});

	test('between two rows it goes straight, also for a key that shares a row', () => {
		expect(slipped(shim, 'between', 0.3, 'soft')).toBeCloseTo(5.5, 12);
		expect(slipped(shim, 'between', 0.41, 'soft')).toBeCloseTo(7 + (3 * 0.01) / 0.4, 12);
		expect(slipped(shim, 'between', 5, 'soft')).toBe(
			'There are no two rows that this lies between.'
		);
	});

	test('a column of its own is misread for its neighbours of the same kind only', () => {
		expect(misreadingsOf(file)).toEqual(['above', 'below', 'twoAbove', 'twoBelow', 'left']);
		expect(slipped(file, 'left', 0.2)).toBe(4);
	});

	test('the slips of a step: formulas by one rule, sentences in the words of the table', () => {
		expect(
			misread(shim, 'gap, steel', { rowUp: 'above', columnRight: 'right', slope: 'between' })
		).toEqual({
			rowUp: {
				formula: 'shimAbove(gap, steel)',
				act: 'made-up above',
				rare: false,
				says: 'One row too far up: that is the shim of a smaller gap.'
			},
			columnRight: {
				formula: 'shimRight(gap, steel)',
				act: 'made-up right',
				rare: false,
				says: 'One column too far right: that is another column.'
			},
			slope: {
				formula: 'shimBetween(gap, steel)',
				act: 'made-up between',
				rare: false,
				says: 'Worked out between two rows: the shim chart goes by steps, and there is nothing between them.'
			}
		});
		expect(
			misread(file, 'gap', { a: 'below', b: 'twoBelow', c: 'twoAbove', d: 'left' })
		).toMatchObject({
			a: { says: 'One row too far down: that is a coarser file.' },
			b: { says: 'Two rows too far down: that file is far too coarse.' },
			c: { says: 'Two rows too far up.' },
			d: { says: 'One column too far left: that is the hammer.' }
		});
		expect(() => misread(file, 'gap', { a: 'right' })).toThrow(
			'a: made-up-tools cannot be misread'
		);
	});

	test('a method compiles with the look-up and with its slips', () => {
		const slips = misread(shim, 'gap, steel', { rowUp: 'above', slope: 'between' });
		const trial = method({
			id: 'trial',
			title: 'Trial',
			given: { gap: given(length, 'Gap'), steel: given(word, 'Steel') },
			steps: { shim: step('shim(gap, steel)', 'Shim', { slips }) }
		});
		const functions = {
			shim,
			...Object.fromEntries(
				misreadingsOf(shim).map((one) => [misreadName('shim', one), misreadAs(shim, one)])
			)
		};
		const compiled = compileMethod(trial, functions).told;
		expect(compiled).toContain('one row above');
		expect(compiled).toContain('between the rows around');
	});
});

describe('the excerpt', () => {
	const rowsFrom = (gap: number, rows = 3) => excerpt(shimChart, { row: gap }, { rows }).rows;

	test('has the wanted row among its neighbours, and does not always begin in the same way', () => {
		expect(rowsFrom(0.4)).toEqual([1, 2, 3]);
		expect(excerpt(shimChart, { row: 0.4 }, { rows: 4 }).rows).toEqual([1, 2, 3, 4]);
		expect(excerpt(shimChart, { row: 0.2 }, { rows: 4 }).rows).toEqual([0, 1, 2, 3]);
		expect(rowsFrom(0.1)).toEqual([0, 1, 2]);
		expect(rowsFrom(1.6)).toEqual([2, 3, 4]);
		expect(rowsFrom(1.6, 9)).toEqual([0, 1, 2, 3, 4]);
	});

	test('of a wide table takes the columns around the wanted one', () => {
		const wanted = { row: 0.4, column: 'spring' };
		expect(excerpt(shimChart, wanted, { columns: 2 }).columns).toEqual([1, 2]);
		expect(() => excerpt(shimChart, { row: 0.3 })).toThrow(TradeError);
	});

	test('is drawn, with a dash for what is not printed or not to be trusted', () => {
		const { title, shapes } = chartExcerpt(
			shimChart,
			{ row: 1.6 },
			{ rows: 3, below: ['A note.'] }
		);
		expect(title).toBe(
			'Part of the chart “Shims”: a row for each gap and a column for each steel.'
		);
		const lettered = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
		expect(lettered.join(' ')).toBe(
			'Gap soft plain hard spring 0.4 7.00 8.00 9.00 0.8 10.00 – 12.00 1.6 – 14.00 15.00 A note.'
		);
	});

	test('is lettered as the task letters its numbers', () => {
		const { shapes } = chartExcerpt(
			shimChart,
			{ row: 0.1 },
			{ rows: 1, row: (key) => `[${key}]`, cell: (value, column) => `${column}:${value}` }
		);
		const lettered = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
		expect(lettered).toEqual(expect.arrayContaining(['[0.1]', 'soft:1', 'spring:3']));
	});
});
