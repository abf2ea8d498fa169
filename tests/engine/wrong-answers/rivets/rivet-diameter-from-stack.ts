import { rulesOf, type Typed } from '../rule.ts';
import { bareMillimetres, dash, fraction, off, sum, swapped, thousandths } from '../typed.ts';
import { nearestRivet, rivetBeside, rivetFor } from './sizes.ts';

interface Given {
	readonly layers: readonly number[];
}

interface Right {
	readonly thickest: number;
	readonly threeT: number;
	readonly diameter: number;
}

const { common, rare } = rulesOf<Given, Right>('rivet-diameter-from-stack');

const outer = (layers: readonly number[]): number => layers[0] ?? Number.NaN;
const last = (layers: readonly number[]): number => layers.at(-1) ?? Number.NaN;
const middle = (layers: readonly number[]): number =>
	layers.length === 3 ? (layers[1] ?? Number.NaN) : Number.NaN;

/** That this layer is the thinnest one as well. */
const asThinnest =
	(pick: (layers: readonly number[]) => number) =>
	({ layers }: Given): string =>
		pick(layers) === Math.min(...layers) ? 'thinnest' : '';

/** Three times the mean of three layers is their sum. */
const asAverage = ({ layers }: Given): string => (layers.length === 3 ? 'average' : '');

/** The whole sheet filled in from one layer, carried on correctly. */
function workedFrom(layer: number, right: Right): Typed | null {
	const rivet = rivetFor(3 * layer);
	if (off(layer, right.thickest) === null || Number.isNaN(rivet)) return null;
	return {
		thickest: thousandths(layer),
		threeT: thousandths(3 * layer),
		diameter: fraction(rivet)
	};
}

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

/** The wrong layer, and then the rivet beside the one for it. */
function twoMistakes(layer: number, by: -1 | 1, right: Right): Typed | null {
	const rivet = rivetBeside(rivetFor(3 * layer), by);
	if (off(3 * layer, right.threeT) === null || Number.isNaN(rivet)) return null;
	return { threeT: thousandths(3 * layer), diameter: fraction(rivet) };
}

