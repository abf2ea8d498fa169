import { type Rule, rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	coarse,
	decimal,
	fraction,
	hundredths,
	off,
	rounded,
	swapped,
	thousandths
} from '../typed.ts';

interface Given {
	readonly D: number;
	/** The rivet's number, where its diameter is to be read from that. */
	readonly number?: string;
}

interface Right {
	readonly width: number;
	readonly height: number;
}

const { common, rare } = rulesOf<Given, Right>('shop-head');

/** Both sizes filled in from two factors of D. */
const both = (D: number, wide: number, high: number): Typed => ({
	width: decimal(wide * D),
	height: decimal(high * D)
});

/** Whoever reads a number has read it wrong; without one, D was taken twice. */
const read16ths =
	(twice: string) =>
	({ number }: Given): string =>
		number === undefined ? twice : 'diameterIn16ths';

const ofOthers: readonly Rule[] = [
	common(
		'width',
		'1.4 D, wanted for D and E rivets only',
		({ D }, { width }) => off(1.4 * D, width),
		'otherWidth'
	),
	common(
		'width',
		'1.25 D, the least that passes',
		({ D }, { width }) => off(1.25 * D, width),
		'leastWidth'
	),
	common(
		'width',
		'1.66 D, the most that passes',
		({ D }, { width }) => off(1.66 * D, width),
		'mostWidth'
	),
	common(
		'width',
		'2D, the width of the made head',
		({ D }, { width }) => off(2 * D, width, fraction),
		'universalWidth'
	),
	rare(
		'width',
		'1.3 D, the least of another specification',
		({ D }, { width }) => off(1.3 * D, width),
		'minimum13'
	),
	rare(
		'width',
		'1.75 D, a quarter more and a quarter less than 1.5',
		({ D }, { width }) => off(1.75 * D, width),
		'quarterMore'
	),
	common(
		'width',
		'half of D: the height',
		({ D }, { width }) => off(0.5 * D, width),
		'other-step:height'
	),
	common(
		'width',
		'the diameter of the rivet',
		({ D }, { width }) => off(D, width, fraction),
		'notSpread'
	),
	rare(
		'width',
		'half of D on each side of the shank: 2D',
		({ D }, { width }) => off(D + 2 * 0.5 * D, width, decimal),
		'universalWidth'
	),
	rare(
		'width',
		'measured from the middle: half of 1.5 D',
		({ D }, { width }) => off(0.75 * D, width),
		'halfWidth'
	),
	rare(
		'width',
		'three times D, mixed up with the pitch',
		({ D }, { width }) => off(3 * D, width, fraction),
		'doubleWidth'
	),
	common('width', 'the factor for the size', () => '1.5', 'factor'),
	common('width', 'the rule for the size', () => '1.5 D', 'factor'),
	common(
		'width',
		'the dash number of D read as sixteenths',
		({ D }, { width }) => off(1.5 * 2 * D, width, fraction),
		read16ths('doubleWidth'),
		'doubleWidth'
	),
	common(
		'width',
		'read off as the nearest sixteenth',
		(_, { width }) => rounded(width, 16),
		'rounding'
	),
	rare('width', 'read off as the nearest 32nd', (_, { width }) => rounded(width, 32), 'rounding'),
	common(
		'width',
		'two decimals are enough',
		(_, { width }) => coarse(width, hundredths),
		'rounding'
	),
	rare(
		'width',
		'two digits changed places',
		(_, { width }) => swapped(width, thousandths, 1),
		'digits'
	),
	rare(
		'width',
		'the point one place too far right',
		(_, { width }) => off(width * 10, width),
		'digits'
	),
	common(
		'width',
		'millimetres, typed without the unit',
		(_, { width }) => bareMillimetres(width),
		'unit'
	),
	rare(
		'width',
		'takes the next size of rivet from the card',
		({ D }, { width }) => off(1.5 * (D + 1 / 32), width),
		'nextRivet'
	),
	common(
		'height',
		'0.6 D, wanted for D and E rivets only',
		({ D }, { height }) => off(0.6 * D, height),
		'otherHeight'
	),
	common(
		'height',
		'0.66 D, the most that passes',
		({ D }, { height }) => off(0.66 * D, height),
		'mostHeight'
	),
	common(
		'height',
		'0.33 D, the least that passes',
		({ D }, { height }) => off(0.33 * D, height),
		'leastHeight'
	),
	rare('height', 'a third of D', ({ D }, { height }) => off(D / 3, height), 'leastHeight', 'third'),
	rare(
		'height',
		'0.3 D, the least of another specification',
		({ D }, { height }) => off(0.3 * D, height),
		'minimum03'
	),
	rare(
		'height',
		'0.425 D, the height of the made head',
		({ D }, { height }) => off(0.425 * D, height),
		'universalHeight'
	),
	common(
		'height',
		'1.5 D: the shank that goes into it',
		({ D }, { height }) => off(1.5 * D, height, fraction),
		'shankHeight',
		'other-step:width'
	),
	common(
		'height',
		'D: as high as the rivet is thick',
		({ D }, { height }) => off(D, height, fraction),
		'shankThick'
	),
	rare('height', 'half of the width', ({ D }, { height }) => off(0.75 * D, height), 'halfOfWidth'),
	rare('height', 'a quarter of D', ({ D }, { height }) => off(D / 4, height), 'halfHeight'),
	common('height', 'the factor for the size', () => '.5', 'factor'),
	rare('height', 'the rule for the size', () => '1/2 D', 'factor'),
	common(
		'height',
		'the dash number of D read as sixteenths',
		({ D }, { height }) => off(D, height, decimal),
		read16ths('shankThick'),
		'shankThick'
	),
	rare(
		'height',
		'read off as the nearest sixteenth',
		(_, { height }) => rounded(height, 16),
		'rounding'
	),
	common(
		'height',
		'two decimals are enough',
		(_, { height }) => coarse(height, hundredths),
		'rounding'
	),
	rare(
		'height',
		'two digits changed places',
		(_, { height }) => swapped(height, thousandths, 1),
		'digits'
	),
	rare(
		'height',
		'the point one place too far right',
		(_, { height }) => off(height * 10, height),
		'digits'
	),
	rare(
		'height',
		'the point one place too far left',
		(_, { height }) => off(height / 10, height, (value) => `.${value.toFixed(4).slice(2)}`),
		'digits'
	),
	common(
		'height',
		'millimetres, typed without the unit',
		(_, { height }) => bareMillimetres(height),
		'unit'
	),
	common(
		'width',
		'width and height each in the field of the other',
		({ D }) => both(D, 0.5, 1.5),
		'other-step',
		'shankHeight'
	),
	common(
		'width',
		'the head wanted for D and E rivets',
		({ D }) => both(D, 1.4, 0.6),
		'otherWidth',
		'otherHeight'
	),
	rare(
		'width',
		'both by the least: narrow and flat do not go together',
		({ D }) => both(D, 1.25, 0.33),
		'leastWidth',
		'leastHeight'
	),
	rare(
		'width',
		'the limits of an underdriven head',
		({ D }) => both(D, 1.25, 0.66),
		'leastWidth',
		'mostHeight'
	),
	rare(
		'width',
		'the limits of an overdriven head',
		({ D }) => both(D, 1.66, 0.33),
		'mostWidth',
		'leastHeight'
	),
	common(
		'width',
		'both from a dash number read as sixteenths',
		({ D }) => both(D, 3, 1),
		read16ths('doubleWidth'),
		'doubleWidth',
		'shankThick'
	),
	common(
		'width',
		'both for the made head',
		({ D }) => both(D, 2, 0.425),
		'universalWidth',
		'universalHeight'
	),
	common(
		'height',
		'width right, height as if half of it',
		({ D }) => both(D, 1.5, 0.75),
		'halfOfWidth'
	),
	common(
		'height',
		'width right, height a third of D',
		({ D }) => both(D, 1.5, 1 / 3),
		'leastHeight',
		'third'
	),
	rare(
		'width',
		'both to two decimals',
		(_, { width, height }) => {
			const wide = coarse(width, hundredths);
			const high = coarse(height, hundredths);
			return wide && high && { width: wide, height: high };
		},
		'rounding'
	)
];

