import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	cutTo,
	decimal,
	fraction,
	hundredths,
	number,
	off,
	rounded,
	swapped
} from '../typed.ts';
import { allowanceOf, kOf, kTyped, tan } from './trigonometry.ts';

interface Given {
	readonly R: number;
	readonly T: number;
	readonly betweenLegs: number;
}

interface Right {
	readonly angle: number;
	readonly K: number;
	readonly setback: number;
}

const { common, rare } = rulesOf<Given, Right>('setback-from-legs');

/** All three in one check, K and setback following from an angle. */
const worked = ({ R, T }: Given, angle: number, right: Right): Typed | null =>
	off(angle, right.angle) === null
		? null
		: {
				angle: number(angle),
				K: kTyped(kOf(angle)),
				setback: decimal(kOf(angle) * (R + T))
			};

/** Angle right, then K and setback from that K. */
const fromK = ({ R, T }: Given, K: number, right: Right): Typed | null =>
	off(K, right.K) === null
		? null
		: {
				angle: number(right.angle),
				K: kTyped(K),
				setback: decimal(K * (R + T))
			};

export const rules = [
	common(
		'angle',
		'the angle between the legs as it is',
		({ betweenLegs }, { angle }) => off(betweenLegs, angle, number),
		'legs'
	),
	common(
		'angle',
		'the difference to 90',
		({ betweenLegs }, { angle }) => off(Math.abs(90 - betweenLegs), angle, number),
		'fromSquare'
	),
	common(
		'angle',
		'half of it',
		({ betweenLegs }, { angle }) => off(betweenLegs / 2, angle, number),
		'halfBetween'
	),
	rare(
		'angle',
		'half of what it is bent',
		(_, { angle }) => off(angle / 2, angle, number),
		'halfBend'
	),
	rare('angle', 'the difference to 360', ({ betweenLegs }) => number(360 - betweenLegs), 'from360'),
	rare('angle', 'ten out when taking it from 180', (_, { angle }) => number(angle + 10), 'tenMore'),
	rare(
		'angle',
		'ten short when taking it from 180',
		(_, { angle }) => number(angle - 10),
		'tenLess'
	),
	common(
		'angle',
		'added to 90',
		({ betweenLegs }, { angle }) => off(90 + betweenLegs, angle, number),
		'added90'
	),
	common('angle', 'square, as most bends are', (_, { angle }) => off(90, angle, number), 'square'),
	rare(
		'angle',
		'twice the difference to 90',
		({ betweenLegs }, { angle }) => off(2 * Math.abs(90 - betweenLegs), angle, number),
		'twiceFromSquare'
	),
	rare(
		'angle',
		'two digits changed places',
		(_, { angle }) => {
			const digits = [...number(angle)].reverse().join('');
			return angle < 100 ? off(Number(digits), angle, number) : null;
		},
		'digits'
	),
	rare('angle', 'the bevel read five degrees out', (_, { angle }) => number(angle + 5)),
	rare('angle', 'added to 180', ({ betweenLegs }) => number(180 + betweenLegs), 'added180'),
	common(
		'setback',
		'K of the angle between the legs',
		({ R, T, betweenLegs }, { setback }) => off(kOf(betweenLegs) * (R + T), setback),
		'legs',
		'K.legs'
	),
	common(
		'setback',
		'R + T, K left out',
		({ R, T }, { setback }) => off(R + T, setback),
		'K.square',
		'square'
	),
	common(
		'setback',
		'the tangent of the whole angle',
		({ R, T }, { angle, setback }) =>
			angle === 90 ? null : off(Math.abs(tan(angle)) * (R + T), setback),
		'whole'
	),
	common(
		'setback',
		'K of the difference to 90',
		({ R, T, betweenLegs }, { setback }) => off(kOf(Math.abs(90 - betweenLegs)) * (R + T), setback),
		'fromSquare'
	),
	common('setback', 'the radius alone', ({ R }, { K, setback }) => off(K * R, setback), 'noT'),
	common(
		'setback',
		'K on the radius only: K R + T',
		({ R, T }, { K, setback }) => off(K * R + T, setback),
		'brackets'
	),
	common('setback', 'R minus T', ({ R, T }, { K, setback }) => off(K * (R - T), setback), 'minusT'),
	common(
		'setback',
		'R + T/2',
		({ R, T }, { K, setback }) => off(K * (R + T / 2), setback),
		'middle'
	),
	rare('setback', 'R + 2T', ({ R, T }, { K, setback }) => off(K * (R + 2 * T), setback), 'twoT'),
	rare(
		'setback',
		'the diameter of the bar: 2R + T',
		({ R, T }, { K, setback }) => off(K * (2 * R + T), setback),
		'diameter'
	),
	common(
		'setback',
		'the bend allowance',
		({ R, T }, { angle, setback }) => off(allowanceOf(R, T, angle), setback),
		'allowance'
	),
	rare(
		'setback',
		'the allowance for the angle between the legs',
		(given, { setback }) => off(allowanceOf(given.R, given.T, given.betweenLegs), setback),
		'allowance+legs'
	),
	common('setback', 'two setbacks', (_, { setback }) => off(2 * setback, setback), 'doubled'),
	rare(
		'setback',
		'by the share of 90 degrees',
		({ R, T }, { angle, setback }) => off((angle / 90) * (R + T), setback),
		'share'
	),
	rare(
		'setback',
		'the calculator in radians',
		({ R, T }, { angle, setback }) => off(Math.abs(Math.tan(angle / 2)) * (R + T), setback),
		'inRadians'
	),
	common(
		'setback',
		'K from the row below in the chart',
		({ R, T }, { angle, setback }) => off(kOf(angle + 1) * (R + T), setback),
		'rowAfter'
	),
	rare(
		'setback',
		'two decimals are enough',
		(_, { setback }) => coarse(setback, hundredths),
		'rounding'
	),
	common(
		'setback',
		'to the nearest 32nd of the scale',
		(_, { setback }) => rounded(setback, 32),
		'rounding'
	),
	rare(
		'setback',
		'to the nearest 64th of the scale',
		(_, { setback }) => rounded(setback, 64),
		'rounding'
	),
	rare(
		'setback',
		'cut off behind two digits',
		(_, { setback }) => coarse(setback, cutTo(2)),
		'rounding'
	),
	rare(
		'setback',
		'two digits changed places',
		(_, { setback }) => swapped(setback, decimal, 1),
		'digits'
	),
	rare(
		'setback',
		'the radius as it stands',
		({ R }, { setback }) => off(R, setback, fraction),
		'K.square+noT',
		'noT+square',
		'radiusAlone',
		({ betweenLegs }) => (betweenLegs === 90 ? 'noT' : '')
	),
	rare(
		'setback',
		'millimetres, typed without the unit',
		(_, { setback }) => bareMillimetres(setback),
		'unit'
	),
	rare(
		'setback',
		'two mistakes: between the legs, and R alone',
		(given, { setback }) => off(kOf(given.betweenLegs) * given.R, setback),
		'legs+noT',
		'K.legs+noT'
	),
	rare(
		'setback',
		'two mistakes: between the legs, and the whole angle',
		(given, { setback }) =>
			given.betweenLegs === 90
				? null
				: off(Math.abs(tan(given.betweenLegs)) * (given.R + given.T), setback),
		'legs+whole'
	),
	common(
		'K',
		'of the angle between the legs',
		({ betweenLegs }, { K }) => off(kOf(betweenLegs), K, kTyped),
		'legs',
		'K.legs'
	),
	common(
		'K',
		'the tangent of the whole angle',
		(_, { angle, K }) => off(tan(angle), K, kTyped),
		'whole'
	),
	common('K', '1, as for a square bend', (_, { K }) => off(1, K, kTyped), 'K.square', 'square'),
	rare('K', 'the share of 90 degrees', (_, { angle, K }) => off(angle / 90, K, kTyped), 'share'),
	common(
		'K',
		'the row below in the chart',
		(_, { angle, K }) => off(kOf(angle + 1), K, kTyped),
		'rowAfter'
	),
	rare(
		'K',
		'the calculator in radians',
		(_, { angle, K }) => off(Math.tan(angle / 2), K, kTyped),
		'inRadians'
	),
	rare(
		'K',
		'two digits changed places',
		(_, { K }) => swapped(K, (value) => value.toFixed(4), 0),
		'digits'
	),
	rare(
		'K',
		'one decimal is enough',
		(_, { K }) => coarse(K, (value) => value.toFixed(1)),
		'rounding'
	),
	common(
		'angle',
		'between the legs, carried on correctly',
		(given, right) => worked(given, given.betweenLegs, right),
		'legs'
	),
	common(
		'angle',
		'the difference to 90, carried on correctly',
		(given, right) => worked(given, Math.abs(90 - given.betweenLegs), right),
		'fromSquare'
	),
	common(
		'K',
		'angle right, the tangent of all of it, carried on',
		(given, right) => (right.angle < 90 ? fromK(given, tan(right.angle), right) : null),
		'whole'
	),
	common(
		'K',
		'angle right, then K as 1, carried on',
		(given, right) => fromK(given, 1, right),
		'K.square'
	),
	common(
		'setback',
		'angle and K right, T left out',
		({ R }, { angle, K }) => ({
			angle: number(angle),
			K: kTyped(K),
			setback: decimal(K * R)
		}),
		'noT'
	),
	common(
		'setback',
		'angle and K right, then K R + T',
		({ R, T }, { angle, K }) => ({
			angle: number(angle),
			K: kTyped(K),
			setback: decimal(K * R + T)
		}),
		'brackets'
	),
	rare(
		'angle',
		'two mistakes: between the legs, and T left out',
		(given, right) =>
			off(given.betweenLegs, right.angle) && {
				angle: number(given.betweenLegs),
				K: kTyped(kOf(given.betweenLegs)),
				setback: decimal(kOf(given.betweenLegs) * given.R)
			},
		'legs',
		'noT'
	)
];
