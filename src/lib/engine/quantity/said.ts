import { drillName } from './drills.ts';
import { decimalText, endsWithin, type Exact, mixedText } from './exact.ts';
import { dashText } from './format.ts';
import { baseUnit, type LengthUnit } from './kind.ts';
import type { Expected } from './reading.ts';
import { type Unit, unitOf } from './units.ts';

/** Decimal places shown of a converted value: four of an inch, three of a millimetre. */
const placesOf = (unit: Unit) => (unit.symbol === 'mm' ? 3 : 4);

/** The unit of a number written without one. */
export function bareUnit({ kind, unit = 'in' }: Expected): Unit {
	if (kind === 'length') return lengthUnit(unit);
	return unitOf(kind, kind === 'angle' ? '°' : kind === 'density' ? 'lb/in³' : baseUnit[kind]);
}

export function lengthUnit(unit: LengthUnit): Unit {
	return unitOf('length', unit);
}

/** A number with its unit: `3/8 in`, `45°`. */
export function amountText(number: Exact, unit: Unit, fraction: boolean, places: number): string {
	const text = fraction ? mixedText(number) : decimalText(number, 0, places);
	const gap = unit.symbol && !/^[°′″]/.test(unit.symbol) ? ' ' : '';
	return text + gap + unit.symbol;
}

/**
 * The read-back of a value: as it was written, then in the unit the field works in and in inches,
 * then the rivet or drill it is: `12.7 mm = 0.5 in`, `5/16 in, a −5 length`.
 *
 * @param value in base units
 * @param written the entry's own amount, in `unit`
 */
export function saidOf(
	value: Exact,
	written: string,
	unit: Unit,
	fraction: boolean,
	expected: Expected
): string {
	const bare = bareUnit({ ...expected, kind: unit.kind });
	const shownIn = unit.kind === 'length' ? [bare, lengthUnit('in')] : [bare];
	const others = [...new Set(shownIn)].filter((other) => other !== unit);
	const texts = others.map((other) => convertedText(value, other, fraction));
	return [written, ...texts].join(' ') + nameText(value, fraction, expected);
}

/** `= 12.7 mm`, or `≈ 3.264 mm` where the places shown do not hold the value. */
export function convertedText(value: Exact, unit: Unit, fraction: boolean): string {
	const number = value.div(unit.size);
	const asFraction = fraction && unit.symbol === 'in' && 64n % number.d === 0n;
	const sign = asFraction || endsWithin(number, placesOf(unit)) ? '=' : '≈';
	return `${sign} ${amountText(number, unit, asFraction, placesOf(unit))}`;
}

function nameText(value: Exact, fraction: boolean, { style }: Expected): string {
	const dash = style && dashText(value, style);
	if (dash) return `, a ${dash} ${style === 'rivet-length' ? 'length' : 'diameter'}`;
	const drill = style === 'drill' && !fraction && drillName(value);
	return drill ? `, the ${drill} drill` : '';
}
