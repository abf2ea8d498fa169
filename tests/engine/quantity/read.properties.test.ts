import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Exact } from '../../../src/lib/engine/quantity/exact.ts';
import { isList, type LengthUnit, type Value } from '../../../src/lib/engine/quantity/value.ts';
import { angle } from '../../../src/lib/engine/quantity/kinds/angle.ts';
import { count } from '../../../src/lib/engine/quantity/kinds/count.ts';
import { drill } from '../../../src/lib/engine/quantity/kinds/drill.ts';
import { fraction } from '../../../src/lib/engine/quantity/kinds/fraction.ts';
import type { Kind } from '../../../src/lib/engine/quantity/kinds/kind.ts';
import { inches as inch, length } from '../../../src/lib/engine/quantity/kinds/length.ts';
import { listOf } from '../../../src/lib/engine/quantity/kinds/list.ts';
import { load } from '../../../src/lib/engine/quantity/kinds/load.ts';
import type { NumberKind } from '../../../src/lib/engine/quantity/kinds/measured.ts';
import { number, numberPer } from '../../../src/lib/engine/quantity/kinds/number.ts';
import { rivetDiameter } from '../../../src/lib/engine/quantity/kinds/rivet-diameter.ts';
import { rivetLength } from '../../../src/lib/engine/quantity/kinds/rivet-length.ts';
import { stress } from '../../../src/lib/engine/quantity/kinds/stress.ts';
import { weight } from '../../../src/lib/engine/quantity/kinds/weight.ts';
import { word } from '../../../src/lib/engine/quantity/kinds/word.ts';
import type { Reading } from '../../../src/lib/engine/quantity/read.ts';
import { type Asked, corpus, type Field, fields, read } from './corpus.ts';

const expectedOnes = Object.values(fields) as Asked[];

/** Pieces of shop writing, in any order. */
const shopText = fc
	.array(
		fc.constantFrom(
			...['0', '1', '5', '30', '250', '.', ',', '/', '-', '−', ' ', '½', '⅜', '⁄', '·', '°', '+'],
			...['in', '"', "'", 'ft', 'mm', 'thou', '32nds', 'deg', 'lb', 'oz', '#', 'No. ', 'dash', 'F'],
			...[
				'drill',
				'length',
				'AD4-5',
				'(',
				')',
				'*',
				';',
				'and',
				'\n',
				'e-2',
				'letter',
				'±',
				'²',
				'³'
			]
		),
		{ maxLength: 9 }
	)
	.map((parts) => parts.join(''));

const anyText = fc.oneof(
	fc.string(),
	fc.string({ unit: 'grapheme' }),
	fc.string({ unit: 'binary' }),
	fc.string({ unit: 'binary', minLength: 150, maxLength: 400 }),
	fc.string({ unit: fc.constantFrom(...'0123456789.,/- '), maxLength: 250 }),
	shopText
);

