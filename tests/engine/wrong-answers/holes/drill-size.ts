import { rulesOf, type Typed } from '../rule.ts';
import {
	bareMillimetres,
	decimal,
	down,
	fraction,
	hundredths,
	coarse,
	nearest,
	off,
	swapped,
	up
} from '../typed.ts';
import { numberOf, sizeBeside } from './drills.ts';

interface Given {
	readonly drill: string;
}

interface Right {
	readonly size: number;
	readonly fraction: number;
	readonly under: number;
}

const { common, rare } = rulesOf<Given, Right>('drill-size');

/** Size and the next 64th above it, in one check. */
const worked = (size: number, right: Right): Typed | null =>
	off(size, right.size) === null ? null : { size: decimal(size), fraction: fraction(up(size, 64)) };

const beside =
	(places: number) =>
	({ drill }: Given, { size }: Right): string | null =>
		off(sizeBeside(drill, places), size);

/** The slip of the row so many places further in the list, which is a larger drill or a smaller. */
const row =
	(places: number) =>
	({ drill }: Given): string => {
		const which = sizeBeside(drill, places) > sizeBeside(drill, 0) ? 'Larger' : 'Smaller';
		return Math.abs(places) === 2 ? `twoRows${which}` : `row${which}`;
	};

const digits = (drill: string): string => /\d+/.exec(drill)?.[0] ?? '';

export const rules = [
	common('size', 'the row above', beside(-1), row(-1)),
	common('size', 'the row below', beside(1), row(1)),
	rare('size', 'two rows up', beside(-2), row(-2)),
	rare('size', 'two rows down', beside(2), row(2)),
	rare('size', 'the number ten further on: a column aside', beside(10), 'tenOn'),
	rare('size', 'the number ten back: a column aside', beside(-10), 'tenBack'),
	common(
		'size',
		'the number as hundredths: No. 40 is .40',
		({ drill }) => {
			const number = numberOf(drill);
			return Number.isNaN(number) ? null : `.${digits(drill).padStart(2, '0')}`;
		},
		'asHundredths'
	),
	common(
		'size',
		'the number as thousandths: No. 40 is .040',
		({ drill }) => {
			const number = numberOf(drill);
			return Number.isNaN(number) ? null : `.0${digits(drill).padStart(2, '0')}`;
		},
		'asThousandths'
	),
	rare(
		'size',
		'the number as 64ths',
		({ drill }, { size }) => off(numberOf(drill) / 64, size, fraction),
		'as64ths'
	),
	rare(
		'size',
		'the digits of the drill number changed places',
		({ drill }, { size }) => {
			const [tens, ones] = digits(drill);
			return tens === undefined || ones === undefined || tens === ones
				? null
				: off(sizeBeside(`No. ${ones}${tens}`, 0), size);
		},
		'exchanged'
	),
	common(
		'size',
		'two digits of the size changed places',
		(_, { size }) => swapped(size, decimal, 1),
		'digits'
	),
	common(
		'size',
		'the point one place too far right',
		(_, { size }) => off(size * 10, size),
		'digits'
	),
	rare('size', 'the point one place too far left', (_, { size }) => off(size / 10, size), 'digits'),
	common('size', 'two decimals are enough', (_, { size }) => coarse(size, hundredths), 'rounding'),
	rare(
		'size',
		'the nearest 64th',
		(_, { size }) => off(nearest(size, 64), size, fraction),
		'rounding'
	),
	rare(
		'size',
		'the nearest sixteenth',
		(_, { size }) => off(nearest(size, 16), size, fraction),
		'rounding'
	),
	rare(
		'size',
		'millimetres, typed without the unit',
		(_, { size }) => bareMillimetres(size),
		'unit'
	),
	rare('size', 'the letter drill of that place for a number', ({ drill }, { size }) => {
		const number = numberOf(drill);
		return number <= 26 ? off(sizeBeside(String.fromCharCode(64 + number), 0), size) : null;
	}),
	rare('size', 'the number drill of that place for a letter', ({ drill }, { size }) =>
		Number.isNaN(numberOf(drill))
			? off(sizeBeside(`No. ${drill.charCodeAt(0) - 64}`, 0), size)
			: null
	),
	rare(
		'size',
		'the next fraction drill in the field of the size',
		(_, right) => off(right.fraction, right.size, fraction),
		'other-step:fraction'
	),
	common(
		'fraction',
		'the next one under it',
		(_, right) => off(down(right.size, 64), right.fraction, fraction),
		'down'
	),
	common(
		'fraction',
		'the nearest 64th, which is under it',
		(_, right) => off(nearest(right.size, 64), right.fraction, fraction),
		'down',
		'rounding'
	),
	common(
		'fraction',
		'the next 32nd',
		(_, right) => off(up(right.size, 32), right.fraction, fraction),
		'thirtySeconds'
	),
	common(
		'fraction',
		'the next sixteenth',
		(_, right) => off(up(right.size, 16), right.fraction, fraction),
		'sixteenths'
	),
	rare('fraction', 'one 64th too far', (_, right) => fraction(right.fraction + 1 / 64), 'oneMore'),
	common(
		'fraction',
		'the decimal again',
		(_, right) => off(right.size, right.fraction),
		'other-step:size'
	),
	rare(
		'fraction',
		'over 32 for over 64',
		(_, right) => off(2 * right.fraction, right.fraction, fraction),
		'over32'
	),
	rare(
		'under',
		'over 32 for over 64, below it',
		(_, right) => off(2 * right.under, right.under, fraction),
		'underOver32'
	),
	rare('fraction', 'over 100: the hundredths taken for 64ths', ({ drill }, right) =>
		Number.isNaN(numberOf(drill))
			? null
			: off(Math.round(right.size * 100) / 64, right.fraction, fraction)
	),
	rare(
		'fraction',
		'for the row above',
		({ drill }, right) => off(up(sizeBeside(drill, -1), 64), right.fraction, fraction),
		row(-1)
	),
	rare(
		'fraction',
		'for the row below',
		({ drill }, right) => off(up(sizeBeside(drill, 1), 64), right.fraction, fraction),
		row(1)
	),
	common(
		'size',
		'the row above, and the fraction drill for that',
		({ drill }, right) => worked(sizeBeside(drill, -1), right),
		row(-1)
	),
	common(
		'size',
		'the row below, and the fraction drill for that',
		({ drill }, right) => worked(sizeBeside(drill, 1), right),
		row(1)
	),
	common(
		'fraction',
		'size right, then the next one under it',
		(_, right) =>
			off(down(right.size, 64), right.fraction) && {
				size: decimal(right.size),
				fraction: fraction(down(right.size, 64))
			},
		'down'
	),
	common(
		'fraction',
		'size right, then the next 32nd',
		(_, right) =>
			off(up(right.size, 32), right.fraction) && {
				size: decimal(right.size),
				fraction: fraction(up(right.size, 32))
			},
		'thirtySeconds'
	),
	rare(
		'size',
		'each in the field of the other',
		(_, right) => ({
			size: fraction(right.fraction),
			fraction: decimal(right.size)
		}),
		'other-step'
	),
	rare(
		'size',
		'two mistakes: the row below, and the next one under it',
		({ drill }, right) => {
			const size = sizeBeside(drill, 1);
			return off(size, right.size) && { size: decimal(size), fraction: fraction(down(size, 64)) };
		},
		row(1),
		'down'
	)
];
