import { length } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { misread } from '../trade/table/misread.ts';
import { finalDrill, pilotDrill } from '../trade/tables/rivet-drills.ts';
import { clearanceOfHole, drillSizes } from '../trade/tolerances.ts';

export const drillForRivet = method({
	id: 'drill-for-rivet',
	title: 'Drills for a rivet hole',
	given: {
		D: length('Rivet diameter', { style: 'rivet-diameter' })
	},
	steps: {
		pilot: step('pilotDrill(D)', 'Pilot drill', {
			rule: 'drill.rivet',
			style: 'drill',
			tolerance: drillSizes,
			slips: {
				finalForPilot: slip(
					'finalDrill(D)',
					'That is the final drill; the pilot goes through first and is the nominal rivet size.'
				),
				removalForPilot: slip(
					'D - (1/32 in)',
					'1/32 in under the rivet is for drilling a head off; the pilot is the nominal rivet size.'
				),
				halfForPilot: slip('D / 2', 'Half the rivet: the pilot is the nominal rivet size.'),
				...misread(pilotDrill, 'D', { nextForPilot: 'below' })
			}
		}),
		final: step('finalDrill(D)', 'Final drill', {
			rule: 'drill.rivet',
			style: 'drill',
			tolerance: drillSizes,
			slips: {
				nominal: slip(
					'D',
					'The nominal rivet size: the shank binds; the final drill is a little over it.'
				),
				...misread(finalDrill, 'D', { rowAbove: 'above', rowBelow: 'below' }),
				sixtyFourthOver: slip(
					'D + (1/64 in)',
					'1/64 in over the rivet is far too loose; about 0.003 in is wanted.'
				),
				sizeOver: slip(
					'D + (1/32 in)',
					'1/32 in over is the next rivet size; about 0.003 in over the shank is wanted.'
				)
			}
		}),
		clearance: step('final - D', 'Clearance: hole less shank', {
			rule: 'drill.clearance',
			tolerance: clearanceOfHole,
			slips: {
				oneSide: slip(
					'(final - D) / 2',
					'Half of it: the gap on one side; clearance is hole diameter less shank diameter.'
				),
				bothSides: slip(
					'2 * (final - D)',
					'Twice the clearance: hole diameter less shank diameter already counts both sides.'
				)
			}
		})
	}
});
