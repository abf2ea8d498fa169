import { rivetDiameterFromStack } from '../../methods/rivet-diameter-from-stack.ts';
import { family } from '../family.ts';
import { threeLayerJoints, twoLayerJoints } from './parts/joints.ts';
import type { Random } from '../random.ts';
import { rivetInStack, stackWithCentreLine } from './parts/rivet-in-stack.ts';
import { thicknessesForRivets } from './parts/sheets-for-rivets.ts';

/** Layers that are not all alike, so that it matters which one is taken. */
function unlikeLayers(random: Random, count: number): number[] {
	const [one, other] = random.some(thicknessesForRivets, 2);
	const layers = Array.from({ length: count }, () => random.pick(thicknessesForRivets));
	const at = random.int(0, count - 1);
	return layers.map((layer, i) =>
		i === at ? (one ?? layer) : i === (at + 1) % count ? (other ?? layer) : layer
	);
}

export const tasks = family({
	method: rivetDiameterFromStack,
	draw(random, level) {
		const joint = random.pick(level === 1 ? twoLayerJoints : threeLayerJoints);
		return {
			given: { layers: unlikeLayers(random, joint.layers.length) },
			story: joint.story,
			question:
				level === 3
					? 'Which layer decides, what is three times that, and which is the smallest rivet?'
					: 'Which is the smallest rivet diameter for this stack?',
			asked: level === 3 ? ['thickest', 'threeT', 'diameter'] : ['diameter'],
			labels: { layers: joint.layers },
			basis: 'Airframe handbook, p. 4-32, for a part that carries stress.',
			cautions: ['drill']
		};
	},
	figure: ({ layers }, say) =>
		stackWithCentreLine(
			layers,
			layers.map((one) => say('layers', one))
		),
	metal: (seen) => rivetInStack(seen.given.layers, seen)
});
