import { rulesOf } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	cutTo,
	decimal,
	fractionOf,
	hundredths,
	list,
	nearest,
	off,
	onScale,
	sum,
	swapped
} from '../typed.ts';
import { allowanceOf, kOf, tan } from './trigonometry.ts';

interface Given {
	readonly R: number;
	readonly T: number;
	readonly legs: readonly number[];
	readonly angles: readonly number[];
}

interface Right {
	readonly flats: readonly number[];
	readonly allowances: readonly number[];
	readonly width: number;
}

const { common, rare } = rulesOf<Given, Right>('developed-width');

const setbacksOf = ({ R, T, angles }: Given): readonly number[] =>
	angles.map((angle) => kOf(angle) * (R + T));
const allowancesOf = ({ R, T, angles }: Given): readonly number[] =>
	angles.map((angle) => allowanceOf(R, T, angle));

/** Each leg less what the bends at its ends take. */
const flatsBy = ({ legs }: Given, setbacks: readonly number[]): readonly number[] =>
	legs.map((leg, at) => leg - (setbacks[at - 1] ?? 0) - (setbacks[at] ?? 0));

/** The width by other setbacks and other allowances. */
const widthBy = (
	given: Given,
	setbacks: readonly number[],
	allowances: readonly number[] = allowancesOf(given)
): number => sum(flatsBy(given, setbacks)) + sum(allowances);

const between = (angles: readonly number[]): readonly number[] =>
	angles.map((angle) => 180 - angle);
const square = (angles: readonly number[]): boolean => angles.every((angle) => angle === 90);

/** All three fields in one check. */
const worked = (flats: readonly number[], allowances: readonly number[]) => ({
	flats: list(flats, decimal),
	allowances: list(allowances, decimal),
	width: decimal(sum(flats) + sum(allowances))
});

