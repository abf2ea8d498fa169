import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	cutTo,
	decimal,
	fraction,
	hundredths,
	nearest,
	off,
	onScale,
	swapped
} from '../typed.ts';
import { allowanceOf, kOf, tan } from './trigonometry.ts';

interface Given {
	readonly tangentLine: number;
	readonly R: number;
	readonly T: number;
	readonly angle: number;
}

interface Right {
	readonly K: number;
	readonly setback: number;
	readonly leg: number;
}

const { common, rare } = rulesOf<Given, Right>('finished-leg');

/** Both in one check, the leg carried on from a setback. */
const carried = ({ tangentLine }: Given, setback: number, right: Right): Typed | null =>
	off(setback, right.setback)
		? { setback: decimal(setback), leg: decimal(tangentLine + setback) }
		: null;

export const rules = [
	common(
		'leg',
		'the flat as it is',
		({ tangentLine }, { leg }) => off(tangentLine, leg),
		'moldLines'
	),
	common(
		'leg',
		'the setback taken off, as for a blank',
		({ tangentLine }, { setback, leg }) => off(tangentLine - setback, leg),
		'added'
	),
	common(
		'leg',
		'K left out of the setback',
		({ tangentLine, R, T }, { leg }) => off(tangentLine + R + T, leg),
		'square'
	),
	common(
		'leg',
		'K of the angle between the legs',
		({ tangentLine, R, T, angle }, { leg }) => off(tangentLine + kOf(180 - angle) * (R + T), leg),
		'legs'
	),
	rare(
		'leg',
		'the tangent of the whole angle',
		({ tangentLine, R, T, angle }, { leg }) =>
			angle === 90 ? null : off(tangentLine + Math.abs(tan(angle)) * (R + T), leg),
		'whole'
	),
	common(
		'leg',
		'R alone for the setback',
		({ tangentLine, R, angle }, { leg }) => off(tangentLine + kOf(angle) * R, leg),
		'noT'
	),
	common(
		'leg',
		'only the sheet added',
		({ tangentLine, T }, { leg }) => off(tangentLine + T, leg),
		'inside'
	),
	common(
		'leg',
		'the radius added: the sight line',
		({ tangentLine, R, angle }, { leg }) => (angle === 90 ? null : off(tangentLine + R, leg)),
		'noT+square',
		'radiusAlone'
	),
	rare(
		'leg',
		'the whole allowance added',
		({ tangentLine, R, T, angle }, { leg }) => off(tangentLine + allowanceOf(R, T, angle), leg),
		'allowance'
	),
	rare(
		'leg',
		'half of the allowance added',
		({ tangentLine, R, T, angle }, { leg }) => off(tangentLine + allowanceOf(R, T, angle) / 2, leg),
		'halfAllowance'
	),
	rare(
		'leg',
		'two setbacks added',
		({ tangentLine }, { setback, leg }) => off(tangentLine + 2 * setback, leg),
		'doubled'
	),
	common(
		'leg',
		'the setback alone',
		(_, { setback, leg }) => off(setback, leg),
		'other-step:setback'
	),
	common(
		'leg',
		'to the nearest sixteenth of the scale',
		(_, { leg }) => onScale(leg, 16),
		'rounding'
	),
	rare('leg', 'two decimals are enough', (_, { leg }) => coarse(leg, hundredths), 'rounding'),
	rare('leg', 'cut off behind two digits', (_, { leg }) => coarse(leg, cutTo(2)), 'rounding'),
	rare('leg', 'two digits changed places', (_, { leg }) => swapped(leg, decimal, 1), 'digits'),
	rare('leg', 'millimetres, typed without the unit', (_, { leg }) => bareMillimetres(leg), 'unit'),
	rare(
		'leg',
		'the setback rounded to a tenth on the way',
		({ tangentLine }, { setback, leg }) => off(tangentLine + nearest(setback, 10), leg),
		'rounding'
	),
	rare(
		'leg',
		'the radius in place of the flat',
		({ R }, { leg }) => off(R, leg, fraction),
		'other-step:R'
	),
	common(
		'setback',
		'no K, carried on correctly',
		(given, right) => carried(given, given.R + given.T, right),
		'square'
	),
	common(
		'setback',
		'between the legs, carried on correctly',
		(given, right) => carried(given, kOf(180 - given.angle) * (given.R + given.T), right),
		'legs'
	),
	common(
		'leg',
		'setback right, then taken off',
		({ tangentLine }, { setback }) => ({
			setback: decimal(setback),
			leg: decimal(tangentLine - setback)
		}),
		'added'
	),
	rare(
		'leg',
		'two mistakes: no K, and taken off',
		({ tangentLine, R, T, angle }, { leg }) =>
			angle === 90 ? null : off(tangentLine - R - T, leg),
		'added+square'
	)
];
