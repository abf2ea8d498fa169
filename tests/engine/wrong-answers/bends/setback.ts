import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	cutTo,
	decimal,
	down,
	fraction,
	hundredths,
	nearest,
	off,
	rounded,
	swapped,
	thousandths
} from '../typed.ts';
import { allowanceOf, kOf, kTyped, sin, tan } from './trigonometry.ts';

interface Given {
	readonly R: number;
	readonly T: number;
	readonly angle: number;
}

interface Right {
	readonly K: number;
	readonly setback: number;
}

const { common, rare } = rulesOf<Given, Right>('setback');

/** K and setback in one check, the setback from that K. */
const worked = ({ R, T }: Given, K: number, right: Right): Typed | null =>
	off(K, right.K) === null ? null : { K: kTyped(K), setback: decimal(K * (R + T)) };

export const rules = [
	common('setback', 'R + T, K left out', ({ R, T }, { setback }) => off(R + T, setback), 'square'),
	common(
		'setback',
		'the tangent of the whole angle',
		({ R, T, angle }, { setback }) =>
			angle === 90 ? null : off(Math.abs(tan(angle)) * (R + T), setback),
		'whole'
	),
	common(
		'setback',
		'K of the angle between the legs',
		({ R, T, angle }, { setback }) => off(kOf(180 - angle) * (R + T), setback),
		'legs'
	),
	common(
		'setback',
		'the radius alone',
		({ R, angle }, { setback }) => off(kOf(angle) * R, setback),
		'noT'
	),
	common(
		'setback',
		'the radius as it stands',
		({ R }, { setback }) => off(R, setback, fraction),
		'noT+square',
		({ angle }) => (angle === 90 ? 'noT' : ''),
		'radiusAlone'
	),
	common(
		'setback',
		'K on the radius only: K R + T',
		({ R, T, angle }, { setback }) => off(kOf(angle) * R + T, setback),
		'brackets'
	),
	rare(
		'setback',
		'K on the sheet only: R + K T',
		({ R, T, angle }, { setback }) => off(R + kOf(angle) * T, setback),
		'onlyTByK'
	),
	common(
		'setback',
		'R minus T',
		({ R, T, angle }, { setback }) => off(kOf(angle) * (R - T), setback),
		'minusT'
	),
	common(
		'setback',
		'R + T/2, to the middle of the sheet',
		({ R, T, angle }, { setback }) => off(kOf(angle) * (R + T / 2), setback),
		'middle'
	),
	common(
		'setback',
		'the sheet twice: there are two legs',
		({ R, T, angle }, { setback }) => off(kOf(angle) * (R + 2 * T), setback),
		'twoT'
	),
	rare(
		'setback',
		'the diameter of the bar: 2R + T',
		({ R, T, angle }, { setback }) => off(kOf(angle) * (2 * R + T), setback),
		'diameter'
	),
	rare(
		'setback',
		'half of the radius: takes R for a diameter',
		({ R, T, angle }, { setback }) => off(kOf(angle) * (R / 2 + T), setback),
		'halfR'
	),
	common(
		'setback',
		'by the share of 90 degrees',
		({ R, T, angle }, { setback }) => off((angle / 90) * (R + T), setback),
		'share'
	),
	common(
		'setback',
		'the bend allowance',
		({ R, T, angle }, { setback }) => off(allowanceOf(R, T, angle), setback),
		'allowance'
	),
	common(
		'setback',
		'two setbacks, one for each leg',
		(_, { setback }) => off(2 * setback, setback),
		'doubled'
	),
	rare('setback', 'half of it', (_, { setback }) => off(setback / 2, setback), 'halfOfIt'),
	rare(
		'setback',
		'the sine of half the angle',
		({ R, T, angle }, { setback }) => off(sin(angle / 2) * (R + T), setback),
		'sine'
	),
	rare(
		'setback',
		'divided by K',
		({ R, T, angle }, { setback }) => off((R + T) / kOf(angle), setback),
		'legs'
	),
	rare(
		'setback',
		'K added, not multiplied',
		({ R, T, angle }, { setback }) => off(kOf(angle) + R + T, setback),
		'addedK'
	),
	rare(
		'setback',
		'the calculator in radians',
		({ R, T, angle }, { setback }) => off(Math.abs(Math.tan(angle / 2)) * (R + T), setback),
		'inRadians'
	),
	common(
		'setback',
		'K from the row above in the chart',
		({ R, T, angle }, { setback }) => off(kOf(angle - 1) * (R + T), setback),
		'rowBefore'
	),
	common(
		'setback',
		'K from the row below in the chart',
		({ R, T, angle }, { setback }) => off(kOf(angle + 1) * (R + T), setback),
		'rowAfter'
	),
	rare(
		'setback',
		'K to one decimal',
		({ R, T, angle }, { setback }) => off(nearest(kOf(angle), 10) * (R + T), setback),
		'rounding'
	),
	rare(
		'setback',
		'the radius cut to two digits',
		({ R, T, angle }, { setback }) => off(kOf(angle) * (down(R, 100) + T), setback, thousandths),
		'rounding'
	),
	common(
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
	common(
		'setback',
		'to the nearest 64th of the scale',
		(_, { setback }) => rounded(setback, 64),
		'rounding'
	),
	rare(
		'setback',
		'to the nearest sixteenth of the scale',
		(_, { setback }) => rounded(setback, 16),
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
		'the point one place too far right',
		(_, { setback }) => off(setback * 10, setback),
		'digits'
	),
	rare(
		'setback',
		'the sheet ten times too thick: the point',
		({ R, T, angle }, { setback }) => off(kOf(angle) * (R + 10 * T), setback),
		'tenfoldT'
	),
	rare(
		'setback',
		'millimetres, typed without the unit',
		(_, { setback }) => bareMillimetres(setback),
		'unit'
	),
	rare(
		'setback',
		'two mistakes: no K, and R minus T',
		({ R, T }, { setback }) => off(R - T, setback),
		'minusT+square',
		({ angle }) => (angle === 90 ? 'minusT' : '')
	),
	rare(
		'setback',
		'two mistakes: K between the legs, and R alone',
		({ R, angle }, { setback }) => off(kOf(180 - angle) * R, setback),
		'legs+noT'
	),
	rare(
		'setback',
		'two mistakes: the whole angle, and T left out',
		({ R, angle }, { setback }) => (angle === 90 ? null : off(Math.abs(tan(angle)) * R, setback)),
		'noT+whole'
	),
	common(
		'K',
		'the tangent of the whole angle',
		({ angle }, { K }) => off(tan(angle), K, kTyped),
		'whole'
	),
	common(
		'K',
		'that of the angle between the legs',
		({ angle }, { K }) => off(kOf(180 - angle), K, kTyped),
		'legs'
	),
	common('K', '1, as for a square bend', (_, { K }) => off(1, K, kTyped), 'square'),
	common('K', 'the share of 90 degrees', ({ angle }, { K }) => off(angle / 90, K, kTyped), 'share'),
	rare(
		'K',
		'the sine of half the angle',
		({ angle }, { K }) => off(sin(angle / 2), K, kTyped),
		'sine'
	),
	rare(
		'K',
		'the calculator in radians',
		({ angle }, { K }) => off(Math.tan(angle / 2), K, kTyped),
		'inRadians'
	),
	common(
		'K',
		'the row above in the chart',
		({ angle }, { K }) => off(kOf(angle - 1), K, kTyped),
		'rowBefore'
	),
	common(
		'K',
		'the row below in the chart',
		({ angle }, { K }) => off(kOf(angle + 1), K, kTyped),
		'rowAfter'
	),
	rare('K', 'a column aside: ten degrees on', ({ angle }, { K }) =>
		off(kOf(angle + 10), K, kTyped)
	),
	rare('K', 'two decimals are enough', (_, { K }) => coarse(K, hundredths), 'rounding'),
	rare(
		'K',
		'one decimal is enough',
		(_, { K }) => coarse(K, (value) => value.toFixed(1)),
		'rounding'
	),
	rare(
		'K',
		'two digits changed places',
		(_, { K }) => swapped(K, (value) => value.toFixed(4), 0),
		'digits'
	),
	rare('K', 'the point one place too far right', (_, { K }) => off(K * 10, K, kTyped), 'digits'),
	rare('K', '0.445, the other K: where the neutral line runs', () => '.445', 'neutral'),
	common(
		'K',
		'the angle between the legs, carried on correctly',
		(given, right) => worked(given, kOf(180 - given.angle), right),
		'legs'
	),
	common(
		'K',
		'the whole angle, carried on correctly',
		(given, right) => (given.angle < 90 ? worked(given, tan(given.angle), right) : null),
		'whole'
	),
	common('K', 'K as 1, carried on correctly', (given, right) => worked(given, 1, right), 'square'),
	common(
		'K',
		'the row below, carried on correctly',
		(given, right) => worked(given, kOf(given.angle + 1), right),
		'rowAfter'
	),
	common(
		'setback',
		'K right, T left out',
		({ R }, { K }) => ({
			K: kTyped(K),
			setback: decimal(K * R)
		}),
		'noT'
	),
	common(
		'setback',
		'K right, then K R + T',
		({ R, T }, { K }) => ({
			K: kTyped(K),
			setback: decimal(K * R + T)
		}),
		'brackets'
	),
	rare(
		'K',
		'each in the field of the other',
		(_, { K, setback }) => ({
			K: decimal(setback),
			setback: kTyped(K)
		}),
		'other-step'
	),
	rare(
		'K',
		'two mistakes: the angle between the legs, and T left out',
		({ R, angle }, { K }) =>
			off(kOf(180 - angle), K) && {
				K: kTyped(kOf(180 - angle)),
				setback: decimal(kOf(180 - angle) * R)
			},
		'legs',
		'noT'
	)
];
