import { rulesOf, type Typed } from '../rule.ts';
import { coarse, decimal, hundredths, off, rounded, swapped, thousandths } from '../typed.ts';

interface Given {
	readonly D: number;
	readonly width: number;
	readonly height: number;
}

interface Right {
	readonly leastWidth: number;
	readonly mostWidth: number;
	readonly leastHeight: number;
	readonly mostHeight: number;
	readonly judgement: string;
}

const { common, rare } = rulesOf<Given, Right>('shop-head-check');

type Judgement = 'accept' | 'drive more' | 'replace';

/** Another judgement than the right one. */
const but = (judged: Judgement, right: Right): string | null =>
	judged === right.judgement ? null : judged;

/** Limits in times D, and what follows from them for the head as measured. */
function judged(
	{ D, width, height }: Given,
	[narrow, wide, flat, high]: readonly [number, number, number, number]
): Judgement {
	if (width > wide * D || height < flat * D) return 'replace';
	if (width < narrow * D || height > high * D) return 'drive more';
	return 'accept';
}

/** The limits of width, and a judgement by them. */
function widths(given: Given, limits: readonly [number, number, number, number]): Typed {
	return {
		leastWidth: decimal(limits[0] * given.D),
		mostWidth: decimal(limits[1] * given.D),
		judgement: judged(given, limits)
	};
}

/** All four limits, and a judgement by them. */
function limits(given: Given, four: readonly [number, number, number, number]): Typed {
	return {
		...widths(given, four),
		leastHeight: decimal(four[2] * given.D),
		mostHeight: decimal(four[3] * given.D)
	};
}

