import { rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { final } from './pieces/final-drill.ts';
import { pilot } from './pieces/pilot-drill.ts';
import { clearanceOfHole, drillSizes } from '../trade/tolerances.ts';

export const drillForRivet = method({
	id: 'drill-for-rivet',
	title: 'Drills for a rivet hole',
	given: {
		D: given(rivetDiameter, 'Rivet diameter')
	},
	steps: {
		pilot,
		final,
		clearance: step('final - D', 'Clearance: hole less shank', {
			asks: 'How much larger is the hole than the shank?',

			rule: 'drill.clearance',
			tolerance: clearanceOfHole,
			slips: {
				oneSide: slip(
					'(final - D) / 2',
					'That is the gap on one side; clearance is the hole less the shank.'
				),
				ruleOfThumb: slip(
					'0.003 in',
					'About 0.003 in is wanted; this asks what these drills leave.'
				),
				addedUp: slip(
					'final + D',
					'Hole and shank were added; clearance is the hole less the shank.',
					{
						rare: true
					}
				),
				bothSides: slip(
					'2 * (final - D)',
					'Twice that: clearance is the hole less the shank, both sides together.'
				)
			}
		})
	},
	outcomes: [
		outcome(
			['final'],
			{
				gap: shown('final - D'),
				under: shown('D - final'),
				wanted: shown('right.final - D')
			},
			{
				binds: when(
					'abs(gap) <= 0.00001 in',
					'The {entered} drill has the size of the shank itself: the rivet binds.'
				),
				small: when(
					'gap < 0 in',
					'The {entered} drill is {under} under the shank: the rivet does not go in.'
				),
				fits: when(
					`abs(entered - right.final) <= (${drillSizes.amount} in)`,
					'The {entered} drill leaves {gap} of clearance: the rivet goes in easily and fills the hole.'
				),
				loose: when(
					'gap > 0.06 * D',
					'The {entered} drill leaves {gap} of clearance, so loose that the shank bends before it fills the hole.'
				),
				other: otherwise(
					'The {entered} drill leaves {gap} of clearance; the one listed leaves {wanted}.'
				)
			}
		)
	]
});
