import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	cutTo,
	dash,
	decimal,
	down,
	fraction,
	nearest,
	number,
	off,
	rounded,
	sum,
	swapped,
	thousandths,
	up
} from '../typed.ts';

interface Given {
	readonly layers: readonly number[];
	readonly D: number;
}

interface Right {
	readonly grip: number;
	readonly shank: number;
	readonly needed: number;
	readonly length: number;
}

const { common, rare } = rulesOf<Given, Right>('rivet-length');

/** Head of a universal rivet, FAA-H-8083-31B, ch. 4, p. 4-31. */
const headHigh = 0.425;

const bin = (needed: number): number => up(needed, 16);
const first = (layers: readonly number[]): number => layers[0] ?? Number.NaN;
const but = (layers: readonly number[], place: number): number =>
	sum(layers.filter((_, at) => at !== place));
const three = (layers: readonly number[]): boolean => layers.length === 3;

/** The slip of one layer left out, alone or behind another slip. */
const left =
	(place: number) =>
	({ layers }: Given): string => {
		const layer = layers[place];
		if (layer === Math.min(...layers)) return 'thinLeftOut';
		return layer === Math.max(...layers) ? 'thickLeftOut' : '';
	};

/** The last layer is the only one left out where there are two. */
const lastLeft = (given: Given): string => (given.layers.length === 2 ? left(1)(given) : '');

/** A wrong length needed, and the bin for it: what levels 1 and 2 ask. */
function carried(needed: number, right: Right): Typed | null {
	if (off(needed, right.needed) === null) return null;
	return { needed: decimal(needed), length: fraction(bin(needed)) };
}

/** A wrong length needed, and then down or to the nearest instead of up. */
function wrongTwice(
	needed: number,
	to: (value: number, per: number) => number,
	right: Right
): Typed | null {
	if (to(needed, 16) === bin(needed)) return null;
	const both = carried(needed, right);
	return both && { ...both, length: fraction(to(needed, 16)) };
}

/** The length needed right, and a wrong rivet for it. */
function wrongBin(length: string | null, { needed }: Right): Typed | null {
	return length === null ? null : { needed: decimal(needed), length };
}

/** The whole sheet filled in from a grip and a shank, carried on correctly. */
function worked(grip: number, shank: number, right: Right): Typed | null {
	const needed = grip + shank;
	if (off(needed, right.needed) === null) return null;
	return {
		grip: thousandths(grip),
		needed: decimal(needed),
		length: fraction(bin(needed))
	};
}

