import { rulesOf } from '../rule.ts';
import {
	bareMillimetres,
	dash,
	decimal,
	fraction,
	off,
	rounded,
	swapped,
	thousandths
} from '../typed.ts';
import { nearestRivet, rivetBeside, rivetFor } from './sizes.ts';

interface Given {
	readonly thickest: number;
}

interface Right {
	readonly threeT: number;
	readonly diameter: number;
	/** Where the rivet within 2.5T to 3T and the one above are asked for. */
	readonly inRange: number;
	readonly above: number;
}

const { common, rare } = rulesOf<Given, Right>('rivet-diameter');

export const rules = [
	common(
		'diameter',
		'the rivet nearest to 3T, a hair under it',
		({ thickest }, { diameter }) => off(nearestRivet(3 * thickest), diameter, fraction),
		'down',
		'nearest'
	),
	common(
		'diameter',
		'the next rivet down: a smaller hole weakens less',
		(_, { diameter }) => off(rivetBeside(diameter, -1), diameter, fraction),
		'down'
	),
	common(
		'diameter',
		'one size more, to be on the safe side',
		(_, { diameter }) => off(rivetBeside(diameter, 1), diameter, fraction),
		'oneMore'
	),
	common(
		'diameter',
		'stops at 3T and types that',
		({ thickest }, { diameter }) => off(3 * thickest, diameter),
		'notStocked',
		'other-step:threeT'
	),
	common(
		'diameter',
		'three times both sheets: there are two',
		({ thickest }, { diameter }) => off(rivetFor(6 * thickest), diameter, fraction),
		'bothSheets'
	),
	rare(
		'diameter',
		'as thick as both sheets, no factor',
		({ thickest }, { diameter }) => off(rivetFor(2 * thickest), diameter, fraction),
		'twoT'
	),
	common(
		'diameter',
		'1/16 in for thin sheet: the least of 3/32 in forgotten',
		({ thickest }) => (3 * thickest <= 1 / 16 ? '1/16' : null),
		'tooSmall'
	),
	rare(
		'diameter',
		'2.5 T, the low end on the same page',
		({ thickest }, { diameter }) => off(rivetFor(2.5 * thickest), diameter, fraction),
		'twoAndHalfT'
	),
	rare(
		'diameter',
		'4T, mixed up with the greatest edge distance',
		({ thickest }, { diameter }) => off(rivetFor(4 * thickest), diameter, fraction),
		'fourT'
	),
	rare(
		'diameter',
		'the dash number counted in sixteenths',
		(_, { diameter }) => dash(diameter * 16),
		'dashOf16ths'
	),
	common(
		'diameter',
		'thinks of the dash number and writes it over 16',
		(_, { diameter }) => off(diameter * 2, diameter, fraction),
		'in16ths'
	),
	rare(
		'diameter',
		'the thickness itself',
		({ thickest }, { diameter }) => off(thickest, diameter, thousandths),
		'oneT',
		'other-step:thickest',
		'notStocked+oneT'
	),
	common('diameter', 'the rule and not the size', () => '3T', 'factor'),
	rare(
		'diameter',
		'two digits changed places',
		(_, { diameter }) => swapped(diameter, decimal, 1),
		'digits'
	),
	common(
		'threeT',
		'twice the sheet: there are two of them',
		({ thickest }, { threeT }) => off(2 * thickest, threeT, thousandths),
		'twoT'
	),
	common(
		'threeT',
		'three times both sheets',
		({ thickest }, { threeT }) => off(6 * thickest, threeT, thousandths),
		'bothSheets'
	),
	rare(
		'threeT',
		'the sheet itself',
		({ thickest }, { threeT }) => off(thickest, threeT, thousandths),
		'oneT'
	),
	common('threeT', 'the factor for the size', () => '3', 'factor'),
	rare('threeT', 'the rule for the size', () => '3T', 'factor'),
	common(
		'threeT',
		'the point one place too far right',
		(_, { threeT }) => off(threeT * 10, threeT),
		'digits'
	),
	rare(
		'threeT',
		'the point one place too far left',
		(_, { threeT }) => off(threeT / 10, threeT),
		'digits'
	),
	rare(
		'threeT',
		'read off as the nearest sixteenth',
		(_, { threeT }) => rounded(threeT, 16),
		'rounding'
	),
	common(
		'threeT',
		'millimetres, typed without the unit',
		(_, { threeT }) => bareMillimetres(threeT),
		'unit'
	),
	common(
		'threeT',
		'the rivet in the field of 3T',
		(_, { threeT, diameter }) => off(diameter, threeT, fraction),
		'other-step:diameter'
	),
	rare(
		'threeT',
		'two digits changed places',
		(_, { threeT }) => swapped(threeT, thousandths, 1),
		'digits'
	),
	rare(
		'threeT',
		'each in the field of the other',
		(_, { threeT, diameter }) =>
			off(threeT, diameter) && { threeT: fraction(diameter), diameter: thousandths(threeT) },
		'other-step',
		'notStocked'
	),
	common(
		'threeT',
		'three times both sheets, and the rivet for that',
		({ thickest }) => {
			const rivet = rivetFor(6 * thickest);
			return Number.isNaN(rivet)
				? null
				: { threeT: thousandths(6 * thickest), diameter: fraction(rivet) };
		},
		'bothSheets'
	),
	rare(
		'threeT',
		'twice the sheet, and the rivet for that',
		({ thickest }) => ({
			threeT: thousandths(2 * thickest),
			diameter: fraction(rivetFor(2 * thickest))
		}),
		'twoT'
	),
	common(
		'diameter',
		'3T right, then the nearest rivet',
		({ thickest }, { threeT, diameter }) => {
			const rivet = off(nearestRivet(3 * thickest), diameter, fraction);
			return rivet && { threeT: thousandths(threeT), diameter: rivet };
		},
		'down',
		'nearest'
	),
	common(
		'diameter',
		'3T right, then the next rivet down',
		(_, { threeT, diameter }) => {
			const rivet = off(rivetBeside(diameter, -1), diameter, fraction);
			return rivet && { threeT: thousandths(threeT), diameter: rivet };
		},
		'down'
	),
	common(
		'inRange',
		'the next bin above 3T, as always',
		(_, { above, inRange }) => off(above, inRange, fraction),
		'aboveForRange',
		'other-step:above'
	),
	common(
		'inRange',
		'the next 1/32 in above 3T, which no bin holds',
		({ thickest }, { inRange, above }) => {
			const next = Math.ceil(96 * thickest - 1e-9) / 32;
			return next === above ? null : off(next, inRange, fraction);
		},
		'next32nd',
		'unstockedAbove'
	),
	common(
		'above',
		'the next 1/32 in above 3T, without a look at the bins',
		({ thickest }, { above }) => off(Math.ceil(96 * thickest - 1e-9) / 32, above, fraction),
		'unstockedAbove'
	),
	common(
		'above',
		'the rivet within the range once more',
		(_, { above, inRange }) => off(inRange, above, fraction),
		'rangeForAbove',
		'other-step:inRange'
	),
	rare(
		'inRange',
		'stops at 3T',
		(_, { threeT, inRange }) => off(threeT, inRange, thousandths),
		'highEnd',
		'other-step:threeT'
	)
];
