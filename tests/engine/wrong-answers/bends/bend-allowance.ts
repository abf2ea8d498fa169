import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	cutTo,
	decimal,
	hundredths,
	off,
	rounded,
	swapped
} from '../typed.ts';
import { allowanceOf, kOf } from './trigonometry.ts';

interface Given {
	readonly R: number;
	readonly T: number;
	readonly angle: number;
}

interface Right {
	readonly forRadius: number;
	readonly forThickness: number;
	readonly allowance: number;
}

const { common, rare } = rulesOf<Given, Right>('bend-allowance');

/** The two constants of FAA-H-8083-31B, ch. 4, p. 4-64. */
const [c, d] = [0.01743, 0.0078];

/** An arc of this radius. */
const arc = (radius: number, angle: number): number => (radius * angle * Math.PI) / 180;

/** Both terms and their sum in one check. */
const worked = (first: number, second: number): Typed => ({
	forRadius: decimal(first),
	forThickness: decimal(second),
	allowance: decimal(first + second)
});

export const rules = [
	common(
		'forRadius',
		'90° out of habit, in both terms',
		({ R, T, angle }) => (angle === 90 ? null : worked(c * R * 90, d * T * 90)),
		'squareForRadius',
		'squareForThickness'
	),
	common(
		'allowance',
		'the term of the radius only',
		({ R, angle }, { allowance }) => off(c * R * angle, allowance),
		'noT',
		'noneForThickness',
		'other-step:forRadius',
		'insideArc'
	),
	rare(
		'allowance',
		'the term of the sheet only',
		({ T, angle }, { allowance }) => off(d * T * angle, allowance),
		'other-step:forThickness'
	),
	common(
		'allowance',
		'for one degree: the angle left out',
		({ R, T }, { allowance }) =>
			off(c * R + d * T, allowance, (value) => `.${value.toFixed(5).slice(2)}`),
		'brackets+noT',
		'oneDegree'
	),
	common(
		'allowance',
		'for 90 degrees, as for most bends',
		({ R, T, angle }, { allowance }) =>
			angle === 90 ? null : off(allowanceOf(R, T, 90), allowance),
		'square'
	),
	common(
		'allowance',
		'for the angle between the legs',
		({ R, T, angle }, { allowance }) => off(allowanceOf(R, T, 180 - angle), allowance),
		'legs'
	),
	common(
		'allowance',
		'no brackets: the angle on the sheet only',
		({ R, T, angle }, right) => off(c * R + d * T * angle, right.allowance),
		'brackets'
	),
	rare(
		'allowance',
		'the angle on the radius only',
		({ R, T, angle }, { allowance }) => off(c * R * angle + d * T, allowance),
		'noT'
	),
	common(
		'allowance',
		'the constants changed places',
		({ R, T, angle }, { allowance }) => off((d * R + c * T) * angle, allowance),
		'swappedR+swappedT',
		'constantsSwapped'
	),
	common(
		'allowance',
		'the inside arc',
		({ R, angle }, { allowance }) => off(arc(R, angle), allowance),
		'noT',
		'noneForThickness',
		'insideArc'
	),
	common(
		'allowance',
		'the outside arc',
		({ R, T, angle }, { allowance }) => off(arc(R + T, angle), allowance),
		'outsideArc',
		'swappedT'
	),
	common(
		'allowance',
		'the arc at mid sheet, right by another formula',
		(given, { allowance }) => off(arc(given.R + given.T / 2, given.angle), allowance),
		'middle'
	),
	rare(
		'allowance',
		'0.0173, right by the navy formula',
		({ R, T, angle }, { allowance }) => off((0.0173 * R + d * T) * angle, allowance),
		'navy'
	),
	common(
		'allowance',
		'the setback',
		({ R, T, angle }, { allowance }) => off(kOf(angle) * (R + T), allowance),
		'setback'
	),
	rare(
		'allowance',
		'two setbacks',
		({ R, T, angle }, { allowance }) => off(2 * kOf(angle) * (R + T), allowance),
		'twoSetbacks'
	),
	rare(
		'allowance',
		'R + T and nothing else',
		({ R, T }, { allowance }) => off(R + T, allowance),
		'radiusAndT',
		({ angle }) => (angle === 90 ? 'setback' : '')
	),
	rare(
		'allowance',
		'both constants on the radius',
		({ R, angle }, { allowance }) => off((c + d) * R * angle, allowance),
		'radiusForThickness'
	),
	common(
		'allowance',
		'R + T for R: the radius taken outside',
		({ R, T, angle }, { allowance }) => off(allowanceOf(R + T, T, angle), allowance),
		'outside'
	),
	rare(
		'allowance',
		'the diameter of the bar for R',
		({ R, T, angle }, { allowance }) => off(allowanceOf(2 * R, T, angle), allowance),
		'diameter'
	),
	rare(
		'allowance',
		'half of the radius: takes R for a diameter',
		({ R, T, angle }, right) => off(allowanceOf(R / 2, T, angle), right.allowance),
		'halfRadius'
	),
	common(
		'allowance',
		'0.1743: a nought lost',
		({ R, T, angle }, { allowance }) => off((0.1743 * R + d * T) * angle, allowance),
		'radiusTenfold'
	),
	common(
		'allowance',
		'0.078: a nought lost',
		({ R, T, angle }, { allowance }) => off((c * R + 0.078 * T) * angle, allowance),
		'thicknessTenfold'
	),
	rare(
		'allowance',
		'0.00174: a nought too many',
		({ R, T, angle }, { allowance }) => off((0.001743 * R + d * T) * angle, allowance),
		'radiusTenth'
	),
	rare(
		'allowance',
		'0.01473: digits of the constant changed places',
		(given, { allowance }) => off((0.01473 * given.R + d * given.T) * given.angle, allowance),
		'radiusDigits'
	),
	rare(
		'allowance',
		'minus for plus',
		({ R, T, angle }, { allowance }) => off((c * R - d * T) * angle, allowance),
		'subtracted'
	),
	rare(
		'allowance',
		'half the angle, as in the setback',
		({ R, T, angle }, { allowance }) => off(allowanceOf(R, T, angle / 2), allowance),
		'halfAngle'
	),
	rare(
		'allowance',
		'the sheet ten times too thick: the point',
		({ R, T, angle }, { allowance }) => off(allowanceOf(R, 10 * T, angle), allowance),
		'thicknessTenfold'
	),
	rare(
		'allowance',
		'half of the sheet',
		({ R, T, angle }, { allowance }) => off(allowanceOf(R, T / 2, angle), allowance),
		'halfT'
	),
	common(
		'allowance',
		'two decimals are enough',
		(_, { allowance }) => coarse(allowance, hundredths),
		'rounding'
	),
	common(
		'allowance',
		'to the nearest 32nd of the scale',
		(_, { allowance }) => rounded(allowance, 32),
		'rounding'
	),
	rare(
		'allowance',
		'to the nearest sixteenth of the scale',
		(_, { allowance }) => rounded(allowance, 16),
		'rounding'
	),
	rare(
		'allowance',
		'to the nearest 64th of the scale',
		(_, { allowance }) => rounded(allowance, 64),
		'rounding'
	),
	rare(
		'allowance',
		'cut off behind two digits',
		(_, { allowance }) => coarse(allowance, cutTo(2)),
		'rounding'
	),
	rare(
		'allowance',
		'two digits changed places',
		(_, { allowance }) => swapped(allowance, decimal, 1),
		'digits'
	),
	rare(
		'allowance',
		'the point one place too far right',
		(_, { allowance }) => off(allowance * 10, allowance),
		'digits'
	),
	rare(
		'allowance',
		'millimetres, typed without the unit',
		(_, { allowance }) => bareMillimetres(allowance),
		'unit'
	),
	rare(
		'allowance',
		'two mistakes: between the legs, and no sheet',
		({ R, angle }, { allowance }) => off(c * R * (180 - angle), allowance),
		'legs+noT',
		'legsForRadius+noneForThickness'
	),
	rare('allowance', 'two mistakes: for 90 degrees, constants changed', ({ R, T, angle }, right) =>
		angle === 90 ? null : off((d * R + c * T) * 90, right.allowance)
	),
	common(
		'forRadius',
		'the constant of the sheet',
		({ R, angle }, { forRadius }) => off(d * R * angle, forRadius),
		'swappedR'
	),
	common(
		'forRadius',
		'the angle left out',
		({ R }, { forRadius }) => off(c * R, forRadius, (value) => `.${value.toFixed(5).slice(2)}`),
		'brackets'
	),
	rare(
		'forRadius',
		'for the angle between the legs',
		({ R, angle }, { forRadius }) => off(c * R * (180 - angle), forRadius),
		'legs',
		'legsForRadius'
	),
	rare(
		'forRadius',
		'a nought of the constant lost',
		(_, { forRadius }) => off(10 * forRadius, forRadius),
		'digits',
		'radiusTenfold'
	),
	rare(
		'forRadius',
		'R + T for R',
		({ R, T, angle }, { forRadius }) => off(c * (R + T) * angle, forRadius),
		'outside'
	),
	common(
		'forRadius',
		'the sum already here',
		(_, { forRadius, allowance }) => off(allowance, forRadius),
		'other-step:allowance'
	),
	common(
		'forThickness',
		'the constant of the radius',
		({ T, angle }, { forThickness }) => off(c * T * angle, forThickness),
		'swappedT'
	),
	common(
		'forThickness',
		'the angle left out',
		({ T }, { forThickness }) =>
			off(d * T, forThickness, (value) => `.${value.toFixed(5).slice(2)}`),
		'noT'
	),
	rare(
		'forThickness',
		'a nought of the constant lost',
		(_, { forThickness }) => off(10 * forThickness, forThickness),
		'digits',
		'thicknessTenfold'
	),
	rare(
		'forThickness',
		'for the angle between the legs',
		({ T, angle }, { forThickness }) => off(d * T * (180 - angle), forThickness),
		'legs',
		'legsForThickness'
	),
	rare(
		'forThickness',
		'two decimals are enough',
		(_, { forThickness }) => coarse(forThickness, hundredths),
		'rounding'
	),
	common(
		'forRadius',
		'the constants changed places, added up correctly',
		({ R, T, angle }) => worked(d * R * angle, c * T * angle),
		'swappedR',
		'swappedT',
		'swappedR+swappedT',
		'constantsSwapped'
	),
	common(
		'forRadius',
		'between the legs, added up correctly',
		({ R, T, angle }, right) =>
			off(180 - angle, angle) && off(c * R * (180 - angle), right.forRadius)
				? worked(c * R * (180 - angle), d * T * (180 - angle))
				: null,
		'legs',
		'legsForRadius',
		'legsForThickness'
	),
	common(
		'forThickness',
		'the angle left out of one term, added up',
		({ R, T, angle }) =>
			off(d * T * angle, d * T) && {
				...worked(c * R * angle, d * T),
				forThickness: `.${(d * T).toFixed(5).slice(2)}`
			},
		'noT'
	),
	rare(
		'forRadius',
		'a nought of the constant lost, added up',
		(_, right) => worked(10 * right.forRadius, right.forThickness),
		'digits',
		'radiusTenfold'
	),
	common(
		'forRadius',
		'the two terms each in the field of the other',
		(_, right) => ({
			forRadius: decimal(right.forThickness),
			forThickness: decimal(right.forRadius),
			allowance: decimal(right.allowance)
		}),
		'other-step'
	),
	rare(
		'allowance',
		'both terms right, subtracted',
		(_, { forRadius, forThickness }) => ({
			...worked(forRadius, forThickness),
			allowance: decimal(forRadius - forThickness)
		}),
		'subtracted'
	)
];
