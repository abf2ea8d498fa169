import { choice, length } from '../solver/given.ts';
import { method, slip, step } from '../solver/write.ts';
import { edgeFactor, leastEdge } from './pieces/least-edge.ts';
import { thousandths } from '../trade/tolerances.ts';

export const edgeDistance = method({
	id: 'edge-distance',
	title: 'Edge distance of a rivet',
	given: {
		D: length('Rivet diameter', { style: 'rivet-diameter' }),
		head: choice('Head', ['protruding', 'countersunk'])
	},
	steps: {
		factor: edgeFactor,
		least: leastEdge,
		preferred: step('least + (1/16 in)', 'Preferred edge distance', {
			rule: 'edge.preferred',
			style: 'fraction',
			tolerance: thousandths,
			slips: {
				nothingAdded: slip(
					'least',
					'The bare least: nothing is left for a larger rivet in the same hole later.'
				),
				oneThirtySecond: slip(
					'least + (1/32 in)',
					'Only 1/32 in was added: preferred is 1/16 in over the least.'
				),
				nextRivet: slip(
					'factor * (D + (1/32 in))',
					'The least for the next larger rivet; asked is the least plus 1/16 in.'
				)
			}
		}),
		greatest: step('4 * D', 'Greatest edge distance', {
			rule: 'edge.greatest',
			style: 'fraction',
			tolerance: thousandths,
			slips: {
				halfGreatest: slip('4 * D / 2', 'Half of 4 D: the radius was taken for the diameter.'),
				pitchForGreatest: slip(
					'3 * D',
					'3 D is the least pitch; the greatest edge distance is 4 D.'
				),
				greatestPitch: slip(
					'10 * D',
					'10 D is the greatest pitch, from rivet to rivet; to the edge it is 4 D.'
				),
				twiceLeast: slip('2 * least', 'Twice the least: the greatest is 4 D for every head.')
			}
		})
	}
});
