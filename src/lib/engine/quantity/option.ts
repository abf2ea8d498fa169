import { endsWithin, type Exact, ratio } from './exact.ts';
import { dashesPerInch } from './format.ts';
import type { Numeral } from './numeral.ts';
import type { Expected, Option } from './reading.ts';
import { amountText, lengthUnit, saidOf } from './said.ts';
import type { Unit } from './units.ts';

/** Places of a number that are shown back as written, and fractions that are. */
const writtenPlaces = 12;
const largestBottom = 10_000n;

/** A number read in a unit. */
export function inUnit(number: Numeral, unit: Unit, expected: Expected): Option {
	const value = number.value.mul(unit.size);
	const asFraction = number.form === 'fraction' || number.form === 'mixed';
	const fraction = asFraction && number.value.d < largestBottom;
	const about = fraction || endsWithin(number.value, writtenPlaces) ? '' : '≈ ';
	const written = about + amountText(number.value, unit, fraction, writtenPlaces);
	return {
		value,
		said: saidOf(value, written, unit, fraction, expected),
		grain: number.grain.mul(unit.size).valueOf(),
		...(number.note && { note: number.note })
	};
}

/** A size in inches that stands in a table. */
function listed(value: Exact, form: Numeral['form'], expected: Expected): Option {
	return inUnit({ value, form, grain: ratio(0n) }, lengthUnit('in'), expected);
}

/** A rivet's dash number, read as its size. */
export function dashOption(dash: Exact, expected: Expected): Option {
	const perInch = (expected.style && dashesPerInch[expected.style]) ?? 1;
	return listed(dash.div(perInch), 'fraction', expected);
}

/** A drill, read as its size: `No. 30, 0.1285 in`. */
export function drillOption(name: string, size: Exact, { kind, unit = 'in' }: Expected): Option {
	const option = listed(size, 'decimal', { kind, unit });
	return { ...option, said: `${name}, ${option.said}` };
}