export const rules = [
	common(
		'threeT',
		'the thinnest layer decides: it tears first',
		({ layers }, right) => rivetBy(3 * Math.min(...layers), right),
		'thinnest'
	),
	common(
		'threeT',
		'the outer layer, which the rivet goes in by',
		({ layers }, right) => rivetBy(3 * outer(layers), right),
		'outer',
		asThinnest(outer)
	),
	rare(
		'threeT',
		'the last layer, where the shop head sits',
		({ layers }, right) => rivetBy(3 * last(layers), right),
		'last',
		asThinnest(last)
	),
	rare(
		'threeT',
		'the layer in the middle',
		({ layers }, right) => rivetBy(3 * middle(layers), right),
		'middle',
		asThinnest(middle)
	),
	rare(
		'diameter',
		'the 32nd below, which is no stocked size',
		(_, right) =>
			right.threeT > 7 / 32 && right.threeT < 1 / 4
				? wrongRivet(off(7 / 32, right.diameter, fraction), right)
				: null,
		'unstockedBelow'
	),
	common(
		'threeT',
		'three times the whole stack',
		({ layers }, right) => rivetBy(3 * sum(layers), right),
		'wholeStack'
	),
	common(
		'threeT',
		'the rivet for the grip, no factor',
		({ layers }, right) => rivetBy(sum(layers), right),
		'oneT+wholeStack',
		'stackAlone',
		asAverage
	),
	rare(
		'threeT',
		'three times the mean of the layers',
		({ layers }, right) => rivetBy((3 * sum(layers)) / layers.length, right),
		'average'
	),
	common(
		'diameter',
		'the rivet nearest to 3T',
		(_, right) => wrongRivet(off(nearestRivet(right.threeT), right.diameter, fraction), right),
		'down',
		'nearest'
	),
	common(
		'diameter',
		'the next rivet down',
		(_, right) => wrongRivet(off(rivetBeside(right.diameter, -1), right.diameter, fraction), right),
		'down'
	),
	common(
		'diameter',
		'one size more, to be safe',
		(_, right) => wrongRivet(off(rivetBeside(right.diameter, 1), right.diameter, fraction), right),
		'oneMore'
	),
	common(
		'diameter',
		'3T itself',
		(_, right) => wrongRivet(off(right.threeT, right.diameter, thousandths), right),
		'notStocked',
		'other-step:threeT'
	),
	rare('threeT', 'twice the thickest', (_, right) => rivetBy(2 * right.thickest, right), 'twoT'),
	rare(
		'threeT',
		'2.5 T, the low end on the same page',
		(_, right) => rivetBy(2.5 * right.thickest, right),
		'twoAndHalfT'
	),
	rare(
		'diameter',
		'the dash number counted in sixteenths',
		(_, right) => wrongRivet(dash(right.diameter * 16), right),
		'dashOf16ths'
	),
	common(
		'diameter',
		'writes the dash number over 16',
		(_, right) => wrongRivet(fraction(right.diameter * 2), right),
		'in16ths'
	),
	rare(
		'threeT',
		'two mistakes: the outer layer, and then the next rivet down',
		({ layers }, right) => twoMistakes(outer(layers), -1, right),
		'outer',
		'down',
		asThinnest(outer)
	),
	rare(
		'threeT',
		'two mistakes: the thinnest layer, and then one size more',
		({ layers }, right) => twoMistakes(Math.min(...layers), 1, right),
		'thinnest',
		'oneMore'
	),
	common(
		'thickest',
		'the thinnest layer',
		({ layers }, { thickest }) => off(Math.min(...layers), thickest, thousandths),
		'thinnest'
	),
	common(
		'thickest',
		'the outer layer',
		({ layers }, { thickest }) => off(outer(layers), thickest, thousandths),
		'outer',
		asThinnest(outer)
	),
	common(
		'thickest',
		'the whole stack',
		({ layers }, { thickest }) => off(sum(layers), thickest, thousandths),
		'wholeStack'
	),
	common(
		'thickest',
		'three times it, in the field above',
		(_, { thickest, threeT }) => off(threeT, thickest, thousandths),
		'other-step:threeT'
	),
	rare(
		'thickest',
		'the point one place too far right',
		(_, { thickest }) => off(thickest * 10, thickest, thousandths),
		'digits'
	),
	rare('threeT', 'the factor and not the size', () => '3', 'factor'),
	common(
		'threeT',
		'three times the whole stack',
		({ layers }, { threeT }) => off(3 * sum(layers), threeT, thousandths),
		'wholeStack'
	),
	common(
		'threeT',
		'three times the thinnest',
		({ layers }, { threeT }) => off(3 * Math.min(...layers), threeT, thousandths),
		'thinnest'
	),
	common(
		'threeT',
		'the grip: the sum of three layers',
		({ layers }, { threeT }) => off(sum(layers), threeT, thousandths),
		'oneT+wholeStack',
		'stackAlone',
		asAverage
	),
	rare(
		'threeT',
		'millimetres, typed without the unit',
		(_, { threeT }) => bareMillimetres(threeT),
		'unit'
	),
	rare(
		'threeT',
		'two digits changed places',
		(_, { threeT }) => swapped(threeT, thousandths, 1),
		'digits'
	),
	common(
		'thickest',
		'works the whole sheet from the outer layer',
		({ layers }, right) => workedFrom(outer(layers), right),
		'outer',
		asThinnest(outer)
	),
	common(
		'thickest',
		'works the whole sheet from the thinnest layer',
		({ layers }, right) => workedFrom(Math.min(...layers), right),
		'thinnest'
	),
	rare(
		'thickest',
		'works the whole sheet from the stack',
		({ layers }, right) => workedFrom(sum(layers), right),
		'wholeStack'
	),
	common(
		'threeT',
		'thickest right, then three times the stack',
		({ layers }, right) => {
			const rivet = rivetFor(3 * sum(layers));
			return Number.isNaN(rivet)
				? null
				: {
						thickest: thousandths(right.thickest),
						threeT: thousandths(3 * sum(layers)),
						diameter: fraction(rivet)
					};
		},
		'wholeStack'
	),
	common(
		'diameter',
		'all right up to the rivet, then the nearest',
		(_, right) => {
			const rivet = off(nearestRivet(right.threeT), right.diameter, fraction);
			return (
				rivet && {
					thickest: thousandths(right.thickest),
					threeT: thousandths(right.threeT),
					diameter: rivet
				}
			);
		},
		'down',
		'nearest'
	)
];
