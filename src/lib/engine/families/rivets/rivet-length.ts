import type { Drawing } from '../../figures/drawing.ts';
import { dimensionAcross, dimensionDown } from '../../figures/parts/dimension.ts';
import { setRivet, stackHeight, stackSection, underNames } from '../../figures/parts/joint.ts';
import { widthBeside } from '../../figures/parts/rivet.ts';
import { rivetLength } from '../../methods/rivet-length.ts';
import { evaluate } from '../../solver/evaluate.ts';
import type { GivenValues } from '../../solver/method.ts';
import { sheetThicknesses } from '../../trade/stock.ts';
import { family, type Say } from '../family.ts';
import {
	type Joint,
	layersFor,
	rivetsFor,
	threeLayerJoints,
	twoLayerJoints
} from '../parts/joints.ts';
import type { Random } from '../random.ts';
import { rivetByLength, scaleFor } from './parts/rivet-by-length.ts';
import { sheetAlloy } from '../parts/sheets-for-rivets.ts';

const thin = sheetThicknesses.filter((size) => size >= 0.02 && size <= 0.063);

export const tasks = family({
	method: rivetLength,
	draw(random, level) {
		const { joint, given } =
			level === 1 ? unlike(random, twoLayerJoints, 3) : unlike(random, threeLayerJoints, 6);
		// Where rounding to the nearest 1/16 in must show, two sheets nearly always take one dash more than D.
		const isHeld = level > 1 || random.int(1, 8) > 1;
		return {
			given,
			story: joint.story,
			question:
				level === 3
					? 'What is the grip, what length is needed, and which rivet do you take?'
					: 'How long must this rivet be?',
			// Of a stocked size alone nobody can tell which of several mistakes led to it.
			asked: level === 3 ? ['grip', 'needed', 'length'] : ['needed', 'length'],
			chief: {
				grip: ['oneLayer', 'thinLeftOut', 'headToo'],
				needed: ['oneLayer', 'noShank', ...(level === 1 ? [] : ['middleLeftOut', 'oneD'])],
				length: ['down', ...(isHeld ? ['nearest'] : [])]
			},
			labels: { layers: joint.layers },
			told: [
				['Head', 'universal'],
				...(level === 1 ? [] : [sheetAlloy(random, `${joint.story} ${joint.layers.join()}`)]),
				...(level === 3 ? [['Hole', 'final drill, not countersunk'] as const] : [])
			],
			basis:
				'1.5D for the shop head (Fig. 4-76 of the airframe handbook); lengths go up to the next 1/16 in.',
			cautions: ['drive']
		};
	},
	figure: joint,
	metal: (seen) => rivetByLength(seen.given.layers, seen.given.D, seen)
});

type Given = GivenValues<typeof rivetLength>;

interface Stack {
	readonly joint: Joint;
	readonly given: Given;
}

function stackOf(random: Random, joints: readonly Joint[]): Stack {
	const joint = random.pick(joints);
	const layers = layersFor(random, joint, thin);
	return { joint, given: { layers, D: random.pick(rivetsFor(joint.layers, layers)) } };
}

/**
 * Of some stacks the first whose length is not simply one dash more than its diameter, as it is for
 * most: else nobody would have to add them up.
 */
function unlike(random: Random, joints: readonly Joint[], tries: number): Stack {
	const stacks = Array.from({ length: tries }, () => stackOf(random, joints));
	const found = stacks.find(({ given }) => {
		const { length } = evaluate(rivetLength, given);
		return Math.round(Number(length) * 16) !== Math.round(given.D * 32) + 1;
	});
	return found ?? stackOf(random, joints);
}

/** The joint with a rivet of the length that is needed, before it is driven. */
function joint(given: Given, say: Say, like = given): Drawing {
	const { layers, D } = given;
	const scale = scaleFor(like.layers, like.D);
	const width = widthBeside(D, scale);
	const x = width / 2;
	const bottom = stackHeight(layers, scale);
	const tip = Number(evaluate(rivetLength, given).needed) * scale;
	const r = (D * scale) / 2;
	return {
		title: `Section through ${layers.length} layers with a rivet through them, its shank standing out past the last one.`,
		shapes: [
			...stackSection({ layers, names: layers.map((one) => say('layers', one)), width, scale }),
			...setRivet(x, D, tip / scale, scale),
			...dimensionDown(0, bottom, width + 22, width, 'grip'),
			...dimensionDown(bottom, tip, x - r - 24, x - r, 'for the shop head', {
				least: underNames(layers.length, bottom)
			}),
			...dimensionAcross(x - r, x + r, tip + 24, tip, `D ${say('D', D)}`)
		]
	};
}
