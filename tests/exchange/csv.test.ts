import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv, writeCsv } from '../../src/lib/exchange/csv.ts';
import { readRoster } from '../../src/lib/exchange/roster.ts';

describe('a table', () => {
	test('is written as RFC 4180 has it, with a byte order mark', () => {
		expect(
			writeCsv([
				['Code', 'Marks'],
				['B"05', 1.5],
				['a,b\nc', null]
			])
		).toBe('\ufeffCode,Marks\r\n"B""05",1.5\r\n"a,b\nc",\r\n');
	});

	test.each(['=1+1', '+1', '-1', '@x', ' =1', '\t=1', '＝1', '＋1', '－1', '＠x', '\rx'])(
		'keeps %o text, not a formula',
		(text) => {
			const [, cell = ''] = /^\ufeff"?(.)/.exec(writeCsv([[text]])) ?? [];
			expect(cell).toBe("'");
		}
	);

	test('leaves numbers below zero numbers', () => {
		expect(writeCsv([[-1, 'x']])).toBe('\ufeff-1,x\r\n');
	});

	test('is read as it was written, whatever is in it', () => {
		const cell = fc.string({ unit: 'grapheme', maxLength: 12 }).map((text) => `x${text.trim()}x`);
		const rows = fc.integer({ min: 1, max: 4 }).chain((width) =>
			fc.array(fc.array(cell, { minLength: width, maxLength: width }), {
				minLength: 1,
				maxLength: 5
			})
		);
		fc.assert(
			fc.property(rows, (table) => {
				// The first row decides what parts the columns, so it has no such marks here.
				const all = [table[0]?.map((_, i) => `name ${i}`) ?? [], ...table];
				expect(readCsv(writeCsv(all))).toEqual({ ok: true, rows: all });
			}),
			{ numRuns: 2000 }
		);
	});

	test('with a quotation mark left open is refused', () => {
		expect(readCsv('a,"b\nc')).toMatchObject({ ok: false, sentence: expect.stringMatching(/\.$/) });
	});
});

describe('a list of students', () => {
	test.each([
		['codes alone', 'B01\nB02\n'],
		['a byte order mark and lines of Windows', '\ufeffB01\r\nB02\r\n\r\n'],
		['a header', 'Code,Name\nB01,\nB02,'],
		['a header that says student', 'Student,Seat\nB01,4\nB02,5'],
		['a header that says ID', 'Name,Student ID\n,B01\n,B02'],
		['a student beside a code', 'No.,Student,Code\n1,,B01\n2,,B02'],
		['semicolons', 'Name;Code\n;b01\n;b02'],
		['semicolons named', 'sep=;\r\nCode;Name\r\nB01;\r\nB02;\r\n'],
		['tabs', 'Code\tSeat\nB01\t4,5\nB02\t6'],
		['quotation marks', '"Code","Name"\n"B01",""\n"B02",""'],
		['spaces', ' B01 \n\n  B02']
	])('is read with %s', (_, text) => {
		expect(readRoster(text)).toEqual({
			ok: true,
			students: [
				{ code: 'B01', name: '' },
				{ code: 'B02', name: '' }
			]
		});
	});

	test('keeps a name as text, whatever it is', () => {
		const reading = readRoster('Code;Name\nB01;"<b>A; B</b>"\nB02;=cmd()');
		expect(reading).toMatchObject({
			students: [{ name: '<b>A; B</b>' }, { name: '=cmd()' }]
		});
	});

	test('takes the column beside the codes that says student for the names', () => {
		expect(readRoster('Student,Code\nJo,B01')).toEqual({
			ok: true,
			students: [{ code: 'B01', name: 'Jo' }]
		});
	});

	test.each([
		['names and no codes', 'Name\nJo', 'No column of the list is headed “Code”'],
		['nothing', '', 'There is no student code in the list.'],
		['a header alone', 'Code,Name\n', 'There is no student code in the list.'],
		[
			'a formula for a code',
			'B01\n=HYPERLINK("x")',
			'Student 2 of the list, “=HYPERLINK("x")”: A student code starts'
		],
		['script for a code', 'B01\n<script>', 'Student 2 of the list, “<script>”: A student'],
		['a long text for a code', `B01\n${'x '.repeat(60)}`, '“x x x x x x x x x x x x …”: A student'],
		['a code twice', 'B01\nB02\nb01', 'Student 3 of the list has the code B01, as student 1 has'],
		['no code in a row', 'Code,Name\n,x', 'Student 1 of the list: Type a student code'],
		['an open quotation mark', '"B01\nB02', 'A quotation mark in the table is not closed'],
		['too many', Array.from({ length: 501 }, (_, i) => `B${i}`).join('\n'), 'at most 500 students']
	])('with %s is refused with a sentence', (_, text, says) => {
		expect(readRoster(text)).toMatchObject({
			ok: false,
			sentence: expect.stringContaining(says)
		});
	});
});
