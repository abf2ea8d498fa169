import { type Drawing, segment, text } from '../../figures/drawing.ts';
import { dimensionAcross } from '../../figures/parts/dimension.ts';
import { setRivet, stackSection } from '../../figures/parts/joint.ts';
import { plate, roundFeature } from '../../figures/parts/plate.ts';
import { edgeDistance } from '../../methods/edge-distance.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';
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
	3: 'Which edge distances are the least, the preferred and the greatest?'
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
					? 'FAA-H-8083-31B, Fig. 4-79: preferred is the least plus 1/16 in.'
					: 'FAA-H-8083-31B, Fig. 4-79: from the hole centre to the edge.',
			cautions: ['drill']
		};
	},
	figure: ({ D, head }, say) => besideEdge(head, say('D', D)),
	effect: (input, say) => {
		const { key, entered, right } = input;
		if (key === 'factor' || typeof entered !== 'number') return null;
		return {
			entered: drilled(input, entered, say),
			right: drilled(input, Number(right[key]), say)
		};
	}
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

/** The hole drilled `at` from the edge, with the least and the greatest beside it, to scale. */
function drilled(
	{ given: { D }, right }: EffectInput<typeof edgeDistance>,
	at: number,
	say: Say
): Outcome {
	const [least, greatest] = [Number(right.least), Number(right.greatest)];
	const scale = unit / D;
	const [top, bottom] = [0, 80];
	const off = at < least - 1e-4 || at > greatest + 1e-4;
	const x = width - Math.max(-1.5, Math.min(at / D, 7.2)) * unit;
	return {
		drawing: {
			title: `A hole ${say('least', at)} from the edge of the sheet.`,
			shapes: [
				...plate({ left: 0, top, right: width, bottom }, 'metal-a', ['left']),
				...[least, greatest].flatMap((limit) => [
					segment(width - limit * scale, top - 8, width - limit * scale, bottom + 8, 'thin'),
					text(width - limit * scale, bottom + 22, inDiameters(limit / D), { anchor: 'middle' })
				]),
				...roundFeature(x, (top + bottom) / 2, unit / 2, 'paper', off ? 'slip' : 'edge'),
				...dimensionAcross(
					x,
					width,
					top - 18,
					[(top + bottom) / 2 - unit / 2, top],
					say('least', at)
				)
			]
		},
		says: `${say('least', at)} ${judged(at, { D, least, greatest })}`
	};
}

function inDiameters(times: number): string {
	return `${Number(times.toFixed(2))} D`;
}

interface Edge {
	readonly D: number;
	readonly least: number;
	readonly greatest: number;
}

function judged(at: number, { D, least, greatest }: Edge): string {
	const where = `is ${inDiameters(at / D)} from the edge`;
	if (at <= 0) return 'puts the hole centre off the sheet.';
	if (at < D / 2) return `${where}: the hole breaks through it.`;
	if (at < least - 1e-4) return `${where}: the metal outside can crack, or the rivet pull out.`;
	if (at > greatest + 1e-4) return `${where}: the edge can lift.`;
	if (at < least + 1e-3) return `${where}: the least that holds.`;
	if (at > greatest - 1e-3) return `${where}: farther in, the edge can lift.`;
	return `${where}: between the least and the greatest.`;
}
