import { type Drawing, path, polyline, type Shape, text } from '../../figures/drawing.ts';
import { dimensionDown } from '../../figures/parts/dimension.ts';
import { plate, roundFeature } from '../../figures/parts/plate.ts';
import { rivetsEachSide } from '../../methods/rivets-each-side.ts';
import { family } from '../family.ts';
import type { Level } from '../level.ts';

const stories: readonly string[] = [
	'A strip of skin is torn across its whole width, and a splice plate is made for it.',
	'A web on the practice wing is cracked from edge to edge and gets a splice plate.',
	'A cover panel broke along a bend of old damage; you lay out its splice plate.',
	'A baffle is cut through by mistake and has to be joined again with a plate.',
	'A torn strip lies on the bench, and the splice plate is still without a hole.'
];

const asked = {
	1: ['perInch', 'eachSide'],
	2: ['eachSide'],
	3: ['perInch', 'eachSide', 'total']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How many rivets per inch does the table give, and how many go on each side of the break?',
	2: 'How many rivets go on each side of the break?',
	3: 'How many rivets per inch, on each side of the break, and on both sides?'
};

/** Rivets, in 32nds of an inch, and stocked sheet in the middle of their column of the table. */
const joints = [
	{ dash: 4, sheets: [0.032, 0.04, 0.05, 0.063] },
	{ dash: 5, sheets: [0.04, 0.05, 0.063, 0.08, 0.09] },
	{ dash: 6, sheets: [0.05, 0.063, 0.08, 0.09] }
] as const;

export const tasks = family({
	method: rivetsEachSide,
	draw(random, level) {
		const { dash, sheets } = random.pick(joints);
		return {
			given: {
				T: random.pick<number>(sheets),
				D: dash / 32,
				width: level === 1 ? random.int(2, 8) : random.int(9, 40) / 4
			},
			story: random.pick(stories),
			question: questions[level],
			asked: asked[level],
			told: [
				['Sheet', 'clad 2024-T3'],
				['Rivets', `MS20470AD${dash}`]
			],
			basis: 'FAA-H-8083-31B, Fig. 4-169: the full number, with no reduction from its notes.',
			cautions: ['drill']
		};
	},
	figure: ({ T, D, width }, say) => broken(say('T', T), say('D', D), say('width', width))
});

const [bottom, right, radius] = [150, 340, 8];
const middle = right / 2;

/** A broken strip from above, two rows of rivets on each side whatever is asked: not to scale. */
function broken(T: string, D: string, width: string): Drawing {
	return {
		title:
			'A strip of sheet from above, broken across its width, with rows of rivets on each side.',
		shapes: [
			...plate({ left: 0, top: 0, right, bottom }, 'metal-a', ['left', 'right']),
			crossBreak(),
			...[-85, -45, 45, 85].flatMap((from, row) => rivetsDown(middle + from, row % 2)),
			...dimensionDown(0, bottom, right + 24, right, width),
			text(middle, -10, 'break', { anchor: 'middle' }),
			text(0, bottom + 22, `sheet T ${T}`),
			text(right, bottom + 22, `rivets D ${D}`, { anchor: 'end' }),
			text(0, -10, 'not to scale', { tone: 'soft' })
		]
	};
}

function crossBreak(): Shape {
	const steps = Array.from({ length: 11 }, (_, i) => i);
	return path(
		polyline(steps.map((i) => [middle + (i % 2 === 0 ? -5 : 5), (i * bottom) / 10])),
		'edge'
	);
}

/** A row of heads down the strip; every second row is shifted by half a step. */
function rivetsDown(x: number, shifted: number): Shape[] {
	const places = shifted === 0 ? [25, 75, 125] : [50, 100];
	return places.flatMap((y) => roundFeature(x, y, radius, 'rivet'));
}
