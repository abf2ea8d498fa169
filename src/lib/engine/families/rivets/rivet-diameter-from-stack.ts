import { rivetDiameterFromStack } from '../../methods/rivet-diameter-from-stack.ts';
import { family } from '../family.ts';
import { layersFor, threeLayerJoints, twoLayerJoints } from '../parts/joints.ts';
import { rivetInStack, stackWithUnknownRivet } from './parts/rivet-in-stack.ts';
import { sheetAlloy, thicknessesForRivets } from '../parts/sheets-for-rivets.ts';

export const tasks = family({
	method: rivetDiameterFromStack,
	draw(random, level) {
		const joint = random.pick(level === 1 ? twoLayerJoints : threeLayerJoints);
		// The thickest is as often the first layer as the last one.
		const end = random.pick(['outer', 'last']);
		return {
			given: { layers: layersFor(random, joint, thicknessesForRivets) },
			story: joint.story,
			question:
				level === 3
					? 'How thick is the thickest layer, what is 3T, and which is the smallest rivet?'
					: 'What is 3T, and which is the smallest rivet for this stack?',
			// Of a stocked size alone nobody can tell which of several mistakes led to it.
			asked: level === 3 ? ['thickest', 'threeT', 'diameter'] : ['threeT', 'diameter'],
			chief: {
				thickest: ['thinnest', end],
				threeT: ['oneT', 'twoT', 'thinnest', 'wholeStack', end],
				diameter: ['down']
			},
			labels: { layers: joint.layers },
			told:
				level === 1
					? []
					: [
							sheetAlloy(random, `${joint.story} ${joint.layers.join()}`),
							['Rivets', 'universal head, AD']
						],
			basis: '3T, then the next stocked size up; minimum 3/32 in (airframe handbook, p. 4-32).',
			cautions: ['drill']
		};
	},
	figure: ({ layers }, say, like) =>
		stackWithUnknownRivet(
			layers,
			layers.map((one) => say('layers', one)),
			like?.layers
		),
	metal: (seen) => rivetInStack(seen.given.layers, seen)
});
