import type { Drawing } from '../../figures/drawing.ts';
import { lapFromAbove, lapToScale } from '../../figures/parts/lap.ts';
import { lapWidth } from '../../methods/lap-width.ts';
import { rivetDashes } from '../../trade/stock.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';

/** With the largest rivet that such a lap takes, in 32nds. */
const stories: readonly (readonly [story: string, dash: number])[] = [
	['Two skins of a training fuselage lap between two stringers.', 5],
	['A patch covers a hole in a floor panel, riveted the same way on every side.', 5],
	['The rear half of a tail cone skin laps over the front half.', 5],
	['The web of a floor beam comes in two lengths that lap.', 6],
	['A wing walk panel is made of two pieces that lap across its middle.', 5],
	['Two lengths of floor panel lap between two beams.', 5],
	['The web of a wing spar comes in two lengths that lap.', 8]
];

const asked = {
	1: ['rowsApart'],
	// Of the width alone nobody can tell the edges from the rows.
	2: ['rowsApart', 'width'],
	3: ['edge', 'rowsApart', 'width']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How far apart do the two rows stand?',
	2: 'How far apart do the two rows stand, and how wide is the lap?',
	3: 'How wide is the lap, and how are its three rows laid out?'
};

const chief = {
	edge: ['halfLeast'],
	rowsApart: ['stagger', 'fullPitch'],
	width: ['oneEdge', 'spacePerRow', 'edgesOnly', 'noEdges']
};

export const tasks = family({
	method: lapWidth,
	draw(random, level) {
		const [story, largest] = random.pick(stories);
		const D = random.pick(rivetDashes.filter((dash) => dash <= largest)) / 32;
		// Nobody countersinks inside: the rivets of a web protrude.
		const head = largest > 5 ? 'protruding' : random.pick(['protruding', 'countersunk']);
		const rows = level === 3 ? 3 : 2;
		const pitch = pitchFor(random, head, rows, D);
		// The one of the two rules that does not hold is seen to be another.
		const other = 0.75 * pitch < 2.5 * D ? 'pitchAlone' : 'closestAlone';
		return {
			given: { D, head, rows, pitch },
			story,
			question: questions[level],
			asked: asked[level],
			chief: { ...chief, rowsApart: [...chief.rowsApart, other] },
			apart,
			basis:
				'FAA-H-8083-31B, Figs. 4-79 and 4-81: minimum edge distance; rows 75 percent of the pitch apart, never under 2.5D.',
			cautions: ['drill']
		};
	},
	figure: ({ rows, D, pitch }, say) =>
		lapFromAbove(rows, { D: say('D', D), pitch: say('pitch', pitch) }),
	metal: laidOut
});

/** Distances between rows that come to the same where the pitch is so many diameters. */
const apart = [['stagger', 'edgeForRows', 'pitchFloor', 'closestAlone']];

/**
 * Pitch in whole 16ths, so that rows 75 percent of it apart fall on a 64th; from the minimum of Fig. 4-80
 * for the head and the rows to 5 D more.
 */
function pitchFor(random: Random, head: string, rows: number, D: number): number {
	const least = (head === 'countersunk' ? 3.5 : 3) + (rows === 2 ? 1 : 0);
	const shortest = Math.ceil(least * D * 16);
	// The least often enough that the rows stand by 2.5 D and not by the pitch.
	if (random.int(1, 4) === 1) return shortest / 16;
	return random.int(shortest, Math.floor((least + 5) * D * 16)) / 16;
}

/** Which rows are wrong, by outcome. */
const wrongRows: Readonly<Record<string, 'last' | 'all'>> = {
	off: 'last',
	narrow: 'last',
	together: 'all',
	underClosest: 'all',
	underByPitch: 'all'
};

/** The rows laid out from the left edge, in a lap as wide as it comes out by the answer. */
function laidOut(seen: SeenBy<typeof lapWidth>, say: Say): Drawing {
	const [width, apart] = [seen.at('width'), seen.at('rowsApart')];
	return {
		title: seen.says,
		shapes: lapToScale(
			{
				...seen.given,
				width,
				edge: seen.at('edge'),
				apart,
				off: wrongRows[seen.case] ?? 'none',
				wanted: seen.rightAt('width')
			},
			// The rows of an answer to the width are a step on the way to it: not told.
			{ width: say('width', width), apart: seen.key === 'width' ? '' : say('rowsApart', apart) }
		)
	};
}
