import { length, method, slip, step } from '../solver/method.ts';
import { stockedSize, thousandths } from '../trade/tolerances.ts';

export const rivetDiameter = method({
	id: 'rivet-diameter',
	title: 'Rivet diameter from the thickest sheet',
	given: {
		thickest: length('Thickest sheet')
	},
	steps: {
		threeT: step('3 * thickest', 'Three times the thickest sheet', {
			rule: 'diameter.three-t',
			tolerance: thousandths
		}),
		diameter: step('max(upTo(threeT, 1/32 in), 3/32 in)', 'Rivet diameter', {
			rule: 'diameter.three-t',
			style: 'rivet-diameter',
			tolerance: stockedSize
		})
	},
	slips: {
		oneT: slip(
			'threeT',
			'thickest',
			'One thickness only: the rivet is three times the thickest sheet.'
		),
		twoT: slip('threeT', '2 * thickest', 'Twice the thickness: the rule is three times.'),
		fourT: slip('threeT', '4 * thickest', 'Four times the thickness: the rule is three times.'),
		notStocked: slip('diameter', 'threeT', 'No rivet has this size: take the next 32nd up.'),
		down: slip(
			'diameter',
			'downTo(threeT, 1/32 in)',
			'Rounded down: take the next size up, even when the smaller one is nearer.'
		),
		sixteenths: slip(
			'diameter',
			'max(upTo(threeT, 1/16 in), 3/32 in)',
			'Rounded up to a 16th: rivet diameters step by 1/32 in, lengths by 1/16 in.'
		),
		tooSmall: slip(
			'diameter',
			'upTo(threeT, 1/32 in)',
			'Under 3/32 in: that is too small for a part that carries stress.'
		)
	}
});
