import { fraction, in32nds, length, word } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, slip, step, when } from '../solver/write.ts';
import { nearRight } from './outcomes/near-right.ts';
import { misread, neighbours } from '../trade/table/misread.ts';
import { minimumRadius } from '../trade/tables/least-radius.ts';
import { chartRadius, thousandths } from '../trade/tolerances.ts';

export const leastBendRadius = method({
	id: 'least-bend-radius',
	title: 'Minimum bend radius from the chart',
	given: {
		alloy: given(word, 'Alloy and temper'),
		T: given(length, 'Thickness')
	},
	steps: {
		radius: step('minimumRadius(alloy, T)', 'Minimum inside radius in the chart', {
			asks: 'Which minimum inside radius does the chart give?',

			rule: 'bend.least-radius',
			tolerance: chartRadius,
			slips: {
				...misread(minimumRadius, 'alloy, T', neighbours),
				...misread(
					minimumRadius,
					'alloy, T',
					{
						twoRowsUp: 'twoAbove',
						twoRowsDown: 'twoBelow',
						twoColumnsLeft: 'twoLeft',
						twoColumnsRight: 'twoRight',
						threeColumnsLeft: 'threeLeft',
						threeColumnsRight: 'threeRight'
					},
					{ late: true }
				),
				annealed: slip(
					'minimumRadius(annealed(alloy), T)',
					'That is the radius for the annealed sheet (O): this temper is harder and needs more.'
				),
				harder: slip(
					'minimumRadius(harder(alloy), T)',
					'That is the radius for the same alloy in a harder temper: this one bends sharper.'
				),
				twiceT: slip(
					'2 * T',
					'2T is a rule of thumb: this alloy and temper has its own radius in the chart.',
					{ rare: true }
				),
				threeTimesT: slip(
					'3 * T',
					'3T is a rule of thumb: this alloy and temper has its own radius in the chart.',
					{ rare: true }
				),
				lessT: slip(
					'minimumRadius(alloy, T) - T',
					'T was taken off: the chart gives the inside radius as it is.',
					{ rare: true }
				),
				plusT: slip(
					'minimumRadius(alloy, T) + T',
					'T was added: the chart gives the inside radius as it is.',
					{ rare: true }
				),
				diameterOfBar: slip(
					'2 * minimumRadius(alloy, T)',
					'Twice the radius: the chart gives the radius, not the diameter.',
					{ rare: true }
				),
				in64ths: slip(
					'minimumRadius(alloy, T) * 100 / 64',
					'The two decimals were read as 64ths: they are hundredths of an inch.',
					{ rare: true }
				),
				thickness: slip('T', 'That is the thickness: the radius stands in the column of the alloy.')
			}
		}),
		in32nds: step('nearest(radius, 1/32 in)', 'The 32nd it stands for', {
			asks: 'Which 32nd does it stand for?',

			symbol: 'in 32nds',
			rule: 'bend.chart-32nds',
			kind: in32nds,
			tolerance: thousandths,
			slips: {
				decimalsAs32nds: slip(
					'radius * 100 / 32',
					'The decimals were read as the number of 32nds: they are parts of an inch.',
					{ rare: true }
				),
				down32nds: slip(
					'downTo(radius, 1/32 in)',
					'Rounded down to a 32nd: the number in the chart stands for the nearest one.',
					{ rare: true }
				),
				one32ndOver: slip(
					'nearest(radius, 1/32 in) + (1/32 in)',
					'One 32nd too much: what the chart prints stands for the nearest 32nd.',
					{ rare: true, late: true }
				),
				in16ths: slip(
					'nearest(radius, 1/16 in)',
					'Taken to the nearest 1/16 in: what the chart prints stands for a 32nd.',
					{ rare: true }
				),
				one32ndUnder: slip(
					'downTo(radius, 1/32 in) < nearest(radius, 1/32 in) ? nearest(radius, 1/32 in) : nearest(radius, 1/32 in) - (1/32 in)',
					'One 32nd too little: what the chart prints stands for the nearest 32nd.',
					{ rare: true, late: true }
				)
			}
		}),
		bar: step('nextBar(in32nds)', 'Sharpest nose bar allowed', {
			asks: 'Which is the sharpest nose bar you may take?',

			rule: 'bend.nose-bar',
			kind: fraction,
			tolerance: thousandths,
			slips: {
				decimals: slip(
					'nextBar(radius)',
					'The two decimals stand for a 32nd, so the bar of that very size is allowed.'
				),
				noBar: slip(
					'in32nds',
					'That is the minimum radius itself: the rack has no bar of it, so take the next larger one.'
				),
				under: slip(
					'barUnder(in32nds)',
					'A bar sharper than the minimum radius: the metal may crack.'
				),
				blunter: slip(
					'nextBar(nextBar(in32nds) + (1/32 in))',
					'A bar blunter than needed: the sheet may be bent over a sharper one.'
				),
				upToEighth: slip(
					'upTo(nextBar(in32nds), 1/8 in)',
					'Rounded up to the next 1/8 in: the rack holds sharper bars that are allowed.',
					{ rare: true }
				),
				barDiameter: slip(
					'2 * nextBar(in32nds)',
					'That is the diameter of the bar: bars are named by their radius.',
					{ rare: true }
				),
				halfBar: slip(
					'nextBar(in32nds) / 2',
					'Half of it: the chart gives the radius, not the diameter.',
					{ rare: true }
				),
				plusThickness: slip(
					'upTo(nextBar(in32nds) + T, 1/32 in)',
					'T was added: the nose bar has the inside radius.',
					{ rare: true }
				),
				largest: slip('1/4 in', 'The largest bar in the rack: a sharper one is allowed too.')
			}
		})
	},
	outcomes: [
		outcome(
			['radius'],
			{},
			{
				fits: when(
					nearRight('radius', chartRadius),
					'A radius of {radius} is as sharp as this sheet may be bent.'
				),
				sharp: when(
					'radius < right.radius',
					'A radius of {radius} is sharper than the chart allows: the outside is stretched too far and may crack, at once or in service.'
				),
				wide: otherwise(
					'A radius of {radius} will not crack, but the chart allows a sharper bend; this one takes more room than it needs.'
				)
			}
		),
		outcome(
			['bar'],
			{},
			{
				fits: when(
					nearRight('bar', thousandths),
					'A nose bar of {bar} is the sharpest in the rack that this sheet may be bent over.'
				),
				sharp: when(
					`bar < in32nds - ${thousandths.amount} in`,
					'A nose bar of {bar} is sharper than the chart allows: the outside is stretched too far and may crack, at once or in service.'
				),
				missing: when(
					'bar < right.bar',
					'A radius of {bar} will not crack, but the rack has no such nose bar.'
				),
				wide: otherwise(
					'A nose bar of {bar} will not crack the sheet, but a sharper one is allowed; this bend takes more room than it needs.'
				)
			}
		)
	]
});
