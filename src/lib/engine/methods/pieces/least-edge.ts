import { choice, fraction, number, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { exactNumber, onMetricScale } from '../../trade/tolerances.ts';

const heads = given(choice(['protruding', 'countersunk']), 'Head');

/** Least edge distance in rivet diameters. */
export const edgeFactor = piece(
	'edge-factor',
	{ head: heads },
	step('leastEdge(head)', 'Minimum edge distance in rivet diameters', {
		asks: 'How many diameters must the hole centre stand from the edge, at least?',

		symbol: 'factor',
		rule: 'edge.least',
		tolerance: exactNumber,
		slips: {
			flushFactor: slip(
				'2.5',
				'2.5D is the minimum for a countersunk head: a protruding one needs 2D, from the centre of the hole.'
			),
			protrudingFactor: slip(
				'2',
				'2D is the minimum for a protruding head. A countersunk one needs 2.5D, from the centre of the hole.'
			),
			pitchFactor: slip(
				'3',
				'3D is the minimum pitch, from rivet to rivet. To the edge the minimum is less, from the centre of the hole.'
			),
			oneDiameter: slip(
				'1',
				'One diameter at each edge is too little: each takes 2D, or 2.5D for a countersunk head.',
				{
					rare: true
				}
			),
			shankFactor: slip(
				'1.5',
				'1.5D is under the minimum: edge distance runs from the centre of the hole.'
			)
		}
	})
);

export const leastEdge = piece(
	'least-edge',
	{
		factor: given(number, 'Minimum edge distance in rivet diameters'),
		D: given(rivetDiameter, 'Rivet diameter')
	},
	step('factor * D', 'Minimum edge distance', {
		asks: 'How near the edge may the hole centre be?',

		rule: 'edge.least',
		kind: fraction,
		tolerance: onMetricScale,
		slips: {
			// Of a protruding head it is twice the minimum as well.
			greatestForLeast: slip(
				'4 * D',
				'4D is the maximum edge distance. Under a protruding head it is also twice the minimum: a dash number counts 32nds, not 16ths.',
				{ rare: true }
			),
			halfLeast: slip(
				'factor * D / 2',
				'Half of the minimum edge distance: D is the diameter of the rivet, not its radius.',
				{ rare: true }
			),
			dashIn16ths: slip(
				'factor * 2 * D',
				'Twice the minimum for one edge: a dash number counts 32nds, not sixteenths.',
				{ rare: true }
			),
			sixteenthAdded: slip(
				'factor * D + (1/16 in)',
				'The preferred edge distance, 1/16 in over the minimum: the bare minimum is asked for.'
			),
			// Of a protruding head it is 1/16 in more as well.
			nextRivetLeast: slip(
				'factor > 2 ? factor * (D + (1/32 in)) : factor * D',
				'That is the minimum for the next larger rivet: take D of this one.',
				{ rare: true }
			),
			toRim: slip(
				'factor * D - D / 2',
				'That is from the rim of the hole to the edge: edge distance runs from the centre of the hole.',
				{ rare: true, act: 'rim' }
			),
			fromRim: slip(
				'factor * D + D / 2',
				'Measured from the rim of the hole: edge distance runs from the centre of the hole.',
				{ rare: true }
			)
		}
	})
);