function checked(text: string, reading: Reading) {
	switch (reading.state) {
		case 'read':
			expect(reading.grain).toBeGreaterThanOrEqual(0);
			expect(Number.isFinite(reading.grain)).toBe(true);
			for (const value of [reading.value].flat()) {
				if (value instanceof Exact) expect(value.compare(0)).toBeGreaterThanOrEqual(0);
			}
			break;
		case 'which':
			expect(reading.options.length).toBeGreaterThan(1);
			expect(reading.question).toMatch(/\?$/);
			for (const [i, { value }] of reading.options.entries()) {
				expect(reading.options.findIndex((other) => other.value.equals(value))).toBe(i);
			}
			expect(new Set(reading.options.map(({ said }) => said)).size).toBe(reading.options.length);
			break;
		case 'unread':
			expect(reading.why).toMatch(/^[^\p{Cc}\p{Cs}]+\.$/u);
			expect(repeated(text, reading.why)).toBeLessThanOrEqual(30);
			break;
		case 'arithmetic':
			expect(reading.text).toMatch(/^[\d.+\-*/() a-z'"°]+$/);
			break;
		case 'empty':
			expect(text.replace(/[\s\u00ad\u200b-\u200f\u2060\ufeff]/g, '')).toBe('');
	}
}

/** Length of the longest run of one text that stands in the other, looked for from 31 on. */
function repeated(text: string, why: string): number {
	for (let at = 0; at + 31 <= text.length; at++) {
		if (why.includes(text.slice(at, at + 31).toLowerCase())) return 31;
	}
	return 0;
}

test('no entry throws, whatever the text, and every reading keeps its promises', () => {
	fc.assert(
		fc.property(anyText, fc.constantFrom(...expectedOnes), (text, expected) => {
			checked(text, read(text, expected));
		}),
		{ numRuns: 10_000 }
	);
});

test('reading leaves no trace: the same entry reads the same', () => {
	fc.assert(
		fc.property(shopText, anyText, fc.constantFrom(...expectedOnes), (text, other, expected) => {
			const before = read(text, expected);
			read(other, expected);
			expect(read(text, expected)).toEqual(before);
		})
	);
});

describe('what is said reads as the same value', () => {
	const rows = Object.entries(corpus).flatMap(([field, entries]) =>
		entries.map(([entry]) => ({ entry, expected: fields[field as Field] as Asked }))
	);
	const single = rows.filter(({ expected }) => !expected.kind.isList && expected.kind !== word);

	test('over the corpus', () => {
		let compared = 0;
		for (const { entry, expected } of single) {
			for (const { value, said } of readings(entry, expected)) {
				const again = read(firstAmount(said), expected);
				// A bare count of inches is said without a unit only for plain numbers.
				expect(again, `${entry}: ${said}`).toMatchObject({ state: 'read' });
				const same = again.state === 'read' && Number(again.value) - Number(value);
				expect(Math.abs(Number(same)), `${entry}: ${said}`).toBeLessThan(1e-9);
				compared++;
			}
		}
		expect(compared).toBeGreaterThan(300);
	});
});

function readings(entry: string, expected: Asked): { value: Exact; said: string }[] {
	const reading = read(entry, expected);
	if (reading.state === 'which') return [...reading.options];
	if (reading.state !== 'read') return [];
	return [{ value: reading.value as Exact, said: reading.said }];
}

/** The amount a read-back begins with. */
function firstAmount(said: string): string {
	return said.replace(/^≈ /, '').split(/ [=≈] |, /)[0] ?? '';
}

const sixtyFourths = fc.integer({ min: 0, max: 640 }).map((parts) => parts / 64);
const inches = fc.double({ min: 0, max: 500, noNaN: true }).map((size) => Math.abs(size));

/** Half of the last place printed, in base units. */
const inRoom = 0.00005;
const mmRoom = 0.0005 / 25.4;

interface Row {
	readonly kind: NumberKind;
	readonly values: fc.Arbitrary<number>;
	readonly room: number;
}

const rows: readonly Row[] = [
	{ kind: length, values: inches, room: inRoom },
	{ kind: fraction, values: sixtyFourths, room: 0 },
	{ kind: fraction, values: inches, room: inRoom },
	{ kind: rivetLength, values: sixtyFourths, room: 0 },
	{ kind: rivetLength, values: inches, room: inRoom },
	{ kind: rivetDiameter, values: sixtyFourths, room: 0 },
	{ kind: rivetDiameter, values: inches, room: inRoom },
	{ kind: drill, values: sixtyFourths, room: inRoom },
	{
		kind: drill,
		values: fc.constantFrom(0.228, 0.1285, 0.098, 0.04, 0.234, 0.25, 0.257, 0.413),
		room: 0
	},
	{ kind: count, values: fc.nat({ max: 1_000_000 }), room: 0 },
	{ kind: number, values: inches, room: 0.000005 },
	{ kind: angle, values: inches, room: 0.005 },
	{ kind: weight, values: inches, room: inRoom },
	{ kind: load, values: inches, room: 0.005 },
	{
		kind: stress,
		values: fc.double({ min: 0, max: 90_000, noNaN: true }).map(Math.abs),
		room: 0.05
	},
	{ kind: numberPer({ unit: 'rivets per inch', example: '4' }), values: inches, room: inRoom }
];

const units = fc.constantFrom<LengthUnit>('in', 'mm');

function roundTrip(value: Value, row: Row, unit: LengthUnit) {
	const list = typeof value === 'object';
	const kind: Kind = list ? listOf(row.kind) : row.kind;
	const text = kind.write(value, unit);
	const reading = kind.read(text, unit);
	expect(reading, text).toMatchObject({ state: 'read' });
	if (reading.state !== 'read' || typeof reading.value === 'string') return;
	// A dash number or a drill's name is exact beside rounded millimetres; a list has none.
	const rounded = kind.dimension === inch && unit === 'mm' && (list || !/[(]/.test(text));
	const room = (rounded ? mmRoom : row.room) + 1e-9;
	for (const [i, one] of [reading.value].flat().entries()) {
		const meant = isList(value) ? value[i] : value;
		expect(Math.abs(Number(one) - Number(meant)), text).toBeLessThanOrEqual(room);
	}
	expect([reading.value].flat()).toHaveLength(isList(value) ? value.length : 1);
}

describe('what was formatted reads as the same quantity', () => {
	test.each(rows)('$kind.id, room $room', (row) => {
		fc.assert(fc.property(row.values, units, (value, unit) => roundTrip(value, row, unit)));
	});

	test.each(rows)('a list, $kind.id, room $room', (row) => {
		const lists = fc.array(row.values, { minLength: 1, maxLength: 5 });
		fc.assert(fc.property(lists, units, (values, unit) => roundTrip(values, row, unit)));
	});

	test('words', () => {
		expect(read(word.write('universal head'), fields.words)).toMatchObject({
			value: 'universal head'
		});
	});
});
