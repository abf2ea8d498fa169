import type { Drawing } from '../../figures/drawing.ts';
import { dimensionAcross } from '../../figures/parts/dimension.ts';
import { drillBit } from '../../figures/parts/drill-bit.ts';
import { drilledSheet } from '../../figures/parts/hole.ts';
import { drillSize } from '../../methods/drill-size.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Level } from '../level.ts';

const stories: readonly string[] = [
	'The drill index has lost a label, and the caliper is on the bench.',
	'A drawing of an instrument panel calls the hole out by its drill.',
	'You check a drilled hole with a pin gauge marked in decimals.',
	'The stand for number drills is mixed up; each drill has to go back to its hole.',
	'A work card names the drill, and the drill press table lists decimals only.'
];

const fractionStories: readonly string[] = [
	'The drill called out is broken, and only fraction drills are left in the box.',
	'The repair cart carries fraction drills only; the hole may be a little over.',
	'A bolt hole in a bracket is called out by a drill that the shop does not have.',
	'The last drill of that name went to the grinder; a fraction drill must do.'
];

const numberDrills = Array.from({ length: 52 }, (_, i) => `No. ${i + 1}`);
// Letter E is the 1/4 drill: everybody reads that off without the chart.
const letterDrills = [...'ABCDFGHIJKLMNOPQRSTUVWXYZ'];

const drills: Readonly<Record<Level, readonly string[]>> = {
	1: numberDrills.filter((_, i) => i >= 9 && i < 45),
	2: [...numberDrills, ...letterDrills],
	3: [...numberDrills, ...letterDrills]
};

export const tasks = family({
	method: drillSize,
	draw: (random, level) => ({
		given: { drill: random.pick(drills[level]) },
		story: random.pick(level === 3 ? fractionStories : stories),
		question:
			level === 3
				? 'What size is the drill, and which fraction drill comes next above it?'
				: 'What size is this drill, in decimals?',
		asked: level === 3 ? ['size', 'fraction'] : ['size'],
		basis: 'Sizes by the drill chart, Fig. 4-47 of the airframe handbook.',
		cautions: ['drill']
	}),
	figure: ({ drill }) => drillOver(drill),
	metal: holeBy
});

const [width, x] = [250, 125];

/** The drill over its hole; every drill is drawn alike, so that nothing can be measured off. */
function drillOver(drill: string): Drawing {
	const name = drill.startsWith('No.') ? drill : `letter ${drill}`;
	return {
		title: `The ${name} drill over the hole it has made.`,
		shapes: [
			...drilledSheet(x, 40, { width, y: 0, thickness: 26 }),
			...drillBit(x, -8, 40, 104),
			...dimensionAcross(x - 20, x + 20, 52, 26, `${name} drill`)
		]
	};
}

/** The hole that a drill of this size makes, to the scale of the right one. */
function holeBy(seen: SeenBy<typeof drillSize>, say: Say): Drawing {
	const [size, wanted] = [seen.at('entered'), seen.rightAt(seen.key)];
	const drawn = (Math.min(Math.max(size, 0), 2.2 * wanted) / wanted) * 105;
	return {
		title: seen.says,
		shapes: [
			...drilledSheet(x, drawn, { width, y: 0, thickness: 30 }),
			...(drawn < 4
				? []
				: dimensionAcross(x - drawn / 2, x + drawn / 2, 62, 30, say(seen.key, size)))
		]
	};
}