const ofD: readonly Rule[] = [
	common(
		'width',
		'1.5 D, as of every other rivet',
		({ D }, { width }) => off(1.5 * D, width),
		'otherWidth'
	),
	common(
		'height',
		'0.5 D, as of every other rivet',
		({ D }, { height }) => off(0.5 * D, height),
		'otherHeight'
	),
	common(
		'width',
		'both as of every other rivet: the letters were passed over',
		({ D }) => both(D, 1.5, 0.5),
		'otherWidth',
		'otherHeight'
	),
	common(
		'width',
		'2D, the width of the made head',
		({ D }, { width }) => off(2 * D, width, fraction),
		'universalWidth'
	),
	rare(
		'width',
		'1.25 D, the least that passes',
		({ D }, { width }) => off(1.25 * D, width),
		'leastWidth'
	),
	rare(
		'height',
		'0.66 D, the most that passes',
		({ D }, { height }) => off(0.66 * D, height),
		'mostHeight'
	),
	rare(
		'width',
		'millimetres, typed without the unit',
		(_, { width }) => bareMillimetres(width),
		'unit'
	)
];

/** A D rivet has sizes of its own. */
const isOfD = (given: unknown): boolean => /\dD\d/.test(String((given as Given).number ?? ''));

const only = (rules: readonly Rule[], here: (given: unknown) => boolean): Rule[] =>
	rules.map((rule) => ({
		...rule,
		answer: (given, right) => (here(given) ? rule.answer(given, right) : null)
	}));

export const rules = [...only(ofOthers, (given) => !isOfD(given)), ...only(ofD, isOfD)];
