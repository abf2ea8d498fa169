import { decimalText, endsWithin, type Exact, mixedText } from './exact.ts';
import type { Field } from './reading.ts';
import type { Unit } from './units.ts';

/** Decimal places shown of a converted value: four of an inch, three of a millimetre. */
const placesOf = (unit: Unit) => (unit.symbol === 'mm' ? 3 : 4);

/** A number with its unit: `3/8 in`, `45°`. */
export function amountText(number: Exact, unit: Unit, fraction: boolean, places: number): string {
	const text = fraction ? mixedText(number) : decimalText(number, 0, places);
	return text + unitText(unit);
}

/** The unit as it stands behind a number: ` in`, `°`, or nothing. */
export function unitText({ symbol }: Unit): string {
	return symbol && !/^[°′″]/.test(symbol) ? ` ${symbol}` : symbol;
}

/**
 * The read-back of a value: as it was written, then in the unit the field works in and in inches:
 * `12.7 mm = 0.5 in`.
 *
 * @param value in base units
 * @param written the entry's own amount, in `unit`
 */
export function saidOf(
	value: Exact,
	written: string,
	unit: Unit,
	fraction: boolean,
	{ kind, unit: lengthUnit }: Field
): string {
	const others = kind.dimension.shownIn(lengthUnit).filter((other) => other !== unit);
	return [written, ...others.map((other) => convertedText(value, other, fraction))].join(' ');
}

/** The rivet or drill that a size is: `, a −5 length`. */
export function nameText(value: Exact, fraction: boolean, { names }: Field): string {
	return names?.said(value, fraction) ?? '';
}

/** `= 12.7 mm`, or `≈ 3.264 mm` where the places shown do not hold the value. */
export function convertedText(value: Exact, unit: Unit, fraction: boolean): string {
	const number = value.div(unit.size);
	const asFraction = fraction && unit.symbol === 'in' && 64n % number.d === 0n;
	const sign = asFraction || endsWithin(number, placesOf(unit)) ? '=' : '≈';
	return `${sign} ${amountText(number, unit, asFraction, placesOf(unit))}`;
}
