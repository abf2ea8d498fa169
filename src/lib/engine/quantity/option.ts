import { endsWithin, type Exact, ratio } from './exact.ts';
import type { Numeral } from './numeral.ts';
import type { Field, Option } from './reading.ts';
import { amountText, nameText, saidOf } from './said.ts';
import type { Unit } from './units.ts';

/** Places of a number that are shown back as written, and fractions that are. */
const writtenPlaces = 12;
const largestBottom = 10_000n;

/** A number read in a unit. */
export function inUnit(number: Numeral, unit: Unit, field: Field): Option {
	const option = amountIn(number, unit, field);
	return { ...option, said: option.said + nameText(option.value, isFraction(number), field) };
}

/** The same, without the rivet or drill that the size is. */
export function amountIn(number: Numeral, unit: Unit, field: Field): Option {
	const value = number.value.mul(unit.size);
	const fraction = isFraction(number);
	const about = fraction || endsWithin(number.value, writtenPlaces) ? '' : '≈ ';
	const written = about + amountText(number.value, unit, fraction, writtenPlaces);
	return {
		value,
		said: saidOf(value, written, unit, fraction, field),
		grain: number.grain.mul(unit.size).valueOf(),
		...(number.note && { note: number.note })
	};
}

function isFraction({ form, value }: Numeral): boolean {
	return (form === 'fraction' || form === 'mixed') && value.d < largestBottom;
}

/** A size that stands in a table, exact. */
export function listed(value: Exact, form: Numeral['form']): Numeral {
	return { value, form, grain: ratio(0n) };
}
