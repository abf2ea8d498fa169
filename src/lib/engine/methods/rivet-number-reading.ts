import { method, slip, step, words } from '../solver/method.ts';
import { alloyLetters, headNumbers } from '../trade/rivet-code.ts';
import { exactWords, thousandths, wholeNumber } from '../trade/tolerances.ts';

export const rivetNumberReading = method({
	id: 'rivet-number-reading',
	title: 'Rivet number read',
	given: {
		number: words('Rivet number')
	},
	steps: {
		head: step('headIn(number)', 'Head', {
			rule: 'number.head',
			tolerance: exactWords,
			oneOf: Object.keys(headNumbers)
		}),
		alloy: step('alloyIn(number)', 'Rivet alloy', {
			rule: 'number.alloy',
			tolerance: exactWords,
			oneOf: Object.keys(alloyLetters)
		}),
		diameterDash: step('dashAfterLetters(number)', 'Number for the diameter', {
			rule: 'number.code',
			style: 'count',
			tolerance: wholeNumber
		}),
		lengthDash: step('dashAtEnd(number)', 'Number for the length', {
			rule: 'number.code',
			style: 'count',
			tolerance: wholeNumber
		}),
		diameter: step('diameterDash * (1/32 in)', 'Rivet diameter', {
			rule: 'number.code',
			style: 'fraction',
			tolerance: thousandths
		}),
		length: step('lengthDash * (1/16 in)', 'Rivet length', {
			rule: 'number.code',
			style: 'fraction',
			tolerance: thousandths
		})
	},
	slips: {
		universalHead: slip('head', '"universal"', 'The universal head has the number 470.'),
		countersunkHead: slip('head', '"countersunk"', 'The countersunk head has the number 426.'),
		alloy1100: slip('alloy', '"1100"', 'Alloy 1100 has the letter A.'),
		alloy2117: slip('alloy', '"2117"', 'Alloy 2117 has the letters AD.'),
		alloy5056: slip('alloy', '"5056"', 'Alloy 5056 has the letter B.'),
		alloy2017: slip('alloy', '"2017"', 'Alloy 2017 has the letter D.'),
		alloy2024: slip('alloy', '"2024"', 'Alloy 2024 has the letters DD.'),
		lastForDiameter: slip(
			'diameterDash',
			'dashAtEnd(number)',
			'The number behind the dash is the length; the diameter stands before it.'
		),
		firstForLength: slip(
			'lengthDash',
			'dashAfterLetters(number)',
			'The number behind the letters is the diameter; the length stands behind the dash.'
		),
		diameterIn16ths: slip(
			'diameter',
			'diameterDash * (1/16 in)',
			'The diameter was read in 16ths; it goes by 32nds, only the length by 16ths.'
		),
		diameterIn64ths: slip(
			'diameter',
			'diameterDash * (1/64 in)',
			'The diameter was read in 64ths; it goes by 32nds.'
		),
		diameterInTenths: slip(
			'diameter',
			'diameterDash * (0.1 in)',
			'The number was read as tenths of an inch; the diameter goes by 32nds.'
		),
		lengthIn32nds: slip(
			'length',
			'lengthDash * (1/32 in)',
			'The length was read in 32nds; it goes by 16ths, only the diameter by 32nds.'
		),
		lengthIn8ths: slip(
			'length',
			'lengthDash * (1/8 in)',
			'The length was read in 8ths; it goes by 16ths.'
		),
		lengthInTenths: slip(
			'length',
			'lengthDash * (0.1 in)',
			'The number was read as tenths of an inch; the length goes by 16ths.'
		)
	}
});
