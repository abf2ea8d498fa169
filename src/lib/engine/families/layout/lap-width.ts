import type { Drawing } from '../../figures/drawing.ts';
import { lapFromAbove, lapToScale } from '../../figures/parts/lap.ts';
import { lapWidth } from '../../methods/lap-width.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';

const stories: readonly string[] = [
	'Two skins of a training fuselage lap along a stringer.',
	'A rectangular patch covers a hole in a floor panel, riveted the same way on every side.',
	'The rear half of a tail cone skin laps over the front half.',
	'A doubler on a spar web ends in a lap to the next web.',
	'A wing walk panel is spliced with a lap across its middle.'
];

const asked = { 1: ['rowsApart'], 2: ['width'], 3: ['edge', 'rowsApart', 'width'] } as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How far apart do the two rows stand?',
	2: 'How wide is the lap?',
	3: 'How wide is the lap, and how are its three rows laid out?'
};

export const tasks = family({
	method: lapWidth,
	draw(random, level) {
		const D = random.pick([3, 4, 5, 6]) / 32;
		const head = random.pick(['protruding', 'countersunk']);
		const rows = level === 3 ? 3 : 2;
		return {
			given: { D, head, rows, pitch: pitchFor(random, head, rows) * D },
			story: random.pick(stories),
			question: questions[level],
			asked: asked[level],
			basis:
				'FAA-H-8083-31B, Figs. 4-79 and 4-81: rows 75 percent of the pitch apart, never under 2.5 D.',
			cautions: ['drill']
		};
	},
	figure: ({ rows, D, pitch }, say) =>
		lapFromAbove(rows, { D: say('D', D), pitch: say('pitch', pitch) }),
	metal: laidOut
});

/** Pitch in rivet diameters, from the least of Fig. 4-80 for the head and the rows. */
function pitchFor(random: Random, head: string, rows: number): number {
	const least = (head === 'countersunk' ? 3.5 : 3) + (rows === 2 ? 1 : 0);
	return least + random.pick([0, 0.5, 1, 1.5, 2, 3]);
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
			{ width: say('width', width), apart: say('rowsApart', apart) }
		)
	};
}
