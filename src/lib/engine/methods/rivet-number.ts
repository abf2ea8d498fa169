import {
	choice,
	diameterDash,
	fraction,
	headNumber,
	lengthDash,
	partNumber
} from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atMost, method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { alloyLetters, headNumbers } from '../trade/rivet-code.ts';
import { exactNumber, exactWords } from '../trade/tolerances.ts';

export const rivetNumber = method({
	id: 'rivet-number',
	title: 'Rivet number',
	given: {
		head: given(choice(Object.keys(headNumbers)), 'Head'),
		alloy: given(choice(Object.keys(alloyLetters)), 'Rivet alloy'),
		D: given(fraction, 'Rivet diameter'),
		length: given(fraction, 'Rivet length')
	},
	steps: {
		headNumber: step('headNumber(head)', 'Head number, after MS20', {
			asks: 'Which number stands for this head, after MS20?',

			rule: 'number.head',
			kind: headNumber,
			tolerance: exactNumber,
			slips: {
				universalHead: slip('470', '470 is the universal head; this one is countersunk.'),
				countersunkHead: slip('426', '426 is the countersunk head; this one is universal.'),
				roundHead: slip('430', '430 is the round head; the universal head is 470.'),
				flatHead: slip('442', '442 is the flat head.'),
				narrowHead: slip('425', '425 is the older countersunk head of 78°; this is another one.', {
					rare: true
				})
			}
		}),
		letters: step('letters(alloy)', 'Alloy letters', {
			asks: 'Which letters stand for this alloy?',

			rule: 'number.alloy',
			tolerance: exactWords,
			kind: choice(Object.values(alloyLetters)),
			slips: {
				lettersA: slip('"A"', 'The letter A stands for alloy 1100.'),
				lettersAD: slip('"AD"', 'The letters AD stand for alloy 2117.'),
				lettersB: slip('"B"', 'The letter B stands for alloy 5056.'),
				lettersD: slip('"D"', 'The letter D stands for alloy 2017.'),
				lettersDD: slip('"DD"', 'The letters DD stand for alloy 2024.')
			}
		}),
		diameterDash: step('D / (1/32 in)', 'Diameter in 32nds', {
			asks: 'How many 32nds is the diameter?',

			rule: 'number.code',
			kind: diameterDash,
			tolerance: exactNumber,
			slips: {
				diameterIn16ths: slip(
					'D / (1/16 in)',
					'The diameter was counted in 16ths; it goes by 32nds, only the length by 16ths.'
				),
				diameterAsWritten: slip(
					'topNumber(D)',
					'The top number of the fraction was taken as it stands: count the 32nds in it.',
					{ rare: true }
				),
				diameterIn64ths: slip(
					'D / (1/64 in)',
					'The diameter was counted in 64ths; it goes by 32nds.'
				),
				diameterOneOver: slip(
					'D / (1/32 in) + 1',
					'One diameter too large: the number counts the 32nds as they are.',
					{ rare: true }
				),
				lengthForDiameter: slip(
					'length / (1/16 in)',
					'That is the dash number of the length; the diameter comes first.',
					{ act: 'exchanged' }
				)
			}
		}),
		lengthDash: step('length / (1/16 in)', 'Length in 16ths', {
			asks: 'How many 16ths is the length?',

			rule: 'number.code',
			kind: lengthDash,
			tolerance: exactNumber,
			slips: {
				lengthIn32nds: slip(
					'length / (1/32 in)',
					'The length was counted in 32nds; it goes by 16ths, only the diameter by 32nds.'
				),
				lengthAsWritten: slip(
					'topNumber(length)',
					'The top number of the fraction was taken as it stands: count the 16ths in it.',
					{ rare: true }
				),
				lengthIn8ths: slip(
					'length / (1/8 in)',
					'The length was counted in 8ths; it goes by 16ths.'
				),
				dashIn64ths: slip(
					'length / (1/64 in)',
					'The length was counted in 64ths; it goes by 16ths.',
					{ rare: true, late: true }
				),
				inchDropped: slip(
					'(length - downTo(length, 1 in)) / (1/16 in)',
					'The whole inch was dropped: its 16ths count as well.',
					{ rare: true, late: true }
				),
				halfDropped: slip(
					'downTo(length / (1/16 in), 1)',
					'The half size was dropped: write .5 after the dash number.'
				),
				halfUp: slip(
					'upTo(length / (1/16 in), 1)',
					'The half size was rounded up: write .5 after the dash number.',
					{ rare: true }
				),
				lengthOneOver: slip(
					'length / (1/16 in) + 1',
					'One length too long: the number counts the 16ths as they are.',
					{ rare: true }
				),
				lengthInInches: slip('length / (1 in)', 'That is the length in inches: count its 16ths.'),
				diameterForLength: slip(
					'D / (1/32 in)',
					'That is the dash number of the diameter; the length stands after the dash.',
					{ act: 'exchanged' }
				)
			}
		}),
		number: step('rivetNumber(headNumber, letters, diameterDash, lengthDash)', 'Rivet number', {
			asks: 'So what is the whole rivet number?',

			kind: partNumber,
			rule: 'number.code',
			tolerance: exactWords,
			slips: {
				swapped: slip(
					'rivetNumber(headNumber, letters, lengthDash, diameterDash)',
					'The dash numbers have changed places: the diameter comes first, then the length.'
				),
				olderStandard: slip(
					'olderRivetNumber(headNumber, letters, diameterDash, lengthDash)',
					'That is the older number of the same rivet; this asks for the one that begins with MS20.'
				)
			}
		})
	},
	limits: [
		atMost(
			'upTo(diameterDash, 1) - diameterDash',
			'0.001',
			'Rivet diameters come in 32nds of an inch: check the diameter.'
		),
		atMost(
			'upTo(2 * lengthDash, 1) - 2 * lengthDash',
			'0.001',
			'Rivet lengths come in 16ths of an inch, at most with a half: check the length.'
		)
	],
	outcomes: [
		outcome(
			['number'],
			{
				headCalled: shown('headIn(entered)'),
				alloyCalled: shown('alloyIn(entered)'),
				marked: shown('letters(alloyCalled)'),
				thick: shown('dashAfterLetters(entered) * (1/32 in)', fraction),
				long: shown('dashAtEnd(entered) * (1/16 in)', fraction)
			},
			{
				older: when(
					'entered != right.number and headCalled == head and alloyCalled == alloy and thick == D and long == length',
					'{entered} is the older number of the rivet wanted; write the number that begins with MS20.'
				),
				handedOut: when(
					'entered == right.number',
					'{entered} is a {headCalled} head rivet of {alloyCalled}, {thick} by {long}: the rivet wanted.'
				),
				other: otherwise(
					'{entered} is a {headCalled} head rivet of {alloyCalled}, {thick} by {long}: not the rivet wanted.'
				)
			}
		)
	]
});
