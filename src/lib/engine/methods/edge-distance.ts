import { choice, fraction, hundredths, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, when } from '../solver/write.ts';
import { edgeFactor, leastEdge } from './pieces/least-edge.ts';
import { thousandths } from '../trade/tolerances.ts';

const shows = {
	times: shown('entered / D', hundredths),
	greatestTimes: shown('right.greatest / D', hundredths)
};

const within = `(${thousandths.amount} in)`;

const tooNear = {
	off: when('entered <= 0 in', 'A hole centre {entered} from the edge is not on the sheet.'),
	breaks: when('entered <= D / 2', 'At {entered} the hole breaks through the edge of the sheet.'),
	near: when(
		`entered < right.least - ${within}`,
		'{entered} is under the least, {right.least}: the metal outside can crack, or the rivet pull out.'
	)
};

const notTooFar = `entered <= right.greatest + ${within}`;
const far = otherwise('{entered} is over the greatest, {right.greatest}: the edge can lift.');

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
			rule: 'edge.preferred',
			kind: fraction,
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
			kind: fraction,
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
	},
	outcomes: [
		outcome(['least'], shows, {
			...tooNear,
			least: when(
				`entered <= right.least + ${within}`,
				'{entered} is {times} D from the edge: the least that holds.'
			),
			between: when(notTooFar, '{entered} holds, but the least is {right.least}.'),
			far
		}),
		outcome(
			['preferred'],
			{
				...shows,
				over: shown('preferred - right.least', fraction),
				wanted: shown('right.preferred - right.least', fraction)
			},
			{
				...tooNear,
				bare: when(
					`entered <= right.least + ${within}`,
					'{entered} is the bare least: nothing is left for a larger rivet in the same hole later.'
				),
				little: when(
					`entered < right.preferred - ${within}`,
					'{entered} holds, but it is only {over} over the least; preferred is {wanted}.'
				),
				preferred: when(
					`entered <= right.preferred + ${within}`,
					'{entered} is the least plus {wanted}: the hole can later go oversize.'
				),
				between: when(notTooFar, '{entered} holds, but {right.preferred} is preferred.'),
				far
			}
		),
		outcome(['greatest'], shows, {
			...tooNear,
			between: when(
				`entered < right.greatest - ${within}`,
				'{entered} holds, but the greatest is {right.greatest}.'
			),
			greatest: when(
				notTooFar,
				'{entered} is {times} D from the edge: farther in, the edge can lift.'
			),
			far
		})
	]
});
