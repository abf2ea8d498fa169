import { length, lengths, limit, method, slip, step } from '../solver/method.ts';
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
			tolerance: drillSizes
		}),
		depth: step('0.425 * D', 'Depth: the height of the head', {
			rule: 'head.universal',
			tolerance: thousandths
		}),
		grip: step('sum(layers)', 'Grip', { rule: 'length.grip', tolerance: thousandths }),
		tightDepth: step('2 / 3 * grip', 'Depth into the stack if the shank is tight', {
			rule: 'drill.removal-tight',
			tolerance: thousandths
		})
	},
	slips: {
		sameSize: slip(
			'drill',
			'D',
			'The size of the shank: the least wander cuts the hole; by the figure it is 1/32 in under.'
		),
		finalAgain: slip(
			'drill',
			'finalDrill(D)',
			'That is the final drill for the hole: it would take the hole with the rivet.'
		),
		twoUnder: slip(
			'drill',
			'D - (1/16 in)',
			'1/16 in under: too little of the head is drilled away to snap it off; 1/32 in is right.'
		),
		countersunk: slip(
			'drill',
			'D - (0.003 in)',
			'0.003 in under is for countersunk heads; a universal head is drilled 1/32 in under.'
		),
		shopHeadHigh: slip(
			'depth',
			'0.5 * D',
			'0.5 D is the height of a shop head; the universal head is 0.425 D high.'
		),
		oneDiameter: slip(
			'depth',
			'D',
			'One diameter deep goes through the head and into the sheet; the head is 0.425 D high.'
		),
		byDrill: slip(
			'depth',
			'0.425 * drill',
			'0.425 of the drill: the height of the head goes by the rivet diameter.'
		),
		halfDepth: slip(
			'depth',
			'0.425 * D / 2',
			'Half of 0.425 D: the radius was taken for the diameter.'
		),
		oneLayer: slip(
			'grip',
			'largest(layers)',
			'One layer only: the rivet passes through all of them.'
		),
		thickLeftOut: slip(
			'grip',
			'sum(layers) - largest(layers)',
			'The thickest layer is left out of the grip.'
		),
		headToo: slip(
			'grip',
			'sum(layers) + depth',
			'The head was added: the grip is the layers alone.'
		),
		wholeGrip: slip(
			'tightDepth',
			'grip',
			'Right through the stack: stop at two thirds and drive the rest out.'
		),
		halfGrip: slip('tightDepth', 'grip / 2', 'Half the stack: it is about two thirds.'),
		oneThird: slip('tightDepth', 'grip / 3', 'One third of the stack: it is about two thirds.')
	},
	limits: [
		limit('drill', 'That rivet is too thin for a drill 1/32 in under it: check the diameter.')
	]
});
