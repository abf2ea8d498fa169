import { chartExcerpt } from '../../figures/parts/chart-excerpt.ts';
import { rivetsEachSide } from '../../methods/rivets-each-side.ts';
import { rivetsPerInch } from '../../trade/tables/rivets-per-inch.ts';
import { family } from '../family.ts';
import type { Level } from '../level.ts';

const stories: readonly string[] = [
	'A strip of skin is torn across its whole width, and a splice plate is made for it.',
	'A web on the practice wing is cracked from edge to edge and gets a splice plate.',
	'A cover panel is cracked right across; you lay out its splice plate.',
	'A baffle is cut through by mistake and has to be joined again with a plate.',
	'A torn strip lies on the bench, and the splice plate is still without a hole.',
	'The web of a floor beam is torn through and is joined with a plate.'
];

const asked = {
	1: ['perInch', 'eachSide'],
	2: ['perInch', 'eachSide'],
	3: ['perInch', 'eachSide', 'total']
} as const;

const perInchAndSide =
	'How many rivets per inch does the table give, and how many go on each side of the break?';

const questions: Readonly<Record<Level, string>> = {
	1: perInchAndSide,
	2: perInchAndSide,
	3: 'How many rivets per inch, on each side of the break, and on both sides?'
};

/** Rivets, in 32nds of an inch, with the stocked sheets they go with: 2.5T to one size over 3T. */
const joints = [
	{ dash: 4, sheets: [0.032, 0.036, 0.04, 0.05] },
	{ dash: 5, sheets: [0.04, 0.05] },
	{ dash: 6, sheets: [0.05, 0.063] },
	{ dash: 8, sheets: [0.063, 0.08, 0.09] }
] as const;

export const tasks = family({
	method: rivetsEachSide,
	draw(random, level) {
		const { dash, sheets } = random.pick(joints);
		return {
			given: {
				T: random.pick<number>(sheets),
				D: dash / 32,
				width: level === 1 ? random.int(2, 16) : random.int(9, 40) / 4
			},
			story: random.pick(stories),
			question: questions[level],
			asked: asked[level],
			chief: {
				perInch: ['rowUp', 'columnLeft', 'columnRight'],
				eachSide: ['down', 'bothForOne', 'split', 'noWidth'],
				total: ['oneSide', 'roundedLast']
			},
			told: [
				['Sheet', 'clad 2024-T3'],
				...(level === 1 ? [] : [['Rivets', `MS20470AD${dash}`] as const])
			],
			basis: 'FAA-H-8083-31B, Fig. 4-169: the full number, with no reduction from its notes.',
			cautions: ['drill']
		};
	},
	figure: ({ T, D, width }, say) =>
		chartExcerpt(
			rivetsPerInch,
			{ row: T, column: D },
			{
				below: [
					`Break ${say('width', width)} wide,`,
					`sheet ${say('T', T)}, rivets ${say('D', D)}.`
				]
			}
		)
});
