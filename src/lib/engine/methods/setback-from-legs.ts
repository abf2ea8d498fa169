import { angle, fraction, length } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import { method, otherwise, outcome, shown, slip, step, use, when } from '../solver/write.ts';
import { nearRight } from './outcomes/near-right.ts';
import { setbackOutcomes } from './outcomes/setback.ts';
import { setbackOfBend } from './pieces/setback.ts';
import { setbackFactor } from './pieces/setback-k.ts';
import { halfDegree } from '../trade/tolerances.ts';

export const setbackFromLegs = method({
	id: 'setback-from-legs',
	title: 'Setback from the angle between the legs',
	given: {
		R: given(fraction, 'Inside bend radius'),
		T: given(length, 'Thickness'),
		betweenLegs: given(angle, 'Angle between the legs')
	},
	steps: {
		angle: step('180 deg - betweenLegs', 'Bend angle, from flat', {
			asks: 'How far is the sheet bent, counted from flat?',

			symbol: 'N',
			rule: 'bend.angle',
			tolerance: halfDegree,
			slips: {
				legs: slip(
					'betweenLegs',
					'The angle between the legs was taken for the bend angle: take it from 180°.'
				),

				halfBetween: slip(
					'betweenLegs / 2',
					'Half of the angle between the legs: the bend angle is 180° less all of it.'
				),
				added90: slip(
					'90 deg + betweenLegs',
					'Added to 90°: the bend angle is 180° less the angle between the legs.'
				),
				halfBend: slip(
					'(180 deg - betweenLegs) / 2',
					'Half of the bend angle: the whole angle is asked for, K is for half of it.',
					{ rare: true }
				),
				twiceFromSquare: slip(
					'2 * max(90 deg - betweenLegs, betweenLegs - 90 deg)',
					'Twice the difference to 90°: the bend angle is 180° less the angle between the legs.',
					{ rare: true }
				),
				from360: slip(
					'360 deg - betweenLegs',
					'Taken from 360°: the bend angle is 180° less the angle between the legs.',
					{ rare: true }
				),
				added180: slip(
					'180 deg + betweenLegs',
					'Added to 180°: the bend angle is 180° less the angle between the legs.',
					{ rare: true }
				),
				tenMore: slip(
					'190 deg - betweenLegs',
					'Ten degrees too much: work 180° less the angle between the legs once more.',
					{ rare: true }
				),
				tenLess: slip(
					'170 deg - betweenLegs',
					'Ten degrees too little: work 180° less the angle between the legs once more.',
					{ rare: true }
				),
				fromSquare: slip(
					'max(90 deg - betweenLegs, betweenLegs - 90 deg)',
					'Counted from square: the bend angle counts from flat, 180° less the angle between the legs.'
				),
				square: slip(
					'90 deg',
					'Taken as a square bend, with K as 1: the drawing gives another angle.'
				)
			}
		}),
		// Where the bend angle is not asked for, K of the wrong angle is told by the slips of the angle.
		K: use(setbackFactor, {}, { rare: ['legs', 'square'] }),
		setback: setbackOfBend
	},
	outcomes: [
		outcome(
			['angle'],
			{ between: shown('180 deg - angle') },
			{
				fits: when(
					nearRight('angle', halfDegree, 'deg'),
					'Bent {angle} from flat, the legs stand {betweenLegs} apart, as wanted.'
				),
				flat: when(
					'angle <= 0 deg',
					'At {angle} from flat the sheet is not bent; the legs are to stand {betweenLegs} apart.'
				),
				closed: when(
					'angle >= 180 deg',
					'A sheet cannot be bent {angle} from flat: the legs meet before that.'
				),
				off: otherwise(
					'Bent {angle} from flat, the legs stand {between} apart; {betweenLegs} is wanted.'
				)
			}
		),
		...setbackOutcomes
	]
});