export const rules = [
	common(
		'width',
		'the legs added: the bends forgotten',
		({ legs }, { width }) => off(sum(legs), width),
		'sum'
	),
	common(
		'width',
		'the flats only, no allowance',
		(given, { width }) => off(sum(flatsBy(given, setbacksOf(given))), width),
		'noAllowance'
	),
	common(
		'width',
		'legs and allowances, no setback',
		(given, { width }) => off(sum(given.legs) + sum(allowancesOf(given)), width),
		'moldLines'
	),
	common(
		'width',
		'one setback a bend, not two',
		(given, { width }) =>
			off(sum(given.legs) - sum(setbacksOf(given)) + sum(allowancesOf(given)), width),
		'halfSetback'
	),
	common(
		'width',
		'one setback in all',
		(given, { width }) =>
			given.angles.length === 1
				? null
				: off(sum(given.legs) - (setbacksOf(given)[0] ?? 0) + sum(allowancesOf(given)), width),
		'oneSetback'
	),
	common(
		'width',
		'one allowance for all bends',
		(given, { width }) =>
			given.angles.length === 1
				? null
				: off(widthBy(given, setbacksOf(given), allowancesOf(given).slice(0, 1)), width),
		'oneAllowance'
	),
	rare(
		'width',
		'an allowance for every leg',
		(given, { width }) => {
			const [one = 0, ...others] = allowancesOf(given);
			return off(widthBy(given, setbacksOf(given), [one, one, ...others]), width);
		},
		'allowancePerLeg'
	),
	common(
		'width',
		'one setback for each leg, also for those in the middle',
		(given, { width }) =>
			given.angles.length === 1
				? null
				: off(
						sum(given.legs) -
							given.legs.length * (setbacksOf(given)[0] ?? 0) +
							sum(allowancesOf(given)),
						width
					),
		'once'
	),
	common(
		'width',
		'the allowance subtracted',
		(given, { width }) =>
			off(sum(flatsBy(given, setbacksOf(given))) - sum(allowancesOf(given)), width),
		'allowanceOff'
	),
	common(
		'width',
		'the allowance taken off the legs',
		(given, { width }) => off(sum(given.legs) - sum(allowancesOf(given)), width),
		'allowance'
	),
	common(
		'width',
		'two sheets off the legs at each bend',
		({ legs, T, angles }, { width }) => off(sum(legs) - 2 * T * angles.length, width),
		'inside+noAllowance',
		'lessTwoT'
	),
	rare(
		'width',
		'one sheet off the legs at each bend',
		({ legs, T, angles }, { width }) => off(sum(legs) - T * angles.length, width),
		'lessOneT'
	),
	common(
		'width',
		'R alone for the setback',
		(given, { width }) =>
			off(
				widthBy(
					given,
					given.angles.map((angle) => kOf(angle) * given.R)
				),
				width
			),
		'noT'
	),
	rare(
		'width',
		'T alone for the setback',
		(given, { width }) =>
			off(
				widthBy(
					given,
					given.angles.map((angle) => kOf(angle) * given.T)
				),
				width
			),
		'inside',
		'noR'
	),
	common(
		'width',
		'R + T for the setback, K left out',
		(given, { width }) =>
			off(
				widthBy(
					given,
					given.angles.map(() => given.R + given.T)
				),
				width
			),
		'square'
	),
	common(
		'width',
		'K of the angle between the legs',
		(given, { width }) =>
			off(widthBy(given, setbacksOf({ ...given, angles: between(given.angles) })), width),
		'legs'
	),
	common(
		'width',
		'the angle between the legs all through',
		(given, { width }) => {
			const other = { ...given, angles: between(given.angles) };
			return off(widthBy(other, setbacksOf(other)), width);
		},
		'allowLegs+legs'
	),
	rare(
		'width',
		'the tangent of the whole angle',
		(given, { width }) =>
			square(given.angles)
				? null
				: off(
						widthBy(
							given,
							given.angles.map((a) => Math.abs(tan(a)) * (given.R + given.T))
						),
						width
					),
		'whole'
	),
	common(
		'width',
		'the allowance without the sheet',
		(given, { width }) =>
			off(
				widthBy(
					given,
					setbacksOf(given),
					given.angles.map((angle) => 0.01743 * given.R * angle)
				),
				width
			),
		'allowNoT'
	),
	common(
		'width',
		'the allowance for 90 degrees',
		(given, { width }) =>
			square(given.angles)
				? null
				: off(
						widthBy(
							given,
							setbacksOf(given),
							allowancesOf({ ...given, angles: given.angles.map(() => 90) })
						),
						width
					),
		'allowSquare'
	),
	common(
		'width',
		'the setback for the allowance',
		(given, { width }) => off(widthBy(given, setbacksOf(given), setbacksOf(given)), width),
		'allowSetback'
	),
	rare(
		'width',
		'the allowance for the setback',
		(given, { width }) => off(widthBy(given, allowancesOf(given)), width),
		'allowance'
	),
	rare(
		'width',
		'the inside arc for the allowance',
		(given, { width }) =>
			off(
				widthBy(
					given,
					setbacksOf(given),
					given.angles.map((angle) => (given.R * angle * Math.PI) / 180)
				),
				width
			),
		'allowNoT',
		'allowInnerArc'
	),
	rare(
		'width',
		'the outside arc for the allowance',
		(given, { width }) =>
			off(
				widthBy(
					given,
					setbacksOf(given),
					given.angles.map((angle) => ((given.R + given.T) * angle * Math.PI) / 180)
				),
				width
			),
		'allowOuterArc',
		'allowOutside'
	),
	rare(
		'width',
		'the arc at mid sheet, right by another formula',
		(given, { width }) =>
			off(
				widthBy(
					given,
					setbacksOf(given),
					given.angles.map((angle) => ((given.R + given.T / 2) * angle * Math.PI) / 180)
				),
				width
			),
		'allowMiddle'
	),
	rare(
		'width',
		'the setbacks added',
		(given, { width }) =>
			off(
				widthBy(
					given,
					setbacksOf(given).map((setback) => -setback)
				),
				width
			),
		'added'
	),
	common(
		'width',
		'a leg left out',
		({ legs, ...given }, { width }) =>
			legs.length === 2
				? null
				: off(
						widthBy({ ...given, legs }, setbacksOf({ ...given, legs })) - (legs.at(-1) ?? 0),
						width
					),
		'legLeftOut'
	),
	rare(
		'width',
		'the bend angle left out of the allowance',
		(given, { width }) =>
			off(
				widthBy(
					given,
					setbacksOf(given),
					given.angles.map(() => 0.01743 * given.R + 0.0078 * given.T)
				),
				width
			),
		'allowOneDegree'
	),
	rare(
		'width',
		'R and T of the allowance changed places',
		(given, { width }) =>
			off(
				widthBy(
					given,
					setbacksOf(given),
					given.angles.map((angle) => allowanceOf(given.T, given.R, angle))
				),
				width
			),
		'allowSwapped'
	),
	common(
		'width',
		'to the nearest sixteenth of the scale',
		(_, { width }) => onScale(width, 16),
		'rounding'
	),
	common(
		'width',
		'two decimals are enough',
		(_, { width }) => coarse(width, hundredths),
		'rounding'
	),
	rare(
		'width',
		'setback and allowance rounded to hundredths first',
		(given, { width }) =>
			off(
				widthBy(
					given,
					setbacksOf(given).map((value) => nearest(value, 100)),
					allowancesOf(given).map((value) => nearest(value, 100))
				),
				width
			),
		'rounding'
	),
	rare('width', 'cut off behind two digits', (_, { width }) => coarse(width, cutTo(2)), 'rounding'),
	rare(
		'width',
		'two digits changed places',
		(_, { width }) => swapped(width, decimal, 1),
		'digits'
	),
	rare(
		'width',
		'millimetres, typed without the unit',
		(_, { width }) => bareMillimetres(width),
		'unit'
	),
	rare(
		'width',
		'the deduction of one bend for all',
		(given, { width }) =>
			given.angles.length === 1
				? null
				: off(
						sum(given.legs) - 2 * (setbacksOf(given)[0] ?? 0) + (allowancesOf(given)[0] ?? 0),
						width
					),
		'oneDeduction'
	),
	rare(
		'width',
		'two mistakes: R for the setback, no sheet in the allowance',
		(given, right) =>
			off(
				widthBy(
					given,
					given.angles.map((angle) => kOf(angle) * given.R),
					given.angles.map((angle) => 0.01743 * given.R * angle)
				),
				right.width
			),
		'allowNoT+noT'
	),
	common('flats', 'the legs as they are', ({ legs }) => list(legs, decimal), 'moldLines'),
	common(
		'flats',
		'one setback from every leg, also in the middle',
		(given) =>
			given.angles.length === 1
				? null
				: list(
						given.legs.map((leg) => leg - (setbacksOf(given)[0] ?? 0)),
						decimal
					),
		'once'
	),
	common(
		'flats',
		'two setbacks from every leg, also at the ends',
		(given) =>
			list(
				given.legs.map((leg) => leg - 2 * (setbacksOf(given)[0] ?? 0)),
				decimal
			),
		'twice'
	),
	common(
		'flats',
		'R + T for the setback, K left out',
		(given) =>
			square(given.angles)
				? null
				: list(
						flatsBy(
							given,
							given.angles.map(() => given.R + given.T)
						),
						decimal
					),
		'square'
	),
	common(
		'flats',
		'R alone for the setback',
		(given) =>
			list(
				flatsBy(
					given,
					given.angles.map((angle) => kOf(angle) * given.R)
				),
				decimal
			),
		'noT'
	),
	common(
		'flats',
		'K of the angle between the legs',
		(given) =>
			square(given.angles)
				? null
				: list(flatsBy(given, setbacksOf({ ...given, angles: between(given.angles) })), decimal),
		'legs'
	),
	rare(
		'flats',
		'the setbacks added',
		(given) =>
			list(
				flatsBy(
					given,
					setbacksOf(given).map((setback) => -setback)
				),
				decimal
			),
		'added'
	),
	common(
		'flats',
		'the setbacks, not the flats',
		(given) => list(setbacksOf(given), decimal),
		'other-step:setbacks',
		// As many are taken from the legs, one from each.
		({ legs }) => (legs.length === 2 ? 'other-step:taken' : '')
	),
	common(
		'flats',
		'the first one only: the others go alike',
		(_, { flats }) => decimal(flats[0] ?? 0),
		'half-list',
		'order'
	),
	rare('flats', 'the flats added up', (_, { flats }) => decimal(sum(flats)), 'order'),
	rare(
		'flats',
		'the allowance taken off the legs',
		(given) => list(flatsBy(given, allowancesOf(given)), decimal),
		'allowance'
	),
	rare('flats', 'rounded to sixteenths', (_, { flats }) => list(flats, fractionOf(16)), 'rounding'),
	rare(
		'flats',
		'parted by spaces, and the setback R alone',
		(given) =>
			list(
				flatsBy(
					given,
					given.angles.map((angle) => kOf(angle) * given.R)
				),
				decimal,
				' '
			),
		'noT'
	),
	common(
		'allowances',
		'the term of the radius only',
		({ R, angles }) =>
			list(
				angles.map((angle) => 0.01743 * R * angle),
				decimal
			),
		'allowNoT'
	),
	common(
		'allowances',
		'for 90 degrees',
		(given) =>
			square(given.angles)
				? null
				: list(allowancesOf({ ...given, angles: given.angles.map(() => 90) }), decimal),
		'allowSquare'
	),
	common(
		'allowances',
		'for the angle between the legs',
		(given) =>
			square(given.angles)
				? null
				: list(allowancesOf({ ...given, angles: between(given.angles) }), decimal),
		'allowLegs'
	),
	common(
		'allowances',
		'the setbacks',
		(given) => list(setbacksOf(given), decimal),
		'allowSetback',
		'other-step:setbacks'
	),
	common(
		'allowances',
		'all of them added up',
		(_, { allowances }) => (allowances.length === 1 ? null : decimal(sum(allowances))),
		'order'
	),
	common(
		'allowances',
		'one for all bends alike',
		(_, { allowances }) => (allowances.length === 1 ? null : decimal(allowances[0] ?? 0)),
		'half-list',
		'order'
	),
	rare(
		'allowances',
		'R and T changed places',
		({ R, T, angles }) =>
			list(
				angles.map((angle) => allowanceOf(T, R, angle)),
				decimal
			),
		'allowSwapped'
	),
	common(
		'flats',
		'no K, carried on correctly',
		(given) =>
			square(given.angles)
				? null
				: worked(
						flatsBy(
							given,
							given.angles.map(() => given.R + given.T)
						),
						allowancesOf(given)
					),
		'square'
	),
	common(
		'flats',
		'R alone for the setback, carried on correctly',
		(given) =>
			worked(
				flatsBy(
					given,
					given.angles.map((angle) => kOf(angle) * given.R)
				),
				allowancesOf(given)
			),
		'noT'
	),
	common(
		'allowances',
		'the sheet left out, carried on correctly',
		(given) =>
			worked(
				flatsBy(given, setbacksOf(given)),
				given.angles.map((angle) => 0.01743 * given.R * angle)
			),
		'allowNoT'
	),
	common(
		'flats',
		'between the legs all through',
		(given) => {
			const other = { ...given, angles: between(given.angles) };
			return square(given.angles)
				? null
				: worked(flatsBy(other, setbacksOf(other)), allowancesOf(other));
		},
		'legs',
		'allowLegs',
		'allowLegs+legs'
	),
	common(
		'width',
		'flats and allowances right, the allowances forgotten',
		(_, right) => ({
			...worked(right.flats, right.allowances),
			width: decimal(sum(right.flats))
		}),
		'noAllowance'
	),
	common(
		'width',
		'flats and allowances right, one allowance for all',
		(_, right) =>
			right.allowances.length === 1
				? null
				: {
						...worked(right.flats, right.allowances),
						width: decimal(sum(right.flats) + (right.allowances[0] ?? 0))
					},
		'oneAllowance'
	),
	rare(
		'flats',
		'two mistakes: R alone, and the sheet left out',
		(given) =>
			worked(
				flatsBy(
					given,
					given.angles.map((angle) => kOf(angle) * given.R)
				),
				given.angles.map((angle) => 0.01743 * given.R * angle)
			),
		'noT',
		'allowNoT'
	)
];