export const rules = [
	common(
		'needed',
		'the stack alone, nothing for the shop head',
		({ layers }, right) => carried(sum(layers), right),
		'noShank'
	),
	common(
		'length',
		'to the nearest sixteenth, not up',
		(_, right) => wrongBin(off(nearest(right.needed, 16), right.length, fraction), right),
		'down',
		'rounding',
		'nearest'
	),
	common(
		'length',
		'the longest that does not stand out too far: rounded down',
		(_, right) => wrongBin(off(down(right.needed, 16), right.length, fraction), right),
		'down'
	),
	common(
		'length',
		'one length more, to be on the safe side',
		(_, right) => wrongBin(fraction(right.length + 1 / 16), right),
		'oneMore'
	),
	common(
		'length',
		'the length needed, no bin looked for',
		(_, right) => wrongBin(off(right.needed, right.length), right),
		'notStocked',
		'other-step:needed'
	),
	rare(
		'length',
		'up to the next eighth',
		(_, right) => wrongBin(off(up(right.needed, 8), right.length, fraction), right),
		'oneMore'
	),
	common(
		'length',
		'up to the next 32nd: half sizes',
		(_, right) => wrongBin(off(up(right.needed, 32), right.length, fraction), right),
		'halfSize'
	),
	rare(
		'length',
		'a half size as a dash number',
		(_, right) => wrongBin(off(up(right.needed, 32) * 16, right.length * 16, dash), right),
		'halfSize'
	),
	common(
		'needed',
		'the first layer only',
		({ layers, D }, right) => carried(first(layers) + 1.5 * D, right),
		'oneLayer',
		lastLeft,
		'firstLayer'
	),
	common(
		'needed',
		'the layer in the middle left out: it cannot be seen',
		({ layers, D }, right) => (three(layers) ? carried(but(layers, 1) + 1.5 * D, right) : null),
		left(1),
		'middleLeftOut'
	),
	rare(
		'needed',
		'the last layer left out',
		({ layers, D }, right) => (three(layers) ? carried(but(layers, 2) + 1.5 * D, right) : null),
		left(2),
		'lastLeftOut'
	),
	rare(
		'needed',
		'the thickest layer twice',
		({ layers, D }, right) => carried(2 * Math.max(...layers) + 1.5 * D, right),
		({ layers }) => (three(layers) ? '' : 'thickestForAll')
	),
	common(
		'needed',
		'one diameter for the shop head',
		({ layers, D }, right) => carried(sum(layers) + D, right),
		'oneD'
	),
	common(
		'needed',
		'half a diameter, which is the height of the head',
		({ layers, D }, right) => carried(sum(layers) + D / 2, right),
		'headHigh'
	),
	rare(
		'needed',
		'two diameters, as for the edge',
		({ layers, D }, right) => carried(sum(layers) + 2 * D, right),
		'twoD'
	),
	rare(
		'needed',
		'1.5 times grip and diameter together',
		({ layers, D }, right) => carried(1.5 * (sum(layers) + D), right),
		'factorOnBoth'
	),
	rare(
		'needed',
		'one and a half times the grip',
		({ layers }, right) => carried(1.5 * sum(layers), right),
		'factorForShank'
	),
	rare(
		'needed',
		'the factor on the grip: 1.5 grip + D',
		({ layers, D }, right) => carried(1.5 * sum(layers) + D, right),
		'factorOnGrip'
	),
	common(
		'needed',
		'1.5 D alone, the stack forgotten',
		({ D }, right) => carried(1.5 * D, right),
		'noGrip'
	),
	common(
		'needed',
		'the made head added: length taken over all',
		({ layers, D }, right) => carried(sum(layers) + 1.5 * D + headHigh * D, right),
		'headToo'
	),
	common(
		'needed',
		'the dash number of D read as sixteenths',
		({ layers, D }, right) => carried(sum(layers) + 1.5 * 2 * D, right),
		'dashIn16ths'
	),
	common(
		'length',
		'the length in 32nds, as the diameter is',
		(_, right) => wrongBin(dash(right.length * 32), right),
		'in32nds'
	),
	rare(
		'length',
		'the diameter of the rivet',
		({ D }, right) => wrongBin(off(D, right.length, fraction), right),
		'other-step:D'
	),
	common('length', 'the rule and not the size', (_, right) => wrongBin('1.5D', right), 'factor'),
	rare(
		'length',
		'up to a whole millimetre',
		(_, right) => {
			const whole = Math.ceil(right.needed * 25.4 - 1e-6);
			return wrongBin(
				off(whole / 25.4, right.length, () => `${whole} mm`),
				right
			);
		},
		'rounding'
	),
	rare(
		'length',
		'reads the sixteenths as eighths',
		(_, right) => wrongBin(off(right.length * 2, right.length, fraction), right),
		'in32nds'
	),
	rare(
		'needed',
		'misreads 5/32 in as 3/16 in',
		({ layers, D }, right) => (D === 5 / 32 ? carried(sum(layers) + 1.5 * (3 / 16), right) : null),
		'misread:D'
	),
	rare(
		'needed',
		'a sheet of .040 taken as .4: the point',
		({ layers, D }, right) =>
			layers.includes(0.04) ? carried(sum(layers) + 0.36 + 1.5 * D, right) : null,
		'misread:layers'
	),
	rare(
		'length',
		'the length typed in millimetres without the unit',
		(_, right) => wrongBin(bareMillimetres(right.needed), right),
		'unit',
		'mm-for-inch+notStocked'
	),
	rare(
		'needed',
		'two mistakes: first layer only, then nearest',
		({ layers, D }, right) => wrongTwice(first(layers) + 1.5 * D, nearest, right),
		'oneLayer',
		lastLeft,
		'firstLayer',
		'down',
		'nearest'
	),
	rare(
		'needed',
		'two mistakes: one diameter, then nearest',
		({ layers, D }, right) => wrongTwice(sum(layers) + D, nearest, right),
		'oneD',
		'down',
		'nearest'
	),
	rare(
		'needed',
		'two mistakes: middle left out, then rounded down',
		({ layers, D }, right) =>
			three(layers) ? wrongTwice(but(layers, 1) + 1.5 * D, down, right) : null,
		left(1),
		'middleLeftOut',
		'down'
	),
	common(
		'grip',
		'the layer in the middle left out',
		({ layers }, { grip }) => (three(layers) ? off(but(layers, 1), grip, thousandths) : null),
		left(1),
		'middleLeftOut'
	),
	common(
		'grip',
		'the first layer only',
		({ layers }, { grip }) => off(first(layers), grip, thousandths),
		'oneLayer',
		lastLeft,
		'firstLayer'
	),
	rare(
		'grip',
		'the last layer left out',
		({ layers }, { grip }) => (three(layers) ? off(but(layers, 2), grip, thousandths) : null),
		left(2),
		'lastLeftOut'
	),
	rare(
		'grip',
		'the thickest times the number of layers',
		({ layers }, { grip }) => off(layers.length * Math.max(...layers), grip, thousandths),
		'thickestForAll'
	),
	common(
		'grip',
		'the shank for the head is in it already',
		(_, { grip, needed }) => off(needed, grip),
		'other-step:needed'
	),
	rare(
		'grip',
		'the point one place too far right',
		(_, { grip }) => off(grip * 10, grip),
		'digits'
	),
	rare(
		'grip',
		'two digits changed places',
		(_, { grip }) => swapped(grip, thousandths, 1),
		'digits'
	),
	rare('grip', 'read off as the nearest sixteenth', (_, { grip }) => rounded(grip, 16), 'rounding'),
	common(
		'grip',
		'millimetres, typed without the unit',
		(_, { grip }) => bareMillimetres(grip),
		'unit'
	),
	rare(
		'grip',
		'up to the next sixteenth already here',
		(_, { grip }) => off(up(grip, 16), grip, fraction),
		'rounding'
	),
	common(
		'needed',
		'one diameter for the head',
		({ D }, { grip, needed }) => off(grip + D, needed),
		'oneD'
	),
	common(
		'needed',
		'half a diameter for the head',
		({ D }, { grip, needed }) => off(grip + D / 2, needed),
		'headHigh'
	),
	common(
		'needed',
		'1.5 D alone',
		({ D }, { needed }) => off(1.5 * D, needed),
		'other-step:shank',
		'noGrip'
	),
	common(
		'needed',
		'the bin typed a field early',
		(_, { needed, length }) => off(length, needed, fraction),
		'other-step:length'
	),
	rare(
		'needed',
		'two decimals are enough',
		(_, { needed }) => off(nearest(needed, 100), needed, number),
		'rounding'
	),
	rare(
		'needed',
		'cut off behind two digits',
		(_, { needed }) => off(Math.floor(needed * 100) / 100, needed, cutTo(2)),
		'rounding'
	),
	rare(
		'needed',
		'1.5 D cut to two digits on the way',
		({ D }, { grip, needed }) => off(grip + Math.floor(150 * D) / 100, needed, thousandths),
		'rounding'
	),
	rare(
		'needed',
		'to the nearest 32nd on the scale',
		(_, { needed }) => rounded(needed, 32),
		'rounding'
	),
	rare(
		'needed',
		'the dash number of D read as sixteenths',
		({ D }, { grip, needed }) => off(grip + 3 * D, needed),
		'dashIn16ths'
	),
	rare(
		'needed',
		'two digits changed places',
		(_, { needed }) => swapped(needed, decimal, 1),
		'digits'
	),
	rare(
		'needed',
		'millimetres, typed without the unit',
		(_, { needed }) => bareMillimetres(needed),
		'unit'
	),
	common(
		'grip',
		'middle left out, carried on correctly',
		({ layers, D }, right) => (three(layers) ? worked(but(layers, 1), 1.5 * D, right) : null),
		left(1),
		'middleLeftOut'
	),
	common(
		'grip',
		'first layer only, carried on correctly',
		({ layers, D }, right) => worked(first(layers), 1.5 * D, right),
		'oneLayer',
		lastLeft,
		'firstLayer'
	),
	common(
		'needed',
		'one diameter for the head, carried on',
		({ layers, D }, right) => worked(sum(layers), D, right),
		'oneD'
	),
	common(
		'needed',
		'two diameters for the head, carried on',
		({ layers, D }, right) => worked(sum(layers), 2 * D, right),
		'twoD'
	),
	rare(
		'needed',
		'needed and length each in the field of the other',
		(_, right) =>
			off(right.needed, right.length) && {
				needed: fraction(right.length),
				length: decimal(right.needed)
			},
		'other-step',
		'notStocked'
	),
	rare(
		'grip',
		'two mistakes: middle left out, and one diameter',
		({ layers, D }, right) => (three(layers) ? worked(but(layers, 1), D, right) : null),
		left(1),
		'oneD',
		'middleLeftOut'
	)
];
