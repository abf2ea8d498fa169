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
	readonly leg: number;
	readonly R: number;
	readonly T: number;
	readonly angle: number;
}

interface Right {
	readonly K: number;
	readonly setback: number;
	readonly tangentLine: number;
	readonly sightLine: number;
}

const { common, rare } = rulesOf<Given, Right>('sight-line');

/** The sight line by another setback. */
const by = ({ leg, R }: Given, setback: number): number => leg - setback + R;

/** Both lines in one check, from a tangent line. */
const worked = ({ R }: Given, tangentLine: number, right: Right): Typed | null =>
	off(tangentLine, right.tangentLine) === null
		? null
		: {
				tangentLine: decimal(tangentLine),
				sightLine: decimal(tangentLine + R)
			};

export const rules = [
	common(
		'sightLine',
		'the bend tangent line itself',
		(_, { tangentLine, sightLine }) => off(tangentLine, sightLine),
		'atTangent',
		'other-step:tangentLine'
	),
	common(
		'sightLine',
		'the middle of the bend allowance',
		({ R, T, angle }, right) =>
			off(right.tangentLine + allowanceOf(R, T, angle) / 2, right.sightLine),
		'middle'
	),
	rare(
		'sightLine',
		'the far end of the bend allowance',
		({ R, T, angle }, right) => off(right.tangentLine + allowanceOf(R, T, angle), right.sightLine),
		'farLine'
	),
	common(
		'sightLine',
		'R to the wrong side of the tangent line',
		({ R }, right) => off(right.tangentLine - R, right.sightLine),
		'outward'
	),
	common(
		'sightLine',
		'the leg less the radius',
		({ leg, R }, { sightLine }) => off(leg - R, sightLine),
		'moldLines+outward',
		'fromMoldLine'
	),
	common(
		'sightLine',
		'the leg as it is: the mold line',
		({ leg }, { sightLine }) => off(leg, sightLine, fraction),
		'atTangent+moldLines',
		'moldLine'
	),
	rare(
		'sightLine',
		'the leg and the radius, no setback',
		({ leg, R }, { sightLine }) => off(leg + R, sightLine),
		'moldLines'
	),
	common(
		'sightLine',
		'the setback added',
		({ leg, R }, { setback, sightLine }) => off(leg + setback + R, sightLine),
		'added'
	),
	common(
		'sightLine',
		'R + T from the tangent line',
		({ R, T }, right) => off(right.tangentLine + R + T, right.sightLine),
		'plusT'
	),
	rare(
		'sightLine',
		'R + T/2 from the tangent line',
		({ R, T }, right) => off(right.tangentLine + R + T / 2, right.sightLine),
		'plusHalfT'
	),
	rare(
		'sightLine',
		'the sheet for the radius',
		({ T }, { tangentLine, sightLine }) => off(tangentLine + T, sightLine),
		'thicknessPast'
	),
	rare(
		'sightLine',
		'the diameter of the bar: 2R',
		({ R }, { tangentLine, sightLine }) => off(tangentLine + 2 * R, sightLine),
		'diameterPast'
	),
	common(
		'sightLine',
		'half of the radius',
		({ R }, { tangentLine, sightLine }) => off(tangentLine + R / 2, sightLine),
		'halfRadius'
	),
	common(
		'sightLine',
		'K left out of the setback',
		(given, { sightLine }) => off(by(given, given.R + given.T), sightLine),
		'square'
	),
	common(
		'sightLine',
		'K of the angle between the legs',
		(given, { sightLine }) =>
			off(by(given, kOf(180 - given.angle) * (given.R + given.T)), sightLine),
		'legs'
	),
	rare(
		'sightLine',
		'the tangent of the whole angle',
		(given, { sightLine }) =>
			given.angle === 90
				? null
				: off(by(given, Math.abs(tan(given.angle)) * (given.R + given.T)), sightLine),
		'whole'
	),
	common(
		'sightLine',
		'R alone for the setback',
		(given, { sightLine }) => off(by(given, kOf(given.angle) * given.R), sightLine),
		'noT'
	),
	rare(
		'sightLine',
		'T alone for the setback',
		(given, { sightLine }) => off(by(given, kOf(given.angle) * given.T), sightLine),
		'inside',
		'noR'
	),
	rare(
		'sightLine',
		'R minus T for the setback',
		(given, { sightLine }) => off(by(given, kOf(given.angle) * (given.R - given.T)), sightLine),
		'minusT'
	),
	rare(
		'sightLine',
		'the allowance for the setback',
		(given, { sightLine }) => off(by(given, allowanceOf(given.R, given.T, given.angle)), sightLine),
		'allowance'
	),
	rare(
		'sightLine',
		'two setbacks off the leg',
		({ R }, { setback, tangentLine, sightLine }) => off(tangentLine - setback + R, sightLine),
		'doubled'
	),
	rare(
		'sightLine',
		'from the mold line: setback less R',
		({ R }, { setback, sightLine }) => off(setback - R, sightLine),
		'setbackLessR'
	),
	common(
		'sightLine',
		'the setback',
		(_, { setback, sightLine }) => off(setback, sightLine),
		'other-step:setback'
	),
	rare(
		'sightLine',
		'one radius from the edge',
		({ R }, { sightLine }) => off(R, sightLine, fraction),
		'fromEdge'
	),
	rare(
		'sightLine',
		'R K for the radius',
		({ R }, { K, tangentLine, sightLine }) => off(tangentLine + K * R, sightLine),
		'timesK'
	),
	rare('sightLine', 'the leg taken inside: a sheet added', ({ T }, { sightLine }) =>
		off(sightLine + T, sightLine)
	),
	common(
		'sightLine',
		'to the nearest sixteenth of the scale',
		(_, { sightLine }) => onScale(sightLine, 16),
		'rounding'
	),
	rare(
		'sightLine',
		'two decimals are enough',
		(_, { sightLine }) => coarse(sightLine, hundredths),
		'rounding'
	),
	rare(
		'sightLine',
		'cut off behind two digits',
		(_, { sightLine }) => coarse(sightLine, cutTo(2)),
		'rounding'
	),
	rare(
		'sightLine',
		'two digits changed places',
		(_, { sightLine }) => swapped(sightLine, decimal, 1),
		'digits'
	),
	rare(
		'sightLine',
		'millimetres, typed without the unit',
		(_, { sightLine }) => bareMillimetres(sightLine),
		'unit'
	),
	rare(
		'sightLine',
		'the setback rounded to a tenth on the way',
		(given, { setback, sightLine }) => off(by(given, nearest(setback, 10)), sightLine),
		'rounding'
	),
	rare(
		'sightLine',
		'two mistakes: no K, and no R',
		({ leg, R, T }, { sightLine }) => off(leg - R - T, sightLine),
		'atTangent+square'
	),
	rare(
		'sightLine',
		'two mistakes: between the legs, and R to the wrong side',
		(given, right) =>
			off(by(given, kOf(180 - given.angle) * (given.R + given.T)) - 2 * given.R, right.sightLine),
		'legs+outward'
	),
	common(
		'tangentLine',
		'the setback added',
		({ leg }, { setback, tangentLine }) => off(leg + setback, tangentLine),
		'added'
	),
	common(
		'tangentLine',
		'K left out of the setback',
		({ leg, R, T }, { tangentLine }) => off(leg - R - T, tangentLine),
		'square'
	),
	common(
		'tangentLine',
		'K of the angle between the legs',
		(given, { tangentLine }) =>
			off(by(given, kOf(180 - given.angle) * (given.R + given.T)) - given.R, tangentLine),
		'legs'
	),
	common(
		'tangentLine',
		'the setback',
		(_, { setback, tangentLine }) => off(setback, tangentLine),
		'other-step:setback'
	),
	common(
		'tangentLine',
		'the leg less the radius',
		({ leg, R }, { tangentLine }) => off(leg - R, tangentLine),
		'noT+square',
		'radiusAlone',
		({ angle }) => (angle === 90 ? 'noT' : '')
	),
	rare(
		'tangentLine',
		'two setbacks off the leg',
		(_, { setback, tangentLine }) => off(tangentLine - setback, tangentLine),
		'doubled'
	),
	common(
		'tangentLine',
		'the sight line already here',
		(_, { tangentLine, sightLine }) => off(sightLine, tangentLine),
		'other-step:sightLine'
	),
	rare(
		'tangentLine',
		'R alone for the setback',
		({ leg, R, angle }, { tangentLine }) => off(leg - kOf(angle) * R, tangentLine),
		'noT'
	),
	rare(
		'tangentLine',
		'the allowance for the setback',
		({ leg, R, T, angle }, { tangentLine }) => off(leg - allowanceOf(R, T, angle), tangentLine),
		'allowance'
	),
	common(
		'tangentLine',
		'no K, carried on correctly',
		(given, right) => worked(given, given.leg - given.R - given.T, right),
		'square'
	),
	common(
		'tangentLine',
		'between the legs, carried on correctly',
		(given, right) =>
			worked(given, given.leg - kOf(180 - given.angle) * (given.R + given.T), right),
		'legs'
	),
	common(
		'sightLine',
		'tangent line right, R to the wrong side',
		({ R }, { tangentLine }) => ({
			tangentLine: decimal(tangentLine),
			sightLine: decimal(tangentLine - R)
		}),
		'outward'
	),
	common(
		'sightLine',
		'tangent line right, then the middle of the allowance',
		(given, right) =>
			off(right.tangentLine + allowanceOf(given.R, given.T, given.angle) / 2, right.sightLine) && {
				tangentLine: decimal(right.tangentLine),
				sightLine: decimal(right.tangentLine + allowanceOf(given.R, given.T, given.angle) / 2)
			},
		'middle'
	),
	rare(
		'tangentLine',
		'each in the field of the other',
		(_, { tangentLine, sightLine }) => ({
			tangentLine: decimal(sightLine),
			sightLine: decimal(tangentLine)
		}),
		'other-step',
		'atTangent'
	),
	rare(
		'tangentLine',
		'two mistakes: no K, and R to the wrong side',
		({ leg, R, T }, right) =>
			off(leg - R - T, right.tangentLine) && {
				tangentLine: decimal(leg - R - T),
				sightLine: decimal(leg - 2 * R - T)
			},
		'square',
		'outward'
	)
];
