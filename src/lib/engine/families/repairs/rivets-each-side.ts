import { chartExcerpt, sharedRow } from '../../figures/parts/chart-excerpt.ts';
import { rivetsEachSide } from '../../methods/rivets-each-side.ts';
import { rivetsPerInch } from '../../trade/tables/rivets-per-inch.ts';
import { family } from '../family.ts';
import type { Level } from '../level.ts';

/**
 * With the thickest sheet that such a part is made of, inches, and the largest rivet that goes into one, in
 * 32nds: light parts get none over the size by 3T.
 */
const stories: readonly (readonly [story: string, thickest: number, largest: number])[] = [
	['A strip of skin is torn across its whole width, and a splice plate is made for it.', 0.05, 5],
	['A web on the practice wing is cracked from edge to edge and gets a splice plate.', 0.09, 8],
	['A cover panel is cracked right across; you lay out its splice plate.', 0.05, 5],
	['A baffle is cut through by mistake and has to be spliced with a plate.', 0.05, 5],
	['A torn strip lies on the bench, and its splice plate has no holes yet.', 0.09, 8],
	['The web of a floor beam is torn through and is spliced with a plate.', 0.063, 8],
	['The web of a landing gear rib is cracked through and is spliced with a plate.', 0.09, 8],
	[
		'The web of a practice spar is cut through, and its two halves are spliced with a plate.',
		0.09,
		8
	]
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
	{ dash: 8, sheets: [0.08, 0.09] }
] as const;

export const tasks = family({
	method: rivetsEachSide,
	draw(random, level) {
		const { dash, sheets } = random.pick(joints);
		const T = random.pick<number>(sheets);
		return {
			given: {
				T,
				D: dash / 32,
				width: level === 1 ? random.int(2, 16) : random.int(9, 40) / 4
			},
			story: random.pick(
				stories.filter(([, thickest, largest]) => T <= thickest && dash <= largest)
			)[0],
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
					`sheet ${say('T', T)}, rivets ${say('D', D)}.`,
					...sharedRow(rivetsPerInch, T, say('T', T))
				]
			}
		)
});
