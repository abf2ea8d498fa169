import { angle, fraction, length } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { atLeast, method, shown, slip, step, use } from '../solver/write.ts';
import { legOff } from './outcomes/leg-off.ts';
import { nearRight } from './outcomes/near-right.ts';
import { flat } from './pieces/flat.ts';
import { setbackOfBend } from './pieces/setback.ts';
import { setbackFactor } from './pieces/setback-k.ts';
import { layoutLine } from '../trade/tolerances.ts';

/** A line that lies too far in puts the whole bend too far in. */
const offLine = (key: 'tangentLine' | 'sightLine') =>
	legOff([key], {
		shows: { more: shown(`${key} - right.${key}`), made: shown('sightLine - R') },
		right: nearRight(key, layoutLine),
		fits: 'With the sight line at {sightLine}, both legs come out to their mold lines.',
		off: (by) =>
			`With the sight line at {sightLine}, the leg under the nose comes out ${by}, and the other leg is off as far the other way.`
	});

/** Everything is measured on the flat blank from the edge of the leg that goes under the nose. */
export const sightLine = method({
	id: 'sight-line',
	title: 'Sight line for a brake',
	given: {
		leg: given(fraction, 'Leg under the nose, to the mold line', { symbol: 'MLD' }),
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
			{
				label: 'Bend tangent line, from the edge of the leg',
				asks: 'So where does the bend begin, from the edge of the leg?',
				symbol: null
			}
		),
		sightLine: step('tangentLine + R', 'Sight line, from the edge of the leg', {
			asks: 'And where does the sight line go, under the nose?',

			rule: 'bend.sight-line',
			tolerance: layoutLine,
			slips: {
				middle: slip(
					'tangentLine + bendAllowance(R, T, angle) / 2',
					'In the middle of the bend allowance: the sight line is one radius from the bend tangent line under the nose.'
				),

				moldLine: slip(
					'leg',
					'That is the mold line: go back one setback to the bend tangent line, then 1R forward.'
				),
				halfRadius: slip(
					'tangentLine + R / 2',
					'Half of R past the bend tangent line: the nose reaches one whole radius past it.'
				),
				diameterPast: slip(
					'tangentLine + 2 * R',
					'Two radii past the bend tangent line: the sight line is one radius past it.',
					{ rare: true }
				),
				plusHalfT: slip(
					'tangentLine + R + T / 2',
					'Half of T added: the nose reaches 1R past the bend tangent line, and no more.',
					{ rare: true }
				),
				thicknessPast: slip(
					'tangentLine + T',
					'T past the bend tangent line: the sight line is 1R past it.',
					{ rare: true }
				),
				timesK: slip(
					'tangentLine + K * R',
					'R was multiplied by K: the sight line is one whole radius past the bend tangent line.',
					{ rare: true }
				),
				farLine: slip(
					'tangentLine + bendAllowance(R, T, angle)',
					'That is the other bend tangent line: the sight line is one radius past the one under the nose.',
					{ rare: true }
				),
				fromEdge: slip('R', 'One radius from the edge: it is counted from the bend tangent line.', {
					rare: true
				}),
				setbackLessR: slip(
					'setback - R',
					'Counted back from the mold line: the sight line is laid out from the edge of the leg.',
					{ rare: true }
				),
				outward: slip(
					'tangentLine - R',
					'On the wrong side: the sight line lies in the bend, past the bend tangent line.'
				),
				atTangent: slip(
					'tangentLine',
					'That is the bend tangent line: the sight line is one radius past it.'
				),
				fromMoldLine: slip(
					'leg - R',
					'One radius back from the mold line: it is one radius past the bend tangent line.'
				),
				plusT: slip(
					'tangentLine + R + T',
					'T added: the nose reaches 1R past the bend tangent line, and no more.'
				),
				otherLeg: slip(
					'tangentLine + bendAllowance(R, T, angle) - R',
					'Measured from the other bend tangent line: use the one that goes under the nose.'
				)
			}
		})
	},
	inverses: {
		leg: {
			from: 'tangentLine',
			between: [0, 200],
			formula: 'tangentLine + setback',
			label: 'Leg, to the mold line',
			rule: 'bend.flat',
			tolerance: layoutLine,
			slips: {
				moldLines: slip(
					'tangentLine',
					'No setback added: the leg reaches a setback past the bend tangent line, to its mold line.'
				),
				added: slip(
					'tangentLine - setback',
					'Setback taken off: the mold line lies a setback past the bend tangent line, so it is added.'
				),
				inside: slip(
					'tangentLine + T',
					'T added to the flat: the leg reaches a setback past the bend tangent line, not a thickness.'
				),
				lessRadius: slip(
					'tangentLine + setback + R',
					'R added after the setback: the setback has R in it.'
				)
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
