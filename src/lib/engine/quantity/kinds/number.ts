import { dimension, type UnitRow } from '../units.ts';
import { measured, type NumberKind } from './measured.ts';
import { plain } from './plain.ts';

const things =
	'pc pcs piece pieces blank blanks ea each rivet rivets hole holes space spaces part parts row rows strip strips';

/** Numbers without a unit; a counted thing may be named behind one. */
export const plainNumbers = dimension({
	name: 'number',
	noun: 'a plain number',
	unit: '',
	formula: '',
	units: [['', 1n, 1n, things]],
	largest: 1e9
});

/** A number without unit, up to five places: a factor, a chart value. */
export const number = plain(
	measured({
		id: 'number',
		dimension: plainNumbers,
		noun: 'a plain number',
		hint: 'A number, with all its places.',
		example: '0.75 or 3/4',
		places: [0, 5]
	})
);

/** A number to two places at most, for what is only told: 1.35. */
export const hundredths = measured({
	id: 'hundredths',
	dimension: plainNumbers,
	noun: 'a plain number',
	hint: 'Two places.',
	example: '0.75 or 3/4',
	places: [0, 2]
});

/** How a number with a unit in words is written and read. */
interface Per {
	/** In full, as it stands behind a number: `rivets per inch`. */
	readonly unit: string;
	/** Other spellings, without spaces: `/in rivets/in`. */
	readonly spellings?: string;
	/** The base unit as mathjs writes it, where it has one: `in^-1`; else it is a plain number. */
	readonly formula?: string;
	readonly example: string;
	readonly places?: readonly [least: number, most: number];
}

/** A kind of numbers that go by a unit in words: rivets per inch, strokes per minute. */
export function numberPer({
	unit,
	spellings,
	formula = '',
	example,
	places = [0, 4]
}: Per): NumberKind {
	const row: UnitRow = [unit, 1n, 1n, `${spelt(unit)} ${spellings ?? ''}`.trim()];
	const withUnit = `a number of ${unit}`;
	return measured({
		id: unit.replaceAll(' ', '-'),
		dimension: dimension({
			name: unit,
			noun: withUnit,
			unit,
			formula,
			units: [row],
			spelt: (text) => text.replace(unit.toLowerCase(), spelt(unit))
		}),
		noun: withUnit,
		hint: `A number of ${unit}.`,
		example,
		places
	});
}

/** A unit of several words as the one word that the reader of numbers knows. */
function spelt(unit: string): string {
	return unit.toLowerCase().replace(/[^a-z]/g, '');
}
