import { length, lengths } from '../solver/given.ts';
import { atLeast, method, slip, step, use } from '../solver/write.ts';
import { grip } from './pieces/grip.ts';
import { drillSizes, thousandths } from '../trade/tolerances.ts';

/** Drilling off a universal head rivet, by the airframe handbook. */
export const removalDrill = method({
	id: 'removal-drill',
	title: 'Drilling a rivet out',
	given: {
		layers: lengths('Layers'),
		D: length('Rivet diameter', { style: 'rivet-diameter' })
	},
	steps: {
		drill: step('D - (1/32 in)', 'Drill for the head', {
			rule: 'drill.removal',
			style: 'drill',
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
	]
});
