import { choice, fraction, lengthDash, partNumber } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { nearRight } from './outcomes/near-right.ts';
import { dashDiameter } from './pieces/dash-diameter.ts';
import { diameterDash } from './pieces/diameter-dash.ts';
import { alloyLetters, headNumbers, headsSaid } from '../trade/rivet-code.ts';
import { exactNumber, exactWords, stockedSize } from '../trade/tolerances.ts';

export const rivetNumberReading = method({
	id: 'rivet-number-reading',
	title: 'Rivet number read',
	given: {
		number: given(partNumber, 'Rivet number')
	},
	steps: {
		head: step('headIn(number)', 'Head', {
			asks: 'Which head does the number stand for?',

			rule: 'number.head',
			tolerance: exactWords,
			kind: choice(Object.keys(headNumbers), headsSaid),
			slips: {
				universalHead: slip('"universal"', 'The universal head has the number 470.'),
				countersunkHead: slip('"countersunk"', 'The countersunk head has the number 426.')
			}
		}),
		alloy: step('alloyIn(number)', 'Rivet alloy', {
			asks: 'Which alloy do the letters stand for?',

			rule: 'number.alloy',
			tolerance: exactWords,
			kind: choice(Object.keys(alloyLetters)),
			slips: {
				alloy1100: slip('"1100"', 'Alloy 1100 has the letter A.'),
				alloy2117: slip('"2117"', 'Alloy 2117 has the letters AD.'),
				alloy5056: slip('"5056"', 'Alloy 5056 has the letter B.'),
				alloy2017: slip('"2017"', 'Alloy 2017 has the letter D.'),
				alloy2024: slip('"2024"', 'Alloy 2024 has the letters DD.')
			}
		}),
		diameterDash,
		lengthDash: step('dashAtEnd(number)', 'Number for the length', {
			asks: 'Which number of the rivet stands for its length?',

			rule: 'number.code',
			kind: lengthDash,
			tolerance: exactNumber,
			slips: {
				firstForLength: slip(
					'dashAfterLetters(number)',
					'The number after the letters is the diameter; the length stands after the dash.',
					{ act: 'exchanged' }
				)
			}
		}),
		diameter: dashDiameter,
		length: step('lengthDash * (1/16 in)', 'Rivet length', {
			asks: 'So how long is the rivet?',

			rule: 'number.code',
			kind: fraction,
			tolerance: stockedSize,
			slips: {
				lengthIn32nds: slip(
					'lengthDash * (1/32 in)',
					'The length was read in 32nds; it goes by 16ths, only the diameter by 32nds.'
				),
				lengthIn8ths: slip(
					'lengthDash * (1/8 in)',
					'The length was read in 8ths; it goes by 16ths.'
				),
				lengthInMm: slip(
					'lengthDash * (1 in) / 25.4',
					'The number was read as millimetres; the length goes by 16ths of an inch.',
					{ rare: true }
				),
				lengthIn64ths: slip(
					'lengthDash * (1/64 in)',
					'The length was read in 64ths; it goes by 16ths.',
					{ rare: true }
				),
				lengthOneOver: slip(
					'(lengthDash + 1) * (1/16 in)',
					'1/16 in too long: count the 16ths once more.',
					{ rare: true }
				),
				lengthOneUnder: slip(
					'(lengthDash - 1) * (1/16 in)',
					'1/16 in too short: count the 16ths once more.',
					{ rare: true, late: true }
				),
				gripForLength: slip(
					'lengthDash * (1/16 in) - 1.5 * diameter',
					'1.5D was taken off: the number gives the whole length.',
					{ rare: true }
				),
				lengthInTenths: slip(
					'lengthDash * (0.1 in)',
					'The number was read as tenths of an inch; the length goes by 16ths.'
				)
			}
		})
	},
	outcomes: [
		outcome(
			['diameter'],
			{ marked: shown('letters(alloy)') },
			{
				sized: when(
					nearRight('entered', stockedSize),
					'A rivet of {diameter} diameter: what {number} stands for.'
				),
				misread: otherwise('A rivet of {diameter} diameter: {number} stands for another one.')
			}
		),
		outcome(
			['length'],
			{ marked: shown('letters(alloy)') },
			{
				sized: when(
					nearRight('entered', stockedSize),
					'A rivet {length} long: what {number} stands for.'
				),
				misread: otherwise('A rivet {length} long: {number} stands for another one.')
			}
		)
	]
});
