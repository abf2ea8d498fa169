import { lapFromAbove, lapToScale } from '../../figures/parts/lap.ts';
import { lapWidth } from '../../methods/lap-width.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';
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
	effect: (input, say) => {
		const { key, entered, right } = input;
		const draw = key === 'width' ? cutTo : key === 'rowsApart' ? rowsSet : null;
		if (!draw || typeof entered !== 'number') return null;
		return { entered: draw(input, entered, say), right: draw(input, Number(right[key]), say) };
	}
});

/** Pitch in rivet diameters, from the least of Fig. 4-80 for the head and the rows. */
function pitchFor(random: Random, head: string, rows: number): number {
	const least = (head === 'countersunk' ? 3.5 : 3) + (rows === 2 ? 1 : 0);
	return least + random.pick([0, 0.5, 1, 1.5, 2, 3]);
}

type Input = EffectInput<typeof lapWidth>;

/** Lap cut to `width`, its rows laid out from the left edge as they should be. */
function cutTo({ given, right }: Input, width: number, say: Say): Outcome {
	const [edge, apart] = [Number(right.edge), Number(right.rowsApart)];
	const left = width - edge - (given.rows - 1) * apart;
	const off = left < edge - 1 / 64 ? 'last' : 'none';
	const named = say('width', width);
	return {
		drawing: lapToScale(
			{ ...given, width, edge, apart, off, wanted: Number(right.width) },
			{ width: named, apart: say('rowsApart', apart) }
		),
		says: `${named}: ${leftOver(left, edge, say)}`
	};
}

function leftOver(left: number, edge: number, say: Say): string {
	if (left <= 0) return 'the last row would lie off the lap.';
	const where = `the last row stands ${say('edge', left)} from the far edge`;
	if (left < edge - 1 / 64) return `${where}, nearer than ${say('edge', edge)}.`;
	return left > edge + 1 / 64 ? `${where}, more than it needs.` : `${where}, as the first does.`;
}

/** Rows `apart` from each other, with an edge distance on both sides. */
function rowsSet({ given, right }: Input, apart: number, say: Say): Outcome {
	const [edge, wanted] = [Number(right.edge), Number(right.rowsApart)];
	const drawn = Math.max(0, Math.min(apart, 20 * given.D));
	const width = 2 * edge + (given.rows - 1) * drawn;
	const close = apart < wanted - 1 / 64;
	const times = Number((apart / given.D).toFixed(2));
	const [named, wide] = [say('rowsApart', apart), say('width', width)];
	const verdict = close
		? apart < 2.5 * given.D - 1e-4
			? 'closer than 2.5 D'
			: 'closer than 75 percent of the pitch'
		: `the lap comes out ${wide} wide`;
	return {
		drawing: lapToScale(
			{
				...given,
				width,
				edge,
				apart: drawn,
				off: close ? 'all' : 'none',
				wanted: Number(right.width)
			},
			{ width: wide, apart: named }
		),
		says: `Rows ${named} apart are ${times} D apart: ${verdict}.`
	};
}
