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
	(place: number, ...others: readonly string[]) =>
	({ layers }: Given): string => {
		const layer = layers[place];
		if (layer === Math.min(...layers)) return [...others, 'thinLeftOut'].join('+');
		return layer === Math.max(...layers) ? [...others, 'thickLeftOut'].join('+') : '';
	};

/** The last layer is the only one left out where there are two. */
const lastLeft = (given: Given): string => (given.layers.length === 2 ? left(1)(given) : '');

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
		'length',
		'the stack alone, nothing for the shop head',
		({ layers }, { length }) => off(bin(sum(layers)), length, fraction),
		'noShank'
	),
	common(
		'length',
		'to the nearest sixteenth, not up',
		(_, { needed, length }) => off(nearest(needed, 16), length, fraction),
		'down',
		'rounding',
		'nearest'
	),
	common(
		'length',
		'the longest that does not stand out too far: rounded down',
		(_, right) => off(down(right.needed, 16), right.length, fraction),
		'down'
	),
	common(
		'length',
		'one length more, to be on the safe side',
		(_, { length }) => fraction(length + 1 / 16),
		'oneMore'
	),
	common(
		'length',
		'the length needed, no bin looked for',
		(_, { needed, length }) => off(needed, length),
		'notStocked',
		'other-step:needed'
	),
	rare(
		'length',
		'up to the next eighth',
		(_, { needed, length }) => off(up(needed, 8), length, fraction),
		'oneMore'
	),
	common(
		'length',
		'up to the next 32nd: half sizes',
		(_, { needed, length }) => off(up(needed, 32), length, fraction),
		'halfSize'
	),
	rare(
		'length',
		'a half size as a dash number',
		(_, { needed, length }) => off(up(needed, 32) * 16, length * 16, dash),
		'halfSize'
	),
	common(
		'length',
		'the first layer only',
		({ layers, D }, { length }) => off(bin(first(layers) + 1.5 * D), length, fraction),
		'oneLayer',
		lastLeft,
		'firstLayer'
	),
	common(
		'length',
		'the layer in the middle left out: it cannot be seen',
		({ layers, D }, right) =>
			three(layers) ? off(bin(but(layers, 1) + 1.5 * D), right.length, fraction) : null,
		left(1),
		'middleLeftOut'
	),
	rare(
		'length',
		'the last layer left out',
		({ layers, D }, { length }) =>
			three(layers) ? off(bin(but(layers, 2) + 1.5 * D), length, fraction) : null,
		left(2),
		'lastLeftOut'
	),
	rare(
		'length',
		'the thickest layer twice',
		({ layers, D }, { length }) => off(bin(2 * Math.max(...layers) + 1.5 * D), length, fraction),
		({ layers }) => (three(layers) ? '' : 'thickestForAll')
	),
	common(
		'length',
		'one diameter for the shop head',
		({ layers, D }, { length }) => off(bin(sum(layers) + D), length, fraction),
		'oneD'
	),
	common(
		'length',
		'half a diameter, which is the height of the head',
		({ layers, D }, { length }) => off(bin(sum(layers) + D / 2), length, fraction),
		'headHigh'
	),
	rare(
		'length',
		'two diameters, as for the edge',
		({ layers, D }, { length }) => off(bin(sum(layers) + 2 * D), length, fraction),
		'twoD'
	),
	rare(
		'length',
		'1.5 times grip and diameter together',
		({ layers, D }, { length }) => off(bin(1.5 * (sum(layers) + D)), length, fraction),
		'factorOnBoth'
	),
	rare(
		'length',
		'one and a half times the grip',
		({ layers }, { length }) => off(bin(1.5 * sum(layers)), length, fraction),
		'factorForShank'
	),
	rare(
		'length',
		'the factor on the grip: 1.5 grip + D',
		({ layers, D }, { length }) => off(bin(1.5 * sum(layers) + D), length, fraction),
		'factorOnGrip'
	),
	common(
		'length',
		'1.5 D alone, the stack forgotten',
		({ D }, { length }) => off(bin(1.5 * D), length, fraction),
		'noGrip'
	),
	common(
		'length',
		'the made head added: length taken over all',
		({ layers, D }, { length }) => off(bin(sum(layers) + 1.5 * D + headHigh * D), length, fraction),
		'headToo'
	),
	common(
		'length',
		'the dash number of D read as sixteenths',
		({ layers, D }, { length }) => off(bin(sum(layers) + 1.5 * 2 * D), length, fraction),
		'dashIn16ths'
	),
	common(
		'length',
		'the length in 32nds, as the diameter is',
		(_, { length }) => dash(length * 32),
		'in32nds'
	),
	rare(
		'length',
		'the diameter of the rivet',
		({ D }, { length }) => off(D, length, fraction),
		'other-step:D'
	),
	common('length', 'the rule and not the size', () => '1.5D', 'factor'),
	rare(
		'length',
		'up to a whole millimetre',
		(_, { needed, length }) => {
			const whole = Math.ceil(needed * 25.4 - 1e-6);
			return off(whole / 25.4, length, () => `${whole} mm`);
		},
		'rounding'
	),
	rare(
		'length',
		'reads the sixteenths as eighths',
		(_, { length }) => off(length * 2, length, fraction),
		'in32nds'
	),
	rare('length', 'misreads 5/32 in as 3/16 in', ({ layers, D }, { length }) =>
		D === 5 / 32 ? off(bin(sum(layers) + 1.5 * (3 / 16)), length, fraction) : null
	),
	rare('length', 'a sheet of .040 taken as .4: the point', ({ layers, D }, { length }) =>
		layers.includes(0.04) ? off(bin(sum(layers) + 0.36 + 1.5 * D), length, fraction) : null
	),
	rare(
		'length',
		'the length typed in millimetres without the unit',
		(_, { needed }) => bareMillimetres(needed),
		'unit',
		'mm-for-inch+notStocked'
	),
	rare(
		'length',
		'two mistakes: first layer only, then nearest',
		({ layers, D }, { length }) => off(nearest(first(layers) + 1.5 * D, 16), length, fraction),
		'down+oneLayer',
		'down+firstLayer',
		'firstLayer+nearest'
	),
	rare(
		'length',
		'two mistakes: one diameter, then nearest',
		({ layers, D }, { length }) => off(nearest(sum(layers) + D, 16), length, fraction),
		'down+oneD',
		'nearest+oneD'
	),
	rare(
		'length',
		'two mistakes: middle left out, then rounded down',
		({ layers, D }, { length }) =>
			three(layers) ? off(down(but(layers, 1) + 1.5 * D, 16), length, fraction) : null,
		left(1, 'down'),
		'down+middleLeftOut'
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
	common(
		'length',
		'all right, then the nearest sixteenth',
		(_, { grip, needed, length }) => {
			const typed = off(nearest(needed, 16), length, fraction);
			return typed && { grip: thousandths(grip), needed: decimal(needed), length: typed };
		},
		'down',
		'rounding',
		'nearest'
	),
	rare(
		'needed',
		'needed and length each in the field of the other',
		(_, right) =>
			off(right.needed, right.length) && {
				grip: thousandths(right.grip),
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
