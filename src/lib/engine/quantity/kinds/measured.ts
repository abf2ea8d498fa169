import { decimalText, type Exact, exactly, mixedText } from '../exact.ts';
import type { LengthUnit } from '../value.ts';
import { type Reader, readWith, workWith } from '../reader.ts';
import type { Field, Measure, NameReading } from '../reading.ts';
import { unitText } from '../said.ts';
import { isIn64ths, nearest64 } from '../sixty-fourths.ts';
import { ownUnit } from '../units.ts';
import { numberAnswers } from './answers/numbers.ts';
import type { Listable } from './list.ts';
import { type Mistakes, plainRoundings } from './mistakes.ts';
import { numberOptions } from './option-rules.ts';

/** Sizes that go by a name: dash numbers and drills. */
export interface SizeNames {
	readonly reading: (reader: Reader) => NameReading;
	/** The size with its name as the shop writes it, `5/16 in (−5)`; null where it has none. */
	readonly written?: (size: Exact, text: string) => string | null;
	/** Whether every member of a list is written with its name. */
	readonly inLists?: boolean;
}

/** What is special about a kind of number. */
interface Parts extends Pick<Measure, 'dimension' | 'noun'> {
	readonly id: string;
	readonly hint: string;
	/** How it may be written, the same in both units of length or for each. */
	readonly example: string | Readonly<Record<LengthUnit, string>>;
	/** Fewest and most decimal places written; the last one is rounded half up. */
	readonly places: readonly [least: number, most: number];
	/** Parts of the base unit that results are carried to; thousandths unless said. */
	readonly fine?: number;
	readonly most?: NumberKind['most'];
	readonly thousands?: boolean;
	readonly whole?: boolean;
	readonly fractions?: boolean;
	readonly keys?: NumberKind['keys'];
	readonly names?: SizeNames;
	readonly mistakes?: Partial<Mistakes>;
}

/** A kind of numbers in the base unit of a dimension. */
export interface NumberKind extends Listable<number, Exact>, Measure {
	example(unit?: LengthUnit): string;
	/** What the reader must know to read one. */
	field(reader: Reader, unit?: LengthUnit): Field;
	/** The number alone, without unit, dash number or drill name. */
	number(value: number, units?: LengthUnit): string;
}

/** Makes a kind of numbers. */
export function measured(parts: Parts): NumberKind {
	const { dimension, names = null, example } = parts;
	const fieldIn = (reader: Reader, unit: LengthUnit = 'in'): Field => ({
		kind,
		names: names?.reading(reader) ?? null,
		unit
	});
	const texts = typeof example === 'string' ? { in: example, mm: example } : example;
	const unitIn = (units: LengthUnit) => unitText(ownUnit(dimension, units));
	const kind: NumberKind = {
		fine: 1000,
		most: null,
		thousands: false,
		whole: false,
		fractions: false,
		keys: 'decimal',
		choices: [],
		isList: false,
		...parts,
		mistakes: {
			units: [],
			coarse: plainRoundings,
			onTheWay: [100, 10],
			digits: true,
			stocked: false,
			...parts.mistakes
		},
		options: numberOptions,
		get member() {
			return kind;
		},
		example: (unit = 'in') => texts[unit],
		field: fieldIn,
		read: (text, unit) =>
			readWith(text, (reader) => reader.readNumber(text, fieldIn(reader, unit))),
		work: (text, unit) => workWith((reader) => reader.readArithmetic(text, fieldIn(reader, unit))),
		readAll: (text, unit) =>
			readWith(text, (reader) => reader.readNumbers(text, fieldIn(reader, unit))),
		workAll: (text, unit) => workWith((reader) => reader.readNumbers(text, fieldIn(reader, unit))),
		...numberAnswers(() => kind),
		differs: (one, other, room) => Math.abs(one - other) > room,
		isSound: Number.isFinite,
		numbers: (value) => [value],
		map: (value, change) => change(value, 0),
		members: (value) => [value],
		number: (value, units = 'in') => numberText(exactly(value), kind, parts.places, units),
		write(value, units = 'in') {
			const text = kind.number(value, units) + unitIn(units);
			return names?.written?.(exactly(value), text) ?? text;
		},
		writeAll(values, units = 'in') {
			if (names?.inLists) return values.map((one) => kind.write(one, units)).join(', ');
			const numbers = values.map((one) => kind.number(one, units)).join(', ');
			return numbers && numbers + unitIn(units);
		},
		nearest64(value, units = 'in') {
			const text = dimension.formula === 'in' && units === 'in' ? nearest64(value) : '';
			return text.startsWith('≈') ? `${text} in` : '';
		},
		// Twelve digits drop what floating point adds and keep what the method computed.
		plain: (value) => ({ number: Number(value.toPrecision(12)), unit: dimension.unit })
	};
	return kind;
}

function numberText(
	value: Exact,
	{ dimension, fractions }: Measure,
	[least, most]: readonly [number, number],
	units: LengthUnit
): string {
	const { size } = ownUnit(dimension, units);
	if (!size.equals(1)) return decimalText(value.div(size), 0, 3);
	return fractions && isIn64ths(value) ? mixedText(value) : decimalText(value, least, most);
}
