import { type Drawing, segment, text } from '../../figures/drawing.ts';
import { dimensionAcross } from '../../figures/parts/dimension.ts';
import { setRivet, stackSection } from '../../figures/parts/joint.ts';
import { plate, roundFeature } from '../../figures/parts/plate.ts';
import { edgeDistance } from '../../methods/edge-distance.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Level } from '../level.ts';

const stories: Readonly<Record<'protruding' | 'countersunk', readonly string[]>> = {
	protruding: [
		'A stiffener goes along the edge of a firewall panel. You draw its rivet line first.',
		'The new floor panel of a training aircraft gets one row of rivets along its front edge.',
		'A gusset inside the tail cone is drilled from a paper pattern, and the pattern needs its rivet line.',
		'A cover plate on a wheel well is riveted along all four edges.'
	],
	countersunk: [
		'The leading edge skin of a training wing is riveted flush, close to its cut edge.',
		'A flush patch goes into a fuselage side, and its outer row follows the edge.',
		'The door skin of a light aircraft has flush rivets all round its edge.',
		'A wing tip fairing is riveted flush to the last rib.'
	]
};

const asked = {
	1: ['least'],
	2: ['least', 'greatest'],
	3: ['least', 'preferred', 'greatest']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How near the edge may the hole centres be?',
	2: 'Between which edge distances must the rivet line lie?',
	3: 'What are the minimum, the preferred and the maximum edge distance?'
};

export const tasks = family({
	method: edgeDistance,
	draw(random, level) {
		const head = random.pick(['protruding', 'countersunk'] as const);
		return {
			given: { D: random.pick([3, 4, 5, 6, 8]) / 32, head },
			story: random.pick(stories[head]),
			question: questions[level],
			asked: asked[level],
			basis:
				level === 3
					? 'FAA-H-8083-31B, Fig. 4-79: preferred is the minimum plus 1/16 in.'
					: 'FAA-H-8083-31B, Fig. 4-79: from the hole centre to the edge.',
			cautions: ['drill']
		};
	},
	figure: ({ D, head }, say) => besideEdge(head, say('D', D)),
	metal: drilled
});

const width = 290;
/** Drawing units in a rivet diameter; every rivet is drawn the same size. */
const unit = 28;

/** Section and plan of the edge, the rivets 3 D from it whatever is asked: not to scale. */
function besideEdge(head: string, D: string): Drawing {
	const flush = head === 'countersunk';
	const [x, planTop, planBottom] = [width - 3 * unit, 96, 206];
	const headRadius = (flush ? 0.9 : 1) * unit;
	const y = (planTop + planBottom) / 2;
	return {
		title: `Edge of a sheet in section and from above, with ${head} rivet heads in a line beside it.`,
		shapes: [
			...stackSection({ layers: [0.5, 0.5], names: [], width, scale: unit }),
			...setRivet(x, 1, 2.5, unit, flush ? 'countersunk' : 'universal'),
			...plate({ left: 0, top: planTop, right: width, bottom: planBottom }, 'metal-a', ['left']),
			...roundFeature(x, y, headRadius, 'rivet'),
			segment(x, planTop - 6, x, planBottom + 6, 'centre'),
			...dimensionAcross(x, width, planBottom + 26, planBottom, ''),
			text(x - 8, planBottom + 30, 'edge distance', { anchor: 'end' }),
			text(x - unit, 54, `D ${D}`, { anchor: 'end' }),
			text(0, planTop - 8, 'not to scale', { tone: 'soft' })
		]
	};
}

/** Outcomes where the hole stands as it was asked. */
const asWanted = ['least', 'preferred', 'greatest'];

/** The hole where the answer puts it, with the least and the greatest beside it, to scale. */
function drilled(seen: SeenBy<typeof edgeDistance>, say: Say): Drawing {
	const [top, bottom] = [0, 80];
	const middle = (top + bottom) / 2;
	const x = width - Math.max(-1.5, Math.min(seen.at('times'), 7.2)) * unit;
	const limits = [
		['min', seen.rightAt('factor')],
		['max', seen.at('greatestTimes')]
	] as const;
	return {
		title: seen.says,
		shapes: [
			...plate({ left: 0, top, right: width, bottom }, 'metal-a', ['left']),
			...limits.flatMap(([name, times]) => {
				const at = width - times * unit;
				return [
					segment(at, top - 8, at, bottom + 8, 'thin'),
					text(at, bottom + 22, name, { anchor: 'middle' })
				];
			}),
			...roundFeature(x, middle, unit / 2, 'paper', asWanted.includes(seen.case) ? 'edge' : 'slip'),
			...dimensionAcross(
				x,
				width,
				top - 18,
				[middle - unit / 2, top],
				say(seen.key, seen.at('entered'))
			)
		]
	};
}
