import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	cutTo,
	decimal,
	fraction,
	hundredths,
	off,
	onScale,
	sum,
	swapped,
	thousandths
} from '../typed.ts';

interface Given {
	readonly layers: readonly number[];
	readonly D: number;
}

interface Right {
	readonly drill: number;
	readonly depth: number;
	readonly grip: number;
	readonly tightDepth: number;
}

const { common, rare } = rulesOf<Given, Right>('removal-drill');

/** Height of a universal head in diameters: FAA-H-8083-31B, ch. 4, p. 4-31. */
const headHigh = 0.425;

/** The drill for the hole of a rivet, by its 32nds: the same chapter, Fig. 4-90. */
const holeDrills: Readonly<Record<number, string>> = {
	3: '#40',
	4: '#30',
	5: '#21',
	6: '#11',
	8: 'F'
};

/** A drill a little under the rivet that hangs in every shop, by its 32nds. */
const shopDrills: Readonly<Record<number, string>> = { 3: '#43', 4: '#31', 5: '#24', 6: '#14' };

const outer = (layers: readonly number[]): number => layers[0] ?? Number.NaN;

/** The slip of one layer left out, alone or behind another slip. */
const left =
	(place: number, ...others: readonly string[]) =>
	({ layers }: Given): string => {
		const layer = layers[place];
		if (layer === Math.min(...layers)) return [...others, 'thinLeftOut'].join('+');
		return layer === Math.max(...layers) ? [...others, 'thickLeftOut'].join('+') : '';
	};

/** The last layer is the only one left out where there are two. */
const lastLeft = (given: Given): string => (given.layers.length === 2 ? left(1)(given) : '');

/** Drill and depth in one check. */
const both = (drill: number, depth: number): Typed => ({
	drill: fraction(drill),
	depth: decimal(depth)
});

const three = (drill: number, depth: number, tight: number): Typed => ({
	...both(drill, depth),
	tightDepth: decimal(tight)
});

