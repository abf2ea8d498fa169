import { angle, fraction, length } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atLeast, method, shown, slip, step, use } from '../solver/write.ts';
import { legOff } from './outcomes/leg-off.ts';
import { nearRight } from './outcomes/near-right.ts';
import { flat } from './pieces/flat.ts';
import { setbackOfBend } from './pieces/setback.ts';
import { setbackFactor } from './pieces/setback-k.ts';
import { finerThanRule } from '../trade/tolerances.ts';

/** A line that lies too far in puts the whole bend too far in. */
const offLine = (key: 'tangentLine' | 'sightLine') =>
	legOff([key], {
		shows: { more: shown(`${key} - right.${key}`), made: shown('sightLine - R') },
		right: nearRight(key, finerThanRule),
		fits: 'With the sight line at {sightLine}, both legs come out to their mold lines.',
		off: (by) =>
			`With the sight line at {sightLine}, the leg under the nose comes out ${by}, and the other leg is off as far the other way.`
	});

/** Everything is measured on the flat blank from the edge of the leg that goes under the nose. */
export const sightLine = method({
	id: 'sight-line',
	title: 'Sight line for a brake',
	given: {
		leg: given(fraction, 'Leg under the nose, to the mold line'),
		R: given(fraction, 'Inside bend radius'),
		T: given(length, 'Thickness'),
		angle: given(angle, 'Bend angle, from flat', { symbol: 'N' })
	},
	steps: {
		K: setbackFactor,
		setback: setbackOfBend,
		tangentLine: use(
			flat,
			{ taken: 'setback' },
			{ label: 'Bend tangent line, from the edge of the leg', symbol: null }
		),
		sightLine: step('tangentLine + R', 'Sight line, from the edge of the leg', {
			rule: 'bend.sight-line',
			tolerance: finerThanRule,
			slips: {
				middle: slip(
					'tangentLine + bendAllowance(R, T, angle) / 2',
					'In the middle of the bend allowance: the sight line is one radius from the tangent line under the nose.'
				),
				outward: slip(
					'tangentLine - R',
					'On the wrong side: the sight line lies in the bend, past the tangent line.'
				),
				atTangent: slip(
					'tangentLine',
					'That is the bend tangent line: the sight line is one radius past it.'
				),
				plusT: slip(
					'tangentLine + R + T',
					'T added: the nose reaches one radius past the tangent line, and no more.'
				),
				otherLeg: slip(
					'tangentLine + bendAllowance(R, T, angle) - R',
					'Measured from the other tangent line: use the one that goes under the nose.'
				)
			}
		})
	},
	inverses: {
		leg: {
			from: 'tangentLine',
			between: [0, 200],
			label: 'Leg, to the mold line',
			rule: 'bend.flat',
			tolerance: finerThanRule,
			slips: {
				moldLines:
					'No setback added: the leg reaches a setback past the tangent line, to its mold line.',
				added:
					'Setback taken off: the mold line lies a setback past the tangent line, so it is added.',
				inside:
					'T added to the flat: the leg reaches a setback past the tangent line, not a thickness.'
			}
		}
	},
	limits: [
		atLeast(
			'tangentLine',
			'0 in',
			'The leg is shorter than its setback: make it longer or the radius smaller.'
		)
	],
	outcomes: [offLine('tangentLine'), offLine('sightLine')]
});
