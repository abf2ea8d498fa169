import { count, fraction, length, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { misread, neighbours } from '../trade/table/misread.ts';
import { perInchOfWidth } from '../trade/tables/rivets-per-inch.ts';
import { fromTable, wholeNumber } from '../trade/tolerances.ts';

export const rivetsEachSide = method({
	id: 'rivets-each-side',
	title: 'Rivets each side of a break, by table',
	given: {
		T: given(length, 'Thickness'),
		D: given(rivetDiameter, 'Rivet diameter'),
		width: given(fraction, 'Width of the break')
	},
	steps: {
		perInch: step('perInchOfWidth(T, D)', 'Rivets per inch of width', {
			asks: 'How many rivets per inch does the table give?',

			rule: 'repair.per-inch',
			tolerance: fromTable,
			slips: {
				...misread(perInchOfWidth, 'T, D', neighbours),
				lapShare: slip(
					'0.75 * perInchOfWidth(T, D)',
					'75 percent is for a single lap joint; this repair takes the whole number.'
				),
				stringerShare: slip(
					'0.8 * perInchOfWidth(T, D)',
					'80 percent is for stringers in the upper surface; this repair takes the whole number.',
					{ rare: true }
				),
				frameShare: slip(
					'0.6 * perInchOfWidth(T, D)',
					'60 percent is for intermediate frames; this repair takes the whole number.',
					{ rare: true }
				),
				wholePerInch: slip(
					'upTo(perInchOfWidth(T, D), 1)',
					'Rivets per inch were rounded up: keep the tenth, and round only the product.'
				)
			}
		}),
		eachSide: step('upTo(perInch * width / (1 in), 1)', 'Rivets on each side', {
			asks: 'How many rivets go on each side of the break?',

			rule: 'repair.each-side',
			kind: count,
			tolerance: wholeNumber,
			slips: {
				down: slip(
					'downTo(perInch * width / (1 in), 1)',
					'Rounded down: that is less than the table asks for.'
				),
				bothForOne: slip(
					'2 * upTo(perInch * width / (1 in), 1)',
					'That is the number on both sides; one side was asked for.'
				),
				split: slip(
					'upTo(perInch * width / (1 in) / 2, 1)',
					'The number was shared between the sides: each side needs all of it.',
					{ rare: true }
				),
				lapShareAfter: slip(
					'upTo(0.75 * perInch * width / (1 in), 1)',
					'75 percent of the number is for a single lap joint; this repair takes all of it.',
					{ rare: true }
				),
				oneMore: slip(
					'upTo(perInch * width / (1 in), 1) + 1',
					'One too many: the number by the table is enough for one side.',
					{ rare: true }
				),
				divided: slip(
					'upTo(width / (1 in) / perInch, 1)',
					'The width was divided by the rivets per inch; multiply them.',
					{ rare: true }
				),
				dividedByWidth: slip(
					'upTo(perInch / (width / (1 in)), 1)',
					'The rivets per inch were divided by the width; multiply them by it.',
					{ rare: true, late: true }
				),
				inchesDown: slip(
					'upTo(perInch * downTo(width / (1 in), 1), 1)',
					'The part of an inch was dropped; multiply by the width as it is.',
					{ rare: true }
				),
				inchesUp: slip(
					'upTo(perInch * upTo(width / (1 in), 1), 1)',
					'The part of an inch was counted as a whole one; multiply by the width as it is.',
					{ rare: true }
				),
				bothRoundedOnce: slip(
					'upTo(perInch, 1) * upTo(width / (1 in), 1)',
					'Rivets per inch and inches were both rounded up: multiply them as they are, and round up the product.',
					{ rare: true, late: true }
				),
				bothBeforeRounding: slip(
					'upTo(2 * perInch * width / (1 in), 1)',
					'Both sides were counted; one side was asked for.',
					{ rare: true, late: true }
				),
				noWidth: slip(
					'upTo(perInch, 1)',
					'The width is left out: that is the number for a break 1 in wide.'
				)
			}
		}),
		total: step('2 * eachSide', 'Rivets on both sides', {
			asks: 'And how many on both sides together?',

			rule: 'repair.each-side',
			kind: count,
			tolerance: wholeNumber,
			slips: {
				oneSide: slip('eachSide', 'That is one side only: the other side needs as many.'),
				roundedLast: slip(
					'upTo(2 * perInch * width / (1 in), 1)',
					'Rounded up once for both sides: each side is rounded up by itself.'
				),
				fourTimes: slip(
					'4 * eachSide',
					'Doubled twice: the number for one side is taken two times.'
				)
			}
		})
	}
});
