import { fraction, lengthInFigures, word } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { misread } from '../trade/table/misread.ts';
import { chartSize } from '../trade/tables/drill-chart.ts';
import { drillSizes } from '../trade/tolerances.ts';

export const drillSize = method({
	id: 'drill-size',
	title: 'Size of a number or letter drill',
	given: {
		drill: given(word, 'Drill')
	},
	steps: {
		size: step('chartSize(drill)', 'Size of the drill', {
			asks: 'What size is this drill?',

			rule: 'drill.sizes',
			tolerance: drillSizes,
			kind: lengthInFigures,
			slips: {
				...misread(chartSize, 'drill', {
					rowLarger: 'above',
					rowSmaller: 'below',
					twoRowsLarger: 'twoAbove',
					twoRowsSmaller: 'twoBelow'
				}),
				asThousandths: slip(
					'drillNumber(drill) * (0.001 in)',
					'The number was read as thousandths; it is only a name.'
				),
				asHundredths: slip(
					'drillNumber(drill) * (0.01 in)',
					'The number was read as hundredths; it is only a name.'
				),
				as64ths: slip(
					'drillNumber(drill) * (1/64 in)',
					'The number was read as 64ths; it is only a name.'
				),
				exchanged: slip(
					'numberedDrill(exchangedDigits(drillNumber(drill)))',
					'The digits of the drill number changed places.',
					{ late: true }
				),
				tenOn: slip(
					'numberedDrill(drillNumber(drill) + 10)',
					'The drill ten numbers on was taken.',
					{ late: true }
				),
				tenBack: slip(
					'numberedDrill(drillNumber(drill) - 10)',
					'The drill ten numbers back was taken.',
					{ late: true }
				)
			}
		}),
		fraction: step('upTo(size, 1/64 in)', 'Next larger fraction drill', {
			asks: 'Which fraction drill comes next above it?',

			rule: 'drill.fraction',
			kind: fraction,
			tolerance: drillSizes,
			slips: {
				down: slip(
					'downTo(size, 1/64 in)',
					'That fraction is smaller than the drill; the next larger one is asked for.'
				),
				thirtySeconds: slip(
					'upTo(size, 1/32 in)',
					'Only 32nds were counted; fraction drills step by 1/64 in.'
				),
				sixteenths: slip(
					'upTo(size, 1/16 in)',
					'Only 16ths were counted; fraction drills step by 1/64 in.'
				),
				down32nds: slip(
					'downTo(size, 1/32 in)',
					'Rounded down to a 32nd; the next larger 64th is asked for.',
					{ rare: true }
				),
				over32: slip(
					'2 * upTo(size, 1/64 in)',
					'Twice the next larger drill: the number of 64ths was put over 32.',
					{ rare: true, act: 'over 32' }
				),
				oneMore: slip(
					'upTo(size, 1/64 in) + (1/64 in)',
					'One size too far: a smaller fraction drill is already larger than this one.',
					{ rare: true }
				)
			}
		}),
		under: step('downTo(size, 1/64 in)', 'Next smaller fraction drill', {
			asks: 'Which fraction drill comes next below it?',

			rule: 'drill.pilot-ream',
			kind: fraction,
			tolerance: drillSizes,
			slips: {
				upForUnder: slip(
					'upTo(size, 1/64 in)',
					'That fraction is larger than the drill; the next smaller one is asked for.'
				),
				under32nds: slip(
					'downTo(size, 1/32 in)',
					'Only 32nds were looked at; fraction drills step by 1/64 in.'
				),
				under16ths: slip(
					'downTo(size, 1/16 in)',
					'Only 16ths were looked at; fraction drills step by 1/64 in.'
				),
				up32nds: slip(
					'upTo(size, 1/32 in)',
					'Rounded up to a 32nd; the next smaller 64th is asked for.',
					{ rare: true }
				),
				underOver32: slip(
					'2 * downTo(size, 1/64 in)',
					'Twice the next smaller drill: the number of 64ths was put over 32.',
					{ rare: true, act: 'over 32' }
				),
				oneLess: slip(
					'downTo(size, 1/64 in) - (1/64 in)',
					'One size too far: a larger fraction drill is still under this one.',
					{ rare: true }
				)
			}
		})
	},
	outcomes: [
		outcome(
			['size', 'fraction', 'under'],
			{ called: shown('drillOfSize(entered)') },
			{
				drill: when('called != ""', '{entered}: that is the {called} drill.'),
				none: otherwise('{entered}: no drill has that size.')
			}
		)
	]
});
