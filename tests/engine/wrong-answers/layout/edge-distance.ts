import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	cutTo,
	decimal,
	fraction,
	off,
	rounded,
	swapped,
	thousandths
} from '../typed.ts';

interface Given {
	readonly D: number;
	readonly head: string;
	/** Of the rivet, where that is given and not D. */
	readonly number?: string;
}

interface Right {
	readonly factor: number;
	readonly least: number;
	readonly preferred: number;
	readonly greatest: number;
}

const { common, rare } = rulesOf<Given, Right>('edge-distance');

/** FAA-H-8083-31B, ch. 4, Fig. 4-79: 2D, or 2.5 D for countersunk heads; at most 4D. */
const factor = ({ head }: Given): number => (head === 'protruding' ? 2 : 2.5);
const otherFactor = ({ head }: Given): number => (head === 'protruding' ? 2.5 : 2);

/** Least, preferred and greatest filled in from a least one. */
const three = (least: number, greatest: number): Typed => ({
	least: fraction(least),
	preferred: fraction(least + 1 / 16),
	greatest: fraction(greatest)
});

export const rules = [
	common(
		'least',
		'the factor of the other head',
		(given, { least }) => off(otherFactor(given) * given.D, least, fraction),
		'flushFactor',
		'protrudingFactor'
	),
	common(
		'least',
		'from the rim of the hole: half of D too little',
		(given, { least }) => off((factor(given) - 0.5) * given.D, least, fraction),
		'toRim',
		({ head }) => (head === 'countersunk' ? 'protrudingFactor' : 'shankFactor')
	),
	rare(
		'least',
		'to the rim of the hole: half of D too much',
		(given, { least }) => off((factor(given) + 0.5) * given.D, least, fraction),
		'fromRim',
		({ head }) => (head === 'countersunk' ? 'pitchFactor' : 'flushFactor')
	),
	common(
		'least',
		'1.5 D, taken over from the length',
		({ D }, { least }) => off(1.5 * D, least, fraction),
		'shankFactor'
	),
	common(
		'least',
		'3D, which is the least pitch',
		({ D }, { least }) => off(3 * D, least, fraction),
		'pitchFactor'
	),
	rare(
		'least',
		'one diameter',
		({ D }, { least }) => off(D, least, fraction),
		'oneDiameter',
		({ head }) => (head === 'protruding' ? 'halfLeast' : '')
	),
	common(
		'least',
		'4D, the greatest',
		({ D }, { least }) => off(4 * D, least, fraction),
		'other-step:greatest',
		'greatestForLeast',
		({ head }) => (head === 'protruding' ? 'dashIn16ths' : '')
	),
	rare('least', '1.7 D of a specification for one rivet', ({ D }, { least }) =>
		off(1.7 * D, least, decimal)
	),
	common(
		'least',
		'the preferred one: 1/16 in more',
		(_, { least }) => fraction(least + 1 / 16),
		'other-step:preferred',
		'sixteenthAdded'
	),
	common('least', 'the factor for the size', (given) => `${factor(given)}`, 'factor'),
	common('least', 'the rule for the size', (given) => `${factor(given)}D`, 'factor'),
	rare('least', 'the rule for the size, with times', (given) => `${factor(given)} x D`, 'factor'),
	common(
		'least',
		'the dash number of D read as sixteenths',
		(given, { least }) => off(factor(given) * 2 * given.D, least, fraction),
		'dashIn16ths',
		({ number }) => (number ? 'diameterIn16ths' : '')
	),
	rare(
		'least',
		'halved: half on each side of the hole',
		(_, { least }) => off(least / 2, least, fraction),
		'halfLeast'
	),
	rare('least', 'read off as the nearest eighth', (_, { least }) => rounded(least, 8), 'rounding'),
	common(
		'least',
		'read off as the nearest sixteenth',
		(_, { least }) => rounded(least, 16),
		'rounding'
	),
	rare('least', 'cut off behind two digits', (_, { least }) => coarse(least, cutTo(2)), 'rounding'),
	rare(
		'least',
		'two digits changed places',
		(_, { least }) => swapped(least, thousandths, 1),
		'digits'
	),
	rare(
		'least',
		'millimetres, typed without the unit',
		(_, { least }) => bareMillimetres(least),
		'unit'
	),
	rare(
		'least',
		'for the next larger rivet',
		(given, { least }) => off(factor(given) * (given.D + 1 / 32), least, fraction),
		'nextRivetLeast',
		({ head }) => (head === 'protruding' ? 'sixteenthAdded' : '')
	),
	rare(
		'least',
		'two mistakes: the other head, and D as sixteenths',
		(given, { least }) => off(otherFactor(given) * 2 * given.D, least, fraction),
		'dashIn16ths+flushFactor',
		'dashIn16ths+protrudingFactor'
	),
	rare('least', 'two mistakes: the other head, and from the rim', (given, { least }) =>
		off((otherFactor(given) - 0.5) * given.D, least, fraction)
	),
	common(
		'greatest',
		'3D',
		({ D }, { greatest }) => off(3 * D, greatest, fraction),
		'pitchForGreatest'
	),
	common(
		'greatest',
		'6D, from the pitch',
		({ D }, { greatest }) => off(6 * D, greatest, fraction),
		'usualPitch'
	),
	common(
		'greatest',
		'10 D, the greatest pitch',
		({ D }, { greatest }) => off(10 * D, greatest, fraction),
		'greatestPitch'
	),
	rare(
		'greatest',
		'8D, from the pitch',
		({ D }, { greatest }) => off(8 * D, greatest, fraction),
		'greatestIn16ths',
		'diameterIn16ths'
	),
	rare(
		'greatest',
		'4.5 D: half a diameter more for countersunk heads',
		({ D, head }, right) =>
			head === 'countersunk' ? off(4.5 * D, right.greatest, fraction) : null,
		'greatestForFlush'
	),
	common(
		'greatest',
		'the least one typed twice',
		(_, { least, greatest }) => off(least, greatest, fraction),
		'other-step:least',
		({ head }) => (head === 'protruding' ? 'halfGreatest' : '')
	),
	rare(
		'greatest',
		'the least one doubled',
		(_, { least, greatest }) => off(2 * least, greatest, fraction),
		'twiceLeast'
	),
	rare(
		'greatest',
		'the rim of the hole: 3.5 D',
		({ D }, { greatest }) => off(3.5 * D, greatest, fraction),
		'greatestToRim'
	),
	common('greatest', 'the rule for the size', () => '4D', 'factor'),
	rare('greatest', 'the factor for the size', ({ D }) => (4 * D === 4 ? null : '4'), 'factor'),
	rare(
		'greatest',
		'the dash number of D read as sixteenths',
		({ D }, { greatest }) => off(8 * D, greatest, fraction),
		'greatestIn16ths',
		({ number }) => (number ? 'diameterIn16ths' : '')
	),
	common(
		'preferred',
		'2.5 D, the recommended one',
		({ D }, { preferred }) => off(2.5 * D, preferred, fraction),
		'flushForPreferred'
	),
	common(
		'preferred',
		'3D, half a diameter and more to spare',
		({ D }, { preferred }) => off(3 * D, preferred, fraction),
		'threeD'
	),
	common(
		'preferred',
		'the least one, nothing added',
		(_, { least, preferred }) => off(least, preferred, fraction),
		'nothingAdded',
		'other-step:least'
	),
	rare(
		'preferred',
		'1/32 in added',
		(_, { least, preferred }) => off(least + 1 / 32, preferred, fraction),
		'oneThirtySecond'
	),
	rare(
		'preferred',
		'1/8 in added',
		(_, { least, preferred }) => off(least + 1 / 8, preferred, fraction),
		'oneEighth'
	),
	common(
		'preferred',
		'the least one of the next larger rivet',
		(given, { preferred }) => off(factor(given) * (given.D + 1 / 32), preferred, fraction),
		'nextRivet'
	),
	rare(
		'preferred',
		'midway between least and greatest',
		(_, { least, preferred, greatest }) => off((least + greatest) / 2, preferred, fraction),
		'midway'
	),
	rare(
		'preferred',
		'one sixteenth added to D, then the factor',
		(given, { preferred }) => off(factor(given) * (given.D + 1 / 16), preferred, fraction),
		'sixteenthOnD'
	),
	rare(
		'preferred',
		'one sixteenth taken off',
		(_, { least, preferred }) => off(least - 1 / 16, preferred, fraction),
		'sixteenthOff'
	),
	common(
		'least',
		'least and greatest each in the field of the other',
		(given, right) => ({
			least: fraction(right.greatest),
			greatest: fraction(factor(given) * given.D)
		}),
		'other-step'
	),
	common(
		'least',
		'the other head; the greatest right',
		(given, { greatest }) => ({
			least: fraction(otherFactor(given) * given.D),
			greatest: fraction(greatest)
		}),
		'flushFactor',
		'protrudingFactor'
	),
	common(
		'least',
		'both from a dash number read as sixteenths',
		(given) => ({
			least: fraction(factor(given) * 2 * given.D),
			greatest: fraction(8 * given.D)
		}),
		'dashIn16ths',
		({ number }) => (number ? 'diameterIn16ths' : ''),
		'greatestIn16ths'
	),
	common(
		'least',
		'the other head, and the preferred one from it',
		(given) => three(otherFactor(given) * given.D, 4 * given.D),
		'flushFactor',
		'protrudingFactor'
	),
	common(
		'least',
		'from the rim of the hole, and the preferred one from it',
		(given) => three((factor(given) - 0.5) * given.D, 4 * given.D),
		'toRim',
		({ head }) => (head === 'countersunk' ? 'protrudingFactor' : 'shankFactor')
	),
	common(
		'least',
		'pitch for edge: 3D and 10 D',
		({ D }) => ({
			least: fraction(3 * D),
			greatest: fraction(10 * D)
		}),
		'pitchFactor',
		'greatestPitch'
	),
	rare(
		'least',
		'both from the rim of the hole',
		(given) => ({
			least: fraction((factor(given) - 0.5) * given.D),
			greatest: fraction(3.5 * given.D)
		}),
		'toRim',
		'greatestToRim',
		({ head }) => (head === 'countersunk' ? 'protrudingFactor' : 'shankFactor')
	),
	rare(
		'least',
		'least and preferred changed places',
		(_, right) => ({
			least: fraction(right.preferred),
			preferred: fraction(right.least),
			greatest: fraction(right.greatest)
		}),
		'other-step',
		'nothingAdded'
	)
];
