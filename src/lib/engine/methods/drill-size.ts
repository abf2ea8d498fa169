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
					'The number was read as thousandths: it is only a name, and larger numbers are smaller drills.'
				),
				as64ths: slip(
					'drillNumber(drill) * (1/64 in)',
					'The number was read as 64ths: it is only a name, and larger numbers are smaller drills.'
				)
			}
		}),
		fraction: step('upTo(size, 1/64 in)', 'Next fraction drill up', {
			rule: 'drill.fraction',
			kind: fraction,
			tolerance: drillSizes,
			slips: {
				down: slip(
					'downTo(size, 1/64 in)',
					'Rounded down: that drill makes a smaller hole; the next one up is asked.'
				),
				thirtySeconds: slip(
					'upTo(size, 1/32 in)',
					'Only 32nds were counted; fraction drills step by 1/64 in.'
				),
				oneMore: slip(
					'upTo(size, 1/64 in) + (1/64 in)',
					'One size too far: there is a smaller fraction drill that is large enough.'
				)
			}
		})
	},
	outcomes: [
		outcome(
			['size', 'fraction'],
			{ called: shown('drillOfSize(entered)') },
			{
				drill: when('called != ""', '{entered}: that is the {called} drill.'),
				none: otherwise('{entered}: no drill has that size.')
			}
		)
	]
});
