import type { Drawing } from '../../figures/drawing.ts';
import { chartExcerpt } from '../../figures/parts/chart-excerpt.ts';
import { dimensionAcross } from '../../figures/parts/dimension.ts';
import { drilledSheet } from '../../figures/parts/hole.ts';
import { drillSize } from '../../methods/drill-size.ts';
import { leastPiloted, leavesEnough } from '../../trade/parts-that-exist/first-drill.ts';
import { chartSize, drillChart } from '../../trade/tables/drill-chart.ts';
import { type Draw, family, type Say, type SeenBy } from '../family.ts';
import type { Level } from '../level.ts';
import type { Random } from '../random.ts';
import { across, down } from '../../figures/size.ts';

const stories: Readonly<Record<Level, readonly string[]>> = {
	1: [
		'The drill index has lost a label, and the caliper is on the bench.',
		'A drawing of an instrument panel calls the hole out by its drill.',
		'You check a drilled hole with a pin gauge marked in decimals.',
		'The stand for number drills is mixed up; each drill goes back to its hole.',
		'A work card names the drill, and the speed chart of the drill press lists decimals only.',
		'A new drill has its name on the shank, and you write its size into the index.'
	],
	2: [
		'The hole is drilled under size first and then reamed to the size of the drill called out.',
		'A jig has fraction bushings only; the hole is finished without it.',
		'A bracket came with its holes a fraction drill under size; they are opened up to the drill called out.'
	],
	3: [
		'Number, letter and fraction drills go back into one stand, in order of size.',
		'One long drill block holds every drill by size; you put this one back.',
		'A drill lies beside its block, and you look for its place among the fractions.',
		'The index for all three series is filled again, smallest drill first.',
		'You sort a tin of drills by size before the index is closed.',
		'A student asks between which two fractions this drill belongs.'
	]
};

const questions: Readonly<Record<Level, string>> = {
	1: 'What size is this drill, in decimals?',
	2: 'What size is the drill, and which fraction drill comes next below it?',
	3: 'What size is the drill, and between which two fraction drills does it stand?'
};

const asked = {
	1: ['size'],
	2: ['size', 'under'],
	3: ['size', 'fraction', 'under']
} as const satisfies Record<Level, readonly string[]>;

// Letter E is the 1/4 drill: everybody reads that off without the chart.
const drills: readonly string[] = [
	...Array.from({ length: 60 }, (_, i) => `No. ${i + 1}`),
	...'ABCDFGHIJKLMNOPQRSTUVWXYZ'
];

/** Where the next fraction below leaves too little to cut, nobody drills in two; it still checks the hole. */
const checked: readonly string[] = [
	'A hole is checked with the largest fraction drill that still goes in.',
	'No pin gauge is at hand, so the largest fraction drill that still goes in checks the hole.'
];

/** Holes that are large enough for a pilot hole. */
const piloted: readonly string[] = [
	'A thick fitting is drilled in two steps; you choose the first drill from the fractions.',
	'A worn hinge hole is cleaned up: a fraction drill first, then the drill called out.',
	'The drill called out wanders in thick plate, so a smaller one goes first.',
	'You start a hole with a fraction drill and finish it with the drill called out.'
];

/** Where it stands in a task: only a hole that is drilled there has the caution of drilling. */
function workFor(random: Random, level: Level, drill: string): Pick<Draw, 'story' | 'cautions'> {
	if (level !== 2) return { story: random.pick(stories[level]), cautions: [] };
	const size = chartSize.run(drill);
	if (!leavesEnough(size)) return { story: random.pick(checked), cautions: [] };
	const told = size < leastPiloted ? stories[2] : [...stories[2], ...piloted];
	return { story: random.pick(told), cautions: ['drill'] };
}

export const tasks = family({
	method: drillSize,
	draw(random, level) {
		const drill = random.pick(drills);
		return {
			given: { drill },
			...workFor(random, level, drill),
			question: questions[level],
			asked: asked[level],
			chief: {
				size: ['rowLarger', 'rowSmaller', 'asThousandths'],
				fraction: ['down', 'oneMore'],
				under: ['upForUnder', 'oneLess']
			},
			basis:
				'Sizes by the drill chart, Fig. 4-47 of the airframe handbook; fractions step by 1/64 in.'
		};
	},
	figure: ({ drill }) => chartExcerpt(drillChart, { row: drill }),
	metal: holeBy
});

/** The hole that a drill of this size makes, to the scale of the right one. */
function holeBy(seen: SeenBy<typeof drillSize>, say: Say): Drawing {
	const [size, wanted] = [seen.at('entered'), seen.rightAt(seen.key)];
	const [width, thickness] = [across(250), down(30)];
	const x = width / 2;
	const drawn = (Math.min(Math.max(size, 0), 2.2 * wanted) / wanted) * across(105);
	return {
		title: seen.says,
		shapes: [
			...drilledSheet(x, drawn, { width, y: 0, thickness }),
			...(drawn < 4
				? []
				: dimensionAcross(
						x - drawn / 2,
						x + drawn / 2,
						thickness + 32,
						thickness,
						say(seen.key, size)
					))
		]
	};
}
