import { choice, fraction, number, rivetDiameter } from '../../quantity/kinds.ts';
import { given } from '../../solver/given.ts';
import { piece, slip, step } from '../../solver/write.ts';
import { chartFactor, thousandths } from '../../trade/tolerances.ts';

const heads = given(choice(['protruding', 'countersunk']), 'Head');

/** Least edge distance in rivet diameters. */
export const edgeFactor = piece(
	'edge-factor',
	{ head: heads },
	step('leastEdge(head)', 'Minimum edge distance in rivet diameters', {
		symbol: 'factor',
		rule: 'edge.least',
		tolerance: chartFactor,
		slips: {
			flushFactor: slip(
				'2.5',
				'2.5D is the minimum for a countersunk head; a protruding head needs 2D.'
			),
			protrudingFactor: slip(
				'2',
				'2D is the minimum for a protruding head; a countersunk one needs 2.5D.'
			),
			pitchFactor: slip('3', '3D is the minimum pitch, from rivet to rivet, not to the edge.'),
			shankFactor: slip('1.5', '1.5D is the shank for the shop head, not an edge distance.')
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
		rule: 'edge.least',
		kind: fraction,
		tolerance: thousandths,
		slips: {
			halfLeast: slip(
				'factor * D / 2',
				'Half of the minimum edge distance: D is the diameter of the rivet, not its radius.'
			),
			dashIn16ths: slip(
				'factor * 2 * D',
				'The dash number of the rivet was read in sixteenths: it counts 32nds.'
			),
			toRim: slip(
				'factor * D - D / 2',
				'That is from the rim of the hole to the edge: edge distance runs from the centre of the hole.'
			),
			fromRim: slip(
				'factor * D + D / 2',
				'Measured from the rim of the hole: edge distance runs from the centre of the hole.'
			)
		}
	})
);
