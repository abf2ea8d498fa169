import { fraction, length, number } from '../../quantity/kinds.ts';
import { source } from '../source.ts';
import { byLength } from '../table/axis.ts';
import { holding, measure, measures, table } from '../table/table.ts';
import { asNumber, places } from '../table/writing.ts';

const sizes = Array.from({ length: 64 }, (_, i) => (i + 1) / 64);

/** Fractions of an inch by 64ths as decimals, and in millimetres: worked, not printed anywhere. */
export const decimalEquivalents = table({
	id: 'decimal-equivalents',
	title: 'Decimal equivalents of 64ths of an inch',
	topic: 'holes',
	called: 'the decimal equivalents',
	source: source('none', '25.4 mm to the inch', 'worked'),
	rows: byLength('Fraction', sizes, { write: asNumber(fraction) }),
	...measures({
		decimal: measure('Inches', holding<number>(length, places(6))),
		metric: measure('mm', holding<number>(number, places(4)))
	}),
	// Rounded here: in floating point some halves would be cut off.
	cells: sizes.map((size) => [size, Math.round(size * 254_000) / 1e4])
});