export const rules = [
	common(
		'judgement',
		'looks at the width alone',
		(given, right) => but(judged(given, [1.25, 1.66, 0, 9]), right),
		'widthAlone',
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'judgement',
		'looks at the height alone',
		(given, right) => but(judged(given, [0, 9, 0.33, 0.66]), right),
		'heightAlone',
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'judgement',
		'wants the nominal head, nothing else passes',
		(given, right) => but(judged(given, [1.49, 1.51, 0.49, 0.51]), right),
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'judgement',
		'by the limits of D and E rivets',
		(given, right) => but(judged(given, [1.25, 1.5, 0.5, 0.66]), right),
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'judgement',
		'wide and flat can still be driven more',
		({ D, width, height }, right) =>
			width > 1.66 * D || height < 0.33 * D ? but('drive more', right) : null,
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'judgement',
		'whatever is outside the limits is replaced',
		(given, right) =>
			judged(given, [1.25, 1.66, 0.33, 0.66]) === 'drive more' ? but('replace', right) : null,
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'judgement',
		'big heads hold well: wide passes',
		({ D, width }, right) => (width > 1.66 * D ? but('accept', right) : null),
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	rare(
		'judgement',
		'high heads hold well: high passes',
		({ D, height }, right) => (height > 0.66 * D ? but('accept', right) : null),
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	rare(
		'judgement',
		'takes the dash number of D as sixteenths, so all heads are small',
		(given, right) => but(judged({ ...given, D: 2 * given.D }, [1.25, 1.66, 0.33, 0.66]), right),
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'leastWidth',
		'1.5 D, which is wanted, is the least',
		({ D }, { leastWidth }) => off(1.5 * D, leastWidth),
		'wantedForLeast'
	),
	rare(
		'leastWidth',
		'1.3 D of another specification',
		({ D }, { leastWidth }) => off(1.3 * D, leastWidth),
		'minimum13'
	),
	rare(
		'leastWidth',
		'1.4 D, wanted for D and E rivets',
		({ D }, { leastWidth }) => off(1.4 * D, leastWidth),
		'otherForLeast'
	),
	common(
		'leastWidth',
		'the most in the field of the least',
		({ D }, { leastWidth }) => off(1.66 * D, leastWidth),
		'other-step:mostWidth',
		'mostForLeast'
	),
	rare(
		'leastWidth',
		'D itself: any bulge will do',
		({ D }, { leastWidth }) => off(D, leastWidth),
		'shankForLeast'
	),
	common('leastWidth', 'the factor for the size', () => '1.25', 'factor'),
	rare('leastWidth', 'the rule for the size', () => '1.25 D', 'factor'),
	common(
		'leastWidth',
		'the dash number of D read as sixteenths',
		({ D }, { leastWidth }) => off(2.5 * D, leastWidth),
		'dashForLeast'
	),
	rare(
		'leastWidth',
		'the head as measured',
		({ width }, { leastWidth }) => off(width, leastWidth, thousandths),
		'measuredForLeast'
	),
	rare(
		'leastWidth',
		'two decimals are enough',
		(_, { leastWidth }) => coarse(leastWidth, hundredths),
		'rounding'
	),
	rare(
		'leastWidth',
		'two digits changed places',
		(_, { leastWidth }) => swapped(leastWidth, thousandths, 1),
		'digits'
	),
	rare(
		'leastWidth',
		'read off as the nearest sixteenth',
		(_, { leastWidth }) => rounded(leastWidth, 16),
		'rounding'
	),
	common(
		'mostWidth',
		'1.5 D, which is wanted, is the most',
		({ D }, { mostWidth }) => off(1.5 * D, mostWidth),
		'wantedForMost'
	),
	common(
		'mostWidth',
		'1.75 D: a quarter of D up, as it is a quarter down',
		({ D }, { mostWidth }) => off(1.75 * D, mostWidth),
		'quarterMore'
	),
	rare(
		'mostWidth',
		'2D, the width of the made head',
		({ D }, { mostWidth }) => off(2 * D, mostWidth),
		'universalForMost'
	),
	rare(
		'mostWidth',
		'1.6 D: the second six dropped',
		({ D }, { mostWidth }) => off(1.6 * D, mostWidth),
		'sixDropped'
	),
	rare(
		'mostWidth',
		'the least in the field of the most',
		({ D }, { mostWidth }) => off(1.25 * D, mostWidth),
		'other-step:leastWidth'
	),
	rare(
		'mostWidth',
		'0.66 D: the most height',
		({ D }, { mostWidth }) => off(0.66 * D, mostWidth),
		'other-step:mostHeight'
	),
	common('mostWidth', 'the factor for the size', () => '1.66', 'factor'),
	rare(
		'mostWidth',
		'two decimals are enough',
		(_, { mostWidth }) => coarse(mostWidth, hundredths),
		'rounding'
	),
	rare(
		'mostWidth',
		'the point one place too far right',
		(_, { mostWidth }) => off(mostWidth * 10, mostWidth),
		'digits'
	),
	common(
		'leastHeight',
		'0.5 D, which is wanted, is the least',
		({ D }, { leastHeight }) => off(0.5 * D, leastHeight),
		'wantedForLow'
	),
	rare(
		'leastHeight',
		'0.3 D of another specification',
		({ D }, { leastHeight }) => off(0.3 * D, leastHeight),
		'minimum03'
	),
	rare(
		'leastHeight',
		'the most in the field of the least',
		({ D }, { leastHeight }) => off(0.66 * D, leastHeight),
		'mostForLow',
		'other-step:mostHeight'
	),
	rare(
		'leastHeight',
		'a quarter of D',
		({ D }, { leastHeight }) => off(0.25 * D, leastHeight),
		'quarterForLow'
	),
	common('leastHeight', 'the factor for the size', () => '.33', 'factor'),
	rare(
		'leastHeight',
		'half the width as measured',
		({ width }, { leastHeight }) => off(width / 2, leastHeight),
		'halfMeasured'
	),
	common(
		'mostHeight',
		'0.5 D, which is wanted, is the most',
		({ D }, { mostHeight }) => off(0.5 * D, mostHeight),
		'wantedForHigh'
	),
	rare(
		'mostHeight',
		'0.6 D, wanted for D and E rivets',
		({ D }, { mostHeight }) => off(0.6 * D, mostHeight),
		'otherForHigh'
	),
	rare(
		'mostHeight',
		'0.75 D: a quarter of D up',
		({ D }, { mostHeight }) => off(0.75 * D, mostHeight),
		'quarterMoreHigh'
	),
	rare('mostHeight', 'D itself', ({ D }, { mostHeight }) => off(D, mostHeight), 'shankForHigh'),
	common('mostHeight', 'the factor for the size', () => '.66', 'factor'),
	rare(
		'mostHeight',
		'the head as measured',
		({ height }, { mostHeight }) => off(height, mostHeight, thousandths),
		'measuredForHigh'
	),
	common(
		'leastWidth',
		'least and most changed places, judged right',
		({ D }, { judgement }) => ({
			leastWidth: decimal(1.66 * D),
			mostWidth: decimal(1.25 * D),
			judgement
		}),
		'other-step'
	),
	common(
		'mostWidth',
		'all by the limits of D and E rivets',
		(given, right) =>
			right.judgement === judged(given, [1.25, 1.5, 0.33, 0.66])
				? null
				: widths(given, [1.25, 1.5, 0.33, 0.66]),
		'wantedForMost',
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'judgement',
		'limits right, then replaces what could be driven more',
		(given, right) =>
			right.judgement === 'drive more'
				? { ...widths(given, [1.25, 1.66, 0.33, 0.66]), judgement: 'replace' }
				: null,
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	common(
		'judgement',
		'limits of width right, the height not looked at',
		(given, right) => {
			const only = judged(given, [1.25, 1.66, 0, 9]);
			return only === right.judgement
				? null
				: { ...widths(given, [1.25, 1.66, 0.33, 0.66]), judgement: only };
		},
		'widthAlone',
		'accepted',
		'drivenMore',
		'drivenWithin',
		'replaced',
		'replacedWithin'
	),
	rare(
		'leastWidth',
		'all four from a dash number read as sixteenths',
		(given) => limits({ ...given, D: 2 * given.D }, [1.25, 1.66, 0.33, 0.66]),
		'dashForLeast',
		'dashForMost',
		'mostForLow',
		'dashForHigh'
	),
	rare(
		'leastHeight',
		'least and most height changed places',
		({ D }, { judgement }) => ({
			leastWidth: decimal(1.25 * D),
			mostWidth: decimal(1.66 * D),
			leastHeight: decimal(0.66 * D),
			mostHeight: decimal(0.33 * D),
			judgement
		}),
		'mostForLow',
		'leastForHigh',
		'other-step'
	),
	common(
		'leastWidth',
		'the limits of the height in the fields of the width',
		({ D }, right) => ({
			leastWidth: decimal(0.33 * D),
			mostWidth: decimal(0.66 * D),
			judgement: right.judgement
		}),
		'other-step'
	)
];
