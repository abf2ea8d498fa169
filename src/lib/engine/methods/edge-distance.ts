import { choice, fraction, hundredths, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { edgeFactor, leastEdge } from './pieces/least-edge.ts';
import { onMetricScale, thousandths } from '../trade/tolerances.ts';
import { inches } from './outcomes/near-right.ts';

const shows = {
	times: shown('entered / D', hundredths),
	greatestTimes: shown('right.greatest / D', hundredths)
};

const within = inches(thousandths);

const tooNear = {
	off: when('entered <= 0 in', 'A hole centre {entered} from the edge is not on the sheet.'),
	breaks: when('entered <= D / 2', 'At {entered} the hole breaks through the edge of the sheet.'),
	near: when(
		`entered < right.least - ${within}`,
		'{entered} is under the minimum: the metal outside can crack, or the rivet pull out.'
	)
};

const notTooFar = `entered <= right.greatest + ${within}`;
const far = otherwise('{entered} is over the maximum: the edge can lift.');

export const edgeDistance = method({
	id: 'edge-distance',
	title: 'Edge distance of a rivet',
	given: {
		D: given(rivetDiameter, 'Rivet diameter'),
		head: given(choice(['protruding', 'countersunk']), 'Head')
	},
	steps: {
		factor: edgeFactor,
		least: leastEdge,
		preferred: step('least + (1/16 in)', 'Preferred edge distance', {
			asks: 'Which edge distance is preferred?',

			rule: 'edge.preferred',
			kind: fraction,
			tolerance: onMetricScale,
			slips: {
				nothingAdded: slip(
					'least',
					'That is the bare minimum: nothing is left for a larger rivet in the same hole later.'
				),
				oneThirtySecond: slip(
					'least + (1/32 in)',
					'Only 1/32 in was added: preferred is 1/16 in over the minimum.'
				),
				threeD: slip(
					'3 * D',
					'3D is the minimum pitch. Preferred is 1/16 in over the minimum edge distance.'
				),
				flushForPreferred: slip(
					'2.5 * D',
					'2.5D is the minimum for a countersunk head: preferred is 1/16 in over the minimum.'
				),
				oneEighth: slip(
					'least + (1/8 in)',
					'1/8 in was added: preferred is 1/16 in over the minimum.',
					{ rare: true }
				),
				sixteenthOff: slip(
					'least - (1/16 in)',
					'1/16 in was taken off: it is added to the minimum.',
					{ rare: true }
				),
				sixteenthOnD: slip(
					'factor * (D + (1/16 in))',
					'1/16 in was added to D: it is added to the minimum edge distance.',
					{ rare: true }
				),
				midway: slip(
					'(least + 4 * D) / 2',
					'Midway between minimum and maximum: preferred is 1/16 in over the minimum.',
					{ rare: true }
				),
				nextRivet: slip(
					'factor * (D + (1/32 in))',
					'That is the minimum for the next larger rivet: preferred is the minimum plus 1/16 in.'
				)
			}
		}),
		greatest: step('4 * D', 'Maximum edge distance', {
			asks: 'How far from the edge may the hole centre be?',

			rule: 'edge.greatest',
			kind: fraction,
			tolerance: onMetricScale,
			slips: {
				halfGreatest: slip('4 * D / 2', '2D is only half of the maximum, which is 4D.'),
				pitchForGreatest: slip(
					'3 * D',
					'3D is the minimum pitch; the maximum edge distance is 4D.'
				),
				greatestPitch: slip(
					'10 * D',
					'10D is the maximum pitch, from rivet to rivet; to the edge it is 4D.'
				),
				usualPitch: slip(
					'6 * D',
					'6D is a pitch, from rivet to rivet; the maximum edge distance is 4D.'
				),
				fiveD: slip('5 * D', '5D: the maximum edge distance is 4D.', { rare: true, late: true }),
				greatestToRim: slip(
					'3.5 * D',
					'To the rim of the hole: the maximum edge distance, 4D, runs to its centre.',
					{ rare: true, act: 'rim' }
				),
				greatestForFlush: slip('4.5 * D', '4.5D: the maximum edge distance is 4D for every head.', {
					rare: true
				}),
				greatestIn16ths: slip(
					'8 * D',
					'8D is twice the maximum: that is 4D, with D counted in 32nds.',
					{ rare: true }
				),
				twiceLeast: slip(
					'2 * least',
					'Twice the minimum: the maximum edge distance is 4D for every head.'
				)
			}
		})
	},
	outcomes: [
		outcome(['least'], shows, {
			...tooNear,
			least: when(
				`entered <= right.least + ${within}`,
				'{entered} is {times}D from the edge: the minimum.'
			),
			between: when(
				notTooFar,
				'{entered} is inside the limits, but it is not the minimum: the hole may stand nearer.'
			),
			far
		}),
		outcome(
			['preferred'],
			{
				...shows,
				wanted: shown('right.preferred - right.least', fraction)
			},
			{
				...tooNear,
				bare: when(
					`entered <= right.least + ${within}`,
					'{entered} is the bare minimum: nothing is left for a larger rivet in the same hole later.'
				),
				little: when(
					`entered < right.preferred - ${within}`,
					'{entered} is over the minimum, but by less than is preferred.'
				),
				preferred: when(
					`entered <= right.preferred + ${within}`,
					'{entered} is the minimum plus {wanted}: the hole can later go oversize.'
				),
				between: when(
					notTooFar,
					'{entered} is inside the limits, but it is more than is preferred.'
				),
				far
			}
		),
		outcome(['greatest'], shows, {
			...tooNear,
			between: when(
				`entered < right.greatest - ${within}`,
				'{entered} is inside the limits, but it is not the maximum: the hole may stand farther in.'
			),
			greatest: when(
				notTooFar,
				'{entered} is {times}D from the edge, the maximum: farther in, the edge can lift.'
			),
			far
		})
	]
});
