import { ratio } from '../exact.ts';
import { dimension } from '../units.ts';
import { measured, type SizeNames } from './measured.ts';
import type { Mistakes } from './mistakes.ts';
import { plain } from './plain.ts';

/*
 * 1 in = 25.4 mm exactly: National Bureau of Standards, Federal Register notice 59-5442,
 * 1 July 1959.
 */

/** Lengths in inches. */
export const inches = dimension({
	name: 'length',
	noun: 'a length',
	unit: 'in',
	formula: 'in',
	literals: ['in', 'mm'],
	units: [
		['in', 1n, 1n, 'in inch inches "'],
		['ft', 12n, 1n, "ft foot feet '", 'in'],
		['mm', 5n, 127n, 'mm millimeter millimeters millimetre millimetres'],
		['cm', 50n, 127n, 'cm centimeter centimeters centimetre centimetres'],
		['m', 5000n, 127n, 'm meter meters metre metres'],
		['thou', 1n, 1000n, 'thou mil mils thousandth thousandths']
	],
	shownIn: (unit) =>
		(unit === 'mm' ? ['mm', 'in'] : ['in']).flatMap((symbol) =>
			inches.units.filter((one) => one.symbol === symbol)
		),
	spelt: (text) =>
		text
			.replace(/(thou|mils?|thousandths?) (?:of an )?in(?:ch)?$/, '$1')
			.replace(/[ /](64|32|16|8)(?:nds?|ths?)(?: (?:of an )?in(?:ch)?)?$/, '/$1 in')
			.replace(/ of an inch$/, ' in')
});

/** What may go wrong in every kind of length. */
export const lengthMistakes: Partial<Mistakes> = {
	units: [
		{
			id: 'mm-for-inch',
			factor: ratio(5n, 127n),
			says: 'That is the right size in millimetres, read as inches.',
			foreign: true
		},
		{
			id: 'inch-for-mm',
			factor: ratio(127n, 5n),
			says: 'That is the right size in inches, read as millimetres.',
			foreign: true
		},
		{
			id: 'thousandths',
			factor: ratio(1n, 1000n),
			says: 'That is the right size in thousandths; write it as inches.'
		},
		{
			id: 'sixteenths',
			factor: ratio(1n, 16n),
			says: 'That counts 16ths; write it in inches.'
		},
		{
			id: 'thirty-seconds',
			factor: ratio(1n, 32n),
			says: 'That counts 32nds; write it in inches.'
		}
	],
	coarse: [100, 10, 1, 64, 32, 16, 8],
	onTheWay: [100, 10, 16]
};

/** A drill may be named where a length is asked for. */
const names: SizeNames = { reading: ({ drillsNamed }) => drillsNamed };

/** What the kinds of length have in common. */
export const anyLength = {
	dimension: inches,
	noun: 'a length',
	hint: 'A fraction, decimal, mm, or the sum.',
	example: { in: '1/8 in or 0.125', mm: '3.2 mm or 1/8 in' },
	places: [3, 4],
	names,
	mistakes: lengthMistakes
} as const;

/** Decimal inches, at least three places: 0.050 in, 0.1875 in. */
export const length = plain(measured({ id: 'length', ...anyLength }));

/** The same in figures: the name of a drill would beg the question. */
export const lengthInFigures = measured({
	id: 'length-in-figures',
	...anyLength,
	names: { reading: ({ drillsInFigures }) => drillsInFigures }
});
