import { choice, length, method, slip, step } from '../solver/method.ts';
import { chartFactor, thousandths } from '../trade/tolerances.ts';

export const edgeDistance = method({
	id: 'edge-distance',
	title: 'Edge distance of a rivet',
	given: {
		D: length('Rivet diameter', { style: 'rivet-diameter' }),
		head: choice('Head', ['protruding', 'countersunk'])
	},
	steps: {
		factor: step('leastEdge(head)', 'Least edge distance in rivet diameters', {
			rule: 'edge.least',
			tolerance: chartFactor
		}),
		least: step('factor * D', 'Least edge distance', {
			rule: 'edge.least',
			style: 'fraction',
			tolerance: thousandths
		}),
		preferred: step('least + (1/16 in)', 'Preferred edge distance', {
			rule: 'edge.preferred',
			style: 'fraction',
			tolerance: thousandths
		}),
		greatest: step('4 * D', 'Greatest edge distance', {
			rule: 'edge.greatest',
			style: 'fraction',
			tolerance: thousandths
		})
	},
	slips: {
		flushFactor: slip(
			'factor',
			'2.5',
			'2.5 D is the least for a countersunk head; a protruding head needs 2 D.'
		),
		protrudingFactor: slip(
			'factor',
			'2',
			'2 D is the least for a protruding head; a countersunk one needs 2.5 D.'
		),
		pitchFactor: slip(
			'factor',
			'3',
			'3 D is the least pitch, from rivet to rivet, not to the edge.'
		),
		shankFactor: slip(
			'factor',
			'1.5',
			'1.5 D is the shank for the shop head, not an edge distance.'
		),
		halfLeast: slip(
			'least',
			'factor * D / 2',
			'Half of it: the radius was taken for the diameter.'
		),
		nothingAdded: slip(
			'preferred',
			'least',
			'The bare least: nothing is left for a larger rivet in the same hole later.'
		),
		oneThirtySecond: slip(
			'preferred',
			'least + (1/32 in)',
			'Only 1/32 in was added: preferred is 1/16 in over the least.'
		),
		nextRivet: slip(
			'preferred',
			'factor * (D + (1/32 in))',
			'The least for the next larger rivet; asked is the least plus 1/16 in.'
		),
		halfGreatest: slip(
			'greatest',
			'4 * D / 2',
			'Half of 4 D: the radius was taken for the diameter.'
		),
		pitchForGreatest: slip(
			'greatest',
			'3 * D',
			'3 D is the least pitch; the greatest edge distance is 4 D.'
		),
		greatestPitch: slip(
			'greatest',
			'10 * D',
			'10 D is the greatest pitch, from rivet to rivet; to the edge it is 4 D.'
		),
		twiceLeast: slip(
			'greatest',
			'2 * least',
			'Twice the least: the greatest is 4 D for every head.'
		)
	}
});