export const rules = [
	common(
		'drill',
		'the same size as the rivet, as another document says',
		({ D }) => fraction(D),
		'sameSize'
	),
	common(
		'drill',
		'the drill of the rivet hole',
		({ D }) => holeDrills[D * 32] ?? null,
		'finalAgain'
	),
	common(
		'drill',
		'a number drill a little under the rivet',
		({ D }) => shopDrills[D * 32] ?? null,
		({ D }) => (D === 1 / 8 ? 'oneNumberUnder' : '')
	),
	common(
		'drill',
		'No. 40, the pilot for everything',
		({ D }) => (D >= 1 / 8 ? '#40' : null),
		'no40ForHead'
	),
	rare('drill', 'No. 30 for everything', ({ D }) => (D > 5 / 32 ? '#30' : null), 'no30ForHead'),
	common('drill', '1/64 in under the rivet', ({ D }) => fraction(D - 1 / 64), 'oneSixtyFourth'),
	common(
		'drill',
		'1/16 in under the rivet',
		({ D }) => (D > 3 / 32 ? fraction(D - 1 / 16) : null),
		'twoUnder'
	),
	rare(
		'drill',
		'0.003 in under, as for flush heads',
		({ D }, { drill }) => off(D - 0.003, drill, thousandths),
		'countersunk'
	),
	common(
		'drill',
		'one size over, so that the head falls off',
		({ D }) => fraction(D + 1 / 32),
		'over'
	),
	rare(
		'drill',
		'half of the rivet',
		({ D }, { drill }) => off(D / 2, drill, fraction),
		'halfRivet'
	),
	rare(
		'drill',
		'the next rivet down in the bins: 3/16 in for 1/4 in',
		({ D }) => (D === 1 / 4 ? '3/16' : null),
		'twoUnder'
	),
	rare(
		'drill',
		'the dash number read as sixteenths',
		({ D }, { drill }) => off(2 * D - 1 / 32, drill, fraction),
		'twiceForHead'
	),
	rare('drill', 'as large as the head: 2D', ({ D }) => fraction(2 * D), 'headWide'),
	rare('drill', 'the rule and not the drill', () => '1/32', 'factor', 'stepAlone'),
	common('depth', '0.5 D, the shop head', ({ D }, { depth }) => off(D / 2, depth), 'shopHeadHigh'),
	rare('depth', '0.4 D: one digit is enough', ({ D }, { depth }) => off(0.4 * D, depth)),
	rare('depth', '0.66 D', ({ D }, { depth }) => off(0.66 * D, depth), 'mostHigh'),
	common(
		'depth',
		'as deep as the rivet is thick',
		({ D }, { depth }) => off(D, depth, fraction),
		'oneDiameter'
	),
	rare('depth', '1.5 D', ({ D }, { depth }) => off(1.5 * D, depth, fraction), 'shankDeep'),
	rare(
		'depth',
		'2D, the width of the head',
		({ D }, { depth }) => off(2 * D, depth, fraction),
		'headDeep'
	),
	common(
		'depth',
		'the outer sheet',
		({ layers }, { depth }) => off(outer(layers), depth, thousandths),
		'outerSheet'
	),
	common(
		'depth',
		'through the stack',
		({ layers }, { depth }) => off(sum(layers), depth, thousandths),
		'other-step:grip'
	),
	common(
		'depth',
		'head and outer sheet',
		({ layers, D }, { depth }) => off(headHigh * D + outer(layers), depth),
		'headAndSheet'
	),
	common(
		'depth',
		'two thirds of the stack: the tight rivet',
		({ layers }, { depth }) => off((2 / 3) * sum(layers), depth),
		'other-step:tightDepth'
	),
	common(
		'depth',
		'of the drill, not of the rivet: 0.425 of it',
		(_, { drill, depth }) => off(headHigh * drill, depth),
		'byDrill'
	),
	common('depth', 'the factor for the size', () => '.425', 'factor'),
	rare('depth', 'the rule for the size', () => '0.425 D', 'factor'),
	rare(
		'depth',
		'the dash number read as sixteenths',
		({ D }, { depth }) => off(2 * headHigh * D, depth),
		'twiceDeep'
	),
	common(
		'depth',
		'two decimals are enough',
		(_, { depth }) => coarse(depth, hundredths),
		'rounding'
	),
	rare(
		'depth',
		'to the nearest sixteenth of the scale',
		(_, { depth }) => onScale(depth, 16),
		'rounding'
	),
	rare(
		'depth',
		'two digits changed places',
		(_, { depth }) => swapped(depth, decimal, 1),
		'digits'
	),
	rare(
		'depth',
		'the point one place too far right',
		(_, { depth }) => off(depth * 10, depth),
		'digits'
	),
	rare(
		'depth',
		'millimetres, typed without the unit',
		(_, { depth }) => bareMillimetres(depth),
		'unit'
	),
	common(
		'tightDepth',
		'the whole stack',
		({ layers }, { tightDepth }) => off(sum(layers), tightDepth, thousandths),
		'wholeGrip',
		'other-step:grip'
	),
	common(
		'tightDepth',
		'half of the stack',
		({ layers }, { tightDepth }) => off(sum(layers) / 2, tightDepth),
		'halfGrip'
	),
	rare(
		'tightDepth',
		'a third of the stack',
		({ layers }, { tightDepth }) => off(sum(layers) / 3, tightDepth),
		'oneThird'
	),
	rare('tightDepth', 'three quarters of the stack', ({ layers }, { tightDepth }) =>
		off(0.75 * sum(layers), tightDepth)
	),
	rare(
		'tightDepth',
		'three halves: the fraction upside down',
		({ layers }, { tightDepth }) => off(1.5 * sum(layers), tightDepth),
		'upsideDown'
	),
	common(
		'tightDepth',
		'the outer sheet only',
		({ layers }, { tightDepth }) => off(outer(layers), tightDepth, thousandths),
		'oneLayer+wholeGrip',
		'oneSheetDeep',
		'firstLayer+wholeGrip'
	),
	common(
		'tightDepth',
		'two thirds of the outer sheet',
		({ layers }, { tightDepth }) => off((2 / 3) * outer(layers), tightDepth),
		'oneLayer',
		lastLeft,
		'firstLayer'
	),
	common(
		'tightDepth',
		'the head and two thirds of the stack',
		({ layers, D }, { tightDepth }) => off(headHigh * D + (2 / 3) * sum(layers), tightDepth),
		'headToStack'
	),
	common(
		'tightDepth',
		'two thirds of the head',
		({ D }, { tightDepth }) => off((2 / 3) * headHigh * D, tightDepth),
		'thirdsOfHead'
	),
	rare(
		'tightDepth',
		'two thirds of the diameter',
		({ D }, { tightDepth }) => off((2 / 3) * D, tightDepth),
		'thirdsOfD'
	),
	common(
		'tightDepth',
		'the layer in the middle left out',
		({ layers }, { tightDepth }) =>
			layers.length === 3 ? off((2 / 3) * (sum(layers) - (layers[1] ?? 0)), tightDepth) : null,
		left(1),
		'middleLeftOut'
	),
	rare(
		'tightDepth',
		'.66 for two thirds, cut',
		({ layers }, { tightDepth }) => off(0.66 * sum(layers), tightDepth),
		'rounding'
	),
	rare(
		'tightDepth',
		'cut off behind two digits',
		(_, { tightDepth }) => coarse(tightDepth, cutTo(2)),
		'rounding'
	),
	rare(
		'tightDepth',
		'to the nearest sixteenth of the scale',
		(_, { tightDepth }) => onScale(tightDepth, 16),
		'rounding'
	),
	rare(
		'tightDepth',
		'two digits changed places',
		(_, { tightDepth }) => swapped(tightDepth, decimal, 1),
		'digits'
	),
	common(
		'drill',
		'the same size; the depth right',
		({ D }, { depth }) => both(D, depth),
		'sameSize'
	),
	common(
		'depth',
		'drill right, half of D deep',
		({ D }, { drill }) => both(drill, D / 2),
		'shopHeadHigh'
	),
	common(
		'depth',
		'drill right, through the outer sheet',
		({ layers, D }, { drill }) => both(drill, headHigh * D + outer(layers)),
		'headAndSheet'
	),
	rare(
		'drill',
		'drill and depth each in the field of the other',
		(_, { drill, depth }) => ({
			drill: decimal(depth),
			depth: fraction(drill)
		}),
		'other-step'
	),
	common(
		'depth',
		'head and tight rivet changed places',
		(_, { drill, depth, tightDepth }) => off(depth, tightDepth) && three(drill, tightDepth, depth),
		'other-step'
	),
	common(
		'tightDepth',
		'head counted in, the others right',
		({ D }, { drill, depth, tightDepth }) => three(drill, depth, tightDepth + headHigh * D),
		'headToStack'
	),
	rare(
		'drill',
		'two mistakes: the same size, and half of D deep',
		({ D }) => both(D, D / 2),
		'sameSize',
		'shopHeadHigh'
	)
];
