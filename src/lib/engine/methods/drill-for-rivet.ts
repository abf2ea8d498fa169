import { length } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { final } from './pieces/final-drill.ts';
import { pilot } from './pieces/pilot-drill.ts';
import { clearanceOfHole } from '../trade/tolerances.ts';

export const drillForRivet = method({
	id: 'drill-for-rivet',
	title: 'Drills for a rivet hole',
	given: {
		D: length('Rivet diameter', { style: 'rivet-diameter' })
	},
	steps: {
		pilot,
		final,
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
