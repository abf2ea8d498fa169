import { drill, length, listOf, rivetDiameter } from '../quantity/kinds.ts';
import { given } from '../solver/given.ts';
import {
	atLeast,
	method,
	otherwise,
	outcome,
	shown,
	slip,
	step,
	use,
	when
} from '../solver/write.ts';
import { grip } from './pieces/grip.ts';
import { drillSizes, thousandths } from '../trade/tolerances.ts';

/** The joint as it is drawn: its stack, the head to be drilled off and the shop head. */
const joint = {
	stack: shown('sum(layers)'),
	head: shown('right.depth'),
	shopAcross: shown('1.5 * D'),
	shopHigh: shown('0.5 * D')
};

/** Drilling off a universal head rivet, by the airframe handbook. */
export const removalDrill = method({
	id: 'removal-drill',
	title: 'Drilling a rivet out',
	given: {
		layers: given(listOf(length), 'Layers'),
		D: given(rivetDiameter, 'Rivet diameter')
	},
	steps: {
		drill: step('D - (1/32 in)', 'Drill for the head', {
			rule: 'drill.removal',
			kind: drill,
			tolerance: drillSizes,
			slips: {
				sameSize: slip(
					'D',
					'The size of the shank: the least wander cuts the hole; by the figure it is 1/32 in under.'
				),
				finalAgain: slip(
					'finalDrill(D)',
					'That is the final drill for the hole: it would take the hole with the rivet.'
				),
				twoUnder: slip(
					'D - (1/16 in)',
					'1/16 in under: too little of the head is drilled away to snap it off; 1/32 in is right.'
				),
				countersunk: slip(
					'D - (0.003 in)',
					'0.003 in under is for countersunk heads; a universal head is drilled 1/32 in under.'
				)
			}
		}),
		depth: step('0.425 * D', 'Depth: the height of the head', {
			rule: 'head.universal',
			tolerance: thousandths,
			slips: {
				shopHeadHigh: slip(
					'0.5 * D',
					'0.5 D is the height of a shop head; the universal head is 0.425 D high.'
				),
				oneDiameter: slip(
					'D',
					'One diameter deep goes through the head and into the sheet; the head is 0.425 D high.'
				),
				byDrill: slip(
					'0.425 * drill',
					'0.425 of the drill: the height of the head goes by the rivet diameter.'
				),
				halfDepth: slip('0.425 * D / 2', 'Half of 0.425 D: the radius was taken for the diameter.')
			}
		}),
		grip: use(grip, {}, { label: 'Grip' }),
		tightDepth: step('2 / 3 * grip', 'Depth into the stack if the shank is tight', {
			rule: 'drill.removal-tight',
			tolerance: thousandths,
			slips: {
				wholeGrip: slip(
					'grip',
					'Right through the stack: stop at two thirds and drive the rest out.'
				),
				halfGrip: slip('grip / 2', 'Half the stack: it is about two thirds.'),
				oneThird: slip('grip / 3', 'One third of the stack: it is about two thirds.')
			}
		})
	},
	limits: [
		atLeast(
			'drill',
			'0 in',
			'That rivet is too thin for a drill 1/32 in under it: check the diameter.'
		)
	],
	outcomes: [
		outcome(
			['drill'],
			{ ...joint, over: shown('drill - D') },
			{
				over: when(
					'over > 0.00001 in',
					'The {entered} drill is over the shank: it cuts the hole itself.'
				),
				rim: when(
					'over > -0.02 in',
					'The {entered} drill leaves next to nothing of the shank’s rim: the least wander cuts the hole.'
				),
				cores: when(
					`abs(entered - right.drill) <= (${drillSizes.amount} in)`,
					'The {entered} drill cores the head and leaves a ring that snaps off.'
				),
				near: when(
					'over > -0.04 in',
					'The {entered} drill leaves a ring that may snap off; 1/32 in under the rivet is {right.drill}.'
				),
				thick: when(
					'drill > 0 in',
					'The {entered} drill leaves too thick a ring: the head does not snap off.'
				),
				nothing: otherwise('A drill of {entered} takes nothing away.')
			}
		),
		outcome(
			['depth'],
			{ ...joint, past: shown('depth - right.depth') },
			{
				past: when(
					`past > (${thousandths.amount} in)`,
					'{entered} deep goes past the head, into the hole of the sheet.'
				),
				short: when(
					`past < -(${thousandths.amount} in)`,
					'{entered} deep stops inside the head, which stays on.'
				),
				face: otherwise('{entered} deep takes the head to the face of the sheet and no farther.')
			}
		)
	]
});
