import { choice, fraction, number, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { chartFactor, thousandths } from '../../trade/tolerances.ts';

const heads = given(choice(['protruding', 'countersunk']), 'Head');

/** Least edge distance in rivet diameters. */
export const edgeFactor = piece(
	'edge-factor',
	{ head: heads },
	step('leastEdge(head)', 'Least edge distance in rivet diameters', {
		symbol: 'factor',
		rule: 'edge.least',
		tolerance: chartFactor,
		slips: {
			flushFactor: slip(
				'2.5',
				'2.5 D is the least for a countersunk head; a protruding head needs 2 D.'
			),
			protrudingFactor: slip(
				'2',
				'2 D is the least for a protruding head; a countersunk one needs 2.5 D.'
			),
			pitchFactor: slip('3', '3 D is the least pitch, from rivet to rivet, not to the edge.'),
			shankFactor: slip('1.5', '1.5 D is the shank for the shop head, not an edge distance.')
		}
	})
);

export const leastEdge = piece(
	'least-edge',
	{
		factor: given(number, 'Least edge distance in rivet diameters'),
		D: given(rivetDiameter, 'Rivet diameter')
	},
	step('factor * D', 'Least edge distance', {
		rule: 'edge.least',
		kind: fraction,
		tolerance: thousandths,
		slips: {
			halfLeast: slip('factor * D / 2', 'Half of it: the radius was taken for the diameter.')
		}
	})
);
