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
import { aboutThirds, drilledDepth, drillSizes } from '../trade/tolerances.ts';
import { inches } from './outcomes/near-right.ts';

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
			asks: 'Which drill do you take to the head?',

			rule: 'drill.removal',
			kind: drill,
			tolerance: drillSizes,
			slips: {
				sameSize: slip(
					'D',
					'Right by AC 43.13-1B, which drills the size of the rivet; this asks for Fig. 4-98, 1/32 in under.'
				),
				finalAgain: slip('finalDrill(D)', 'That is the final drill: it would cut into the hole.'),
				oneNumberUnder: slip(
					'chartSizeBelow(drillOfSize(finalDrill(D)))',
					'One drill or about 0.003 in under the final drill, as No. 31 in a No. 30 hole; this asks for Fig. 4-98, 1/32 in under the shank.',
					{ rare: true }
				),
				numberUnder: slip(
					'numberDrillUnder(D - (1/32 in))',
					'The number drill next under is smaller than asked for: 1/32 in under the shank is a fraction drill.',
					{ rare: true }
				),
				smallerFinal: slip(
					'finalDrillAbove(D)',
					'The final drill of the next smaller rivet is near; this asks for Fig. 4-98, 1/32 in under the shank.',
					{ rare: true }
				),
				nextRivet: slip(
					'pilotDrillAbove(D)',
					'That is the next smaller rivet: 1/32 in under the shank is asked for.',
					{ rare: true }
				),
				twoUnder: slip(
					'D - (1/16 in)',
					'1/16 in under leaves too thick a ring: 1/32 in under the shank is asked for.'
				),
				oneSixtyFourth: slip(
					'D - (1/64 in)',
					'1/64 in under is too much: Fig. 4-98 asks for 1/32 in under the rivet.'
				),
				over: slip(
					'D + (1/32 in)',
					'1/32 in over the rivet cuts the hole; drill 1/32 in under it.'
				),
				no40ForHead: slip(
					'0.098 in',
					'No. 40 for every head: the drill goes by the rivet, 1/32 in under.'
				),
				no30ForHead: slip(
					'0.1285 in',
					'No. 30 for every head: the drill goes by the rivet, 1/32 in under.',
					{
						rare: true
					}
				),
				halfRivet: slip('D / 2', 'Half of the rivet: 1/32 in under is asked for.', { rare: true }),
				headWide: slip(
					'2 * D',
					'2D is as wide as the head; the drill is 1/32 in under the shank.',
					{
						rare: true
					}
				),
				twiceForHead: slip(
					'2 * D - (1/32 in)',
					'From twice the rivet: a dash number counts 32nds, not 16ths.',
					{ rare: true }
				),
				stepAlone: slip('1/32 in', '1/32 in is what the drill is under the rivet: take it off D.', {
					rare: true
				}),
				countersunk: slip(
					'D - (0.003 in)',
					'0.003 in under is for countersunk heads; a universal head is drilled 1/32 in under.'
				)
			}
		}),
		depth: step('0.425 * D', 'Depth: the height of the head', {
			asks: 'How deep do you drill to take the head off?',

			rule: 'head.universal',
			tolerance: drilledDepth,
			slips: {
				shopHeadHigh: slip(
					'0.5 * D',
					'0.5D is the height of a shop head; the universal head is 0.425D high.'
				),
				quarterD: slip('0.25 * D', '0.25D does not take the head off; it is 0.425D high.', {
					rare: true,
					late: true
				}),
				oneDiameter: slip(
					'D',
					'1D goes through the head and into the sheet; the head is 0.425D high.'
				),
				byDrill: slip(
					'0.425 * drill',
					'0.425 of the drill: the height of the head goes by the rivet, 0.425D.'
				),
				outerSheet: slip(
					'member(layers, 1)',
					'That is the sheet under the head; only the head is drilled, 0.425D deep.'
				),
				headAndSheet: slip(
					'0.425 * D + member(layers, 1)',
					'The sheet under the head was added; only the head is drilled, 0.425D deep.'
				),
				shankDeep: slip(
					'1.5 * D',
					'1.5D is for the shop head; the manufactured head is 0.425D high.',
					{
						rare: true
					}
				),
				headDeep: slip('2 * D', '2D is the width of the head; it is 0.425D high.', { rare: true }),
				mostHigh: slip(
					'0.66 * D',
					'0.66D is the maximum of a shop head; this one is 0.425D high.',
					{
						rare: true
					}
				),
				twiceDeep: slip(
					'0.425 * (2 * D)',
					'Twice as deep: the dash number of D counts 32nds, not 16ths.',
					{ rare: true }
				),
				halfDepth: slip('0.425 * D / 2', 'Half of 0.425D: the radius was taken for the diameter.')
			}
		}),
		grip: use(grip, {}, { label: 'Grip', asks: 'How thick is the stack?' }),
		tightDepth: step('2 / 3 * grip', 'Depth into the stack if the shank is tight', {
			asks: 'How deep into the stack, if the shank sits tight?',

			rule: 'drill.removal-tight',
			tolerance: aboutThirds,
			slips: {
				wholeGrip: slip(
					'grip',
					'Right through the stack: stop at two thirds and drive the rest out.'
				),
				halfGrip: slip('grip / 2', 'Half the stack: about two thirds is asked for.'),
				oneThird: slip('grip / 3', 'One third of the stack: about two thirds is asked for.'),
				headToStack: slip(
					'2 / 3 * grip + depth',
					'The head was added; two thirds of the stack are counted from its face.'
				),
				thirdsOfHead: slip(
					'2 / 3 * depth',
					'Two thirds of the head; two thirds of the stack are asked for.'
				),
				thirdsOfD: slip('2 / 3 * D', 'Two thirds of D; two thirds of the stack are asked for.', {
					rare: true
				}),
				upsideDown: slip('3 / 2 * grip', 'Three halves of the stack: two thirds are asked for.', {
					rare: true
				}),
				oneSheetDeep: slip(
					'member(layers, 1)',
					'Through the sheet under the head: two thirds of the whole stack are asked for.'
				)
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
					`past > ${inches(drilledDepth)}`,
					'{entered} deep goes past the head and into the sheet: it can spoil the hole.'
				),
				short: when(
					`past < -${inches(drilledDepth)}`,
					'{entered} deep stops inside the head, which stays on.'
				),
				face: otherwise('{entered} deep takes the head to the face of the sheet and no farther.')
			}
		)
	]
});
