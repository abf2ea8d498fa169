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

/** That this layer is the thinnest one as well, alone or with another slip. */
const asThinnest =
	(pick: (layers: readonly number[]) => number, ...others: readonly string[]) =>
	({ layers }: Given): string =>
		pick(layers) === Math.min(...layers) ? [...others, 'thinnest'].join('+') : '';

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

export const rules = [
	common(
		'diameter',
		'the thinnest layer decides: it tears first',
		({ layers }, { diameter }) => off(rivetFor(3 * Math.min(...layers)), diameter, fraction),
		'thinnest'
	),
	common(
		'diameter',
		'the outer layer, which the rivet goes in by',
		({ layers }, { diameter }) => off(rivetFor(3 * outer(layers)), diameter, fraction),
		'outer',
		asThinnest(outer)
	),
	rare(
		'diameter',
		'the last layer, where the shop head sits',
		({ layers }, { diameter }) => off(rivetFor(3 * last(layers)), diameter, fraction),
		'last',
		asThinnest(last)
	),
	rare(
		'diameter',
		'the layer in the middle',
		({ layers }, { diameter }) => off(rivetFor(3 * middle(layers)), diameter, fraction),
		'middle',
		asThinnest(middle)
	),
	rare(
		'diameter',
		'the 32nd below, which is no stocked size',
		(_, { threeT, diameter }) =>
			threeT > 7 / 32 && threeT < 1 / 4 ? off(7 / 32, diameter, fraction) : null,
		'unstockedBelow'
	),
	common(
		'diameter',
		'three times the whole stack',
		({ layers }, { diameter }) => off(rivetFor(3 * sum(layers)), diameter, fraction),
		'wholeStack'
	),
	common(
		'diameter',
		'the rivet for the grip, no factor',
		({ layers }, { diameter }) => off(rivetFor(sum(layers)), diameter, fraction),
		'oneT+wholeStack',
		'stackAlone',
		asAverage
	),
	rare(
		'diameter',
		'three times the mean of the layers',
		({ layers }, { diameter }) =>
			off(rivetFor((3 * sum(layers)) / layers.length), diameter, fraction),
		'average'
	),
	common(
		'diameter',
		'the rivet nearest to 3T',
		(_, { threeT, diameter }) => off(nearestRivet(threeT), diameter, fraction),
		'down',
		'nearest'
	),
	common(
		'diameter',
		'the next rivet down',
		(_, { diameter }) => off(rivetBeside(diameter, -1), diameter, fraction),
		'down'
	),
	common(
		'diameter',
		'one size more, to be safe',
		(_, { diameter }) => off(rivetBeside(diameter, 1), diameter, fraction),
		'oneMore'
	),
	common(
		'diameter',
		'3T itself',
		(_, { threeT, diameter }) => off(threeT, diameter, thousandths),
		'notStocked',
		'other-step:threeT'
	),
	rare(
		'diameter',
		'twice the thickest',
		(_, { thickest, diameter }) => off(rivetFor(2 * thickest), diameter, fraction),
		'twoT'
	),
	rare(
		'diameter',
		'2.5 T, the low end on the same page',
		(_, { thickest, diameter }) => off(rivetFor(2.5 * thickest), diameter, fraction),
		'twoAndHalfT'
	),
	rare(
		'diameter',
		'the dash number counted in sixteenths',
		(_, { diameter }) => dash(diameter * 16),
		'dashOf16ths'
	),
	common(
		'diameter',
		'writes the dash number over 16',
		(_, { diameter }) => off(diameter * 2, diameter, fraction),
		'in16ths'
	),
	rare(
		'diameter',
		'two mistakes: the outer layer, and then the next rivet down',
		({ layers }, { diameter }) =>
			off(rivetBeside(rivetFor(3 * outer(layers)), -1), diameter, fraction),
		'down+outer',
		asThinnest(outer, 'down')
	),
	rare(
		'diameter',
		'two mistakes: the thinnest layer, and then one size more',
		({ layers }, { diameter }) =>
			off(rivetBeside(rivetFor(3 * Math.min(...layers)), 1), diameter, fraction),
		'oneMore+thinnest'
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
