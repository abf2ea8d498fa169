import { rulesOf, type Typed } from '../rule.ts';
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

/** A wrong 3T and the rivet for it. */
function rivetBy(threeT: number, right: Right): Typed | null {
	const rivet = rivetFor(threeT);
	if (off(threeT, right.threeT) === null || Number.isNaN(rivet)) return null;
	return { threeT: thousandths(threeT), diameter: fraction(rivet) };
}

/** 3T right, and a wrong rivet for it. */
function wrongRivet(rivet: string | null, right: Right): Typed | null {
	return rivet === null ? null : { threeT: thousandths(right.threeT), diameter: rivet };
}

function inFieldOf3T(rivet: string | null): Typed | null {
	return rivet === null ? null : { threeT: rivet };
}

export const rules = [
	common(
		'diameter',
		'the rivet nearest to 3T, a hair under it',
		(_, right) => wrongRivet(off(nearestRivet(right.threeT), right.diameter, fraction), right),
		'down',
		'nearest'
	),
	common(
		'diameter',
		'the next rivet down: a smaller hole weakens less',
		(_, right) => wrongRivet(off(rivetBeside(right.diameter, -1), right.diameter, fraction), right),
		'down'
	),
	common(
		'diameter',
		'one size more, to be on the safe side',
		(_, right) => wrongRivet(off(rivetBeside(right.diameter, 1), right.diameter, fraction), right),
		'oneMore'
	),
	common(
		'diameter',
		'stops at 3T and types that',
		(_, right) => wrongRivet(off(right.threeT, right.diameter), right),
		'notStocked',
		'other-step:threeT'
	),
	common(
		'threeT',
		'three times both sheets: there are two',
		({ thickest }, right) => rivetBy(6 * thickest, right),
		'bothSheets'
	),
	rare(
		'threeT',
		'as thick as both sheets, no factor',
		({ thickest }, right) => rivetBy(2 * thickest, right),
		'twoT'
	),
	common(
		'diameter',
		'1/16 in for thin sheet: the least of 3/32 in forgotten',
		(_, right) => (right.threeT <= 1 / 16 ? wrongRivet('1/16', right) : null),
		'tooSmall'
	),
	rare(
		'threeT',
		'2.5 T, the low end on the same page',
		({ thickest }, right) => rivetBy(2.5 * thickest, right),
		'twoAndHalfT'
	),
	rare(
		'threeT',
		'4T, mixed up with the greatest edge distance',
		({ thickest }, right) => rivetBy(4 * thickest, right),
		'fourT'
	),
	rare(
		'diameter',
		'the dash number counted in sixteenths',
		(_, right) => wrongRivet(dash(right.diameter * 16), right),
		'dashOf16ths'
	),
	common(
		'diameter',
		'thinks of the dash number and writes it over 16',
		(_, right) => wrongRivet(fraction(right.diameter * 2), right),
		'in16ths'
	),
	rare(
		'diameter',
		'the thickness itself',
		({ thickest }, right) => wrongRivet(off(thickest, right.diameter, thousandths), right),
		'oneT',
		'other-step:thickest',
		'notStocked+oneT'
	),
	common('diameter', 'the rule and not the size', (_, right) => wrongRivet('3T', right), 'factor'),
	rare(
		'diameter',
		'two digits changed places',
		(_, right) => wrongRivet(swapped(right.diameter, decimal, 1), right),
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
		'diameter',
		'the rivet in the field of 3T',
		(_, { threeT, diameter }) => inFieldOf3T(off(diameter, threeT, fraction)),
		'other-step:diameter'
	),
	rare(
		'threeT',
		'two digits changed places',
		(_, { threeT }) => swapped(threeT, thousandths, 1),
		'digits'
	),
	rare(
		'diameter',
		'each in the field of the other',
		(_, { threeT, diameter }) =>
			off(threeT, diameter) && { threeT: fraction(diameter), diameter: thousandths(threeT) },
		'other-step',
		'notStocked'
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
