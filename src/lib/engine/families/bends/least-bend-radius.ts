import { type Drawing, path, polyline } from '../../figures/drawing.ts';
import { along, metal, section } from '../../figures/parts/bent.ts';
import { chartExcerpt, sharedRow } from '../../figures/parts/chart-excerpt.ts';
import { leastBendRadius } from '../../methods/least-bend-radius.ts';
import { noseRadii, sheetThicknesses } from '../../trade/stock.ts';
import { leastRadii } from '../../trade/tables/least-radius.ts';
import { fraction } from '../../quantity/kinds.ts';
import type { Value } from '../../quantity/value.ts';
import type { GivenValues } from '../../solver/method.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Level } from '../level.ts';
import { across, both, down } from '../../figures/size.ts';

const stories: Readonly<Record<Level, readonly string[]>> = {
	1: [
		'A drawing gives the alloy of a bracket but no bend radius.',
		'A bracket will be bent from a sheet out of the rack.',
		'The print for a clip has its radius smudged out.',
		'You write the bend card for a batch of small angles.',
		'The order for a stiffener says only what sheet to take.',
		'A test strip is bent before the first part of a batch.'
	],
	2: [
		'The rack holds another temper than usual, so the old bend card does not do.',
		'A stiffener cracked in the brake last week; you check its radius in the chart.',
		'A bracket is to be made again in another alloy.',
		'Two sheets of one thickness lie on the bench, and only one of them is the right temper.',
		'The drawing says “smallest radius allowed”, and no figure.'
	],
	3: [
		'The brake of the shop takes a nose bar, and you put one on.',
		'Before you set the brake you choose the nose bar for this sheet.',
		'Someone left the sharpest bar on the brake; you change it for your sheet.',
		'The brake is set up for a new batch, nose bar first.',
		'The drawing asks for the sharpest bend that this sheet stands.',
		'The bar rack is full; you look the sheet up before you take a bar.'
	]
};

/** Alloys and tempers from every column of the chart. */
const alloys = leastRadii.columns.keys.flat();

/** Sizes of the older gauge series beside the stocked ones; the chart has one row for both. */
const olderSizes: readonly number[] = [0.051, 0.064, 0.072, 0.081, 0.091, 0.102, 0.128];

/** Thicker sheet of the chart, of which less is stocked. */
const thickerSizes = [0.1, 0.125] as const;
const olderStory =
	'The sheet is of the older gauge series, which has no row of its own in the chart.';

const questions: Readonly<Record<Level, string>> = {
	1: 'What is the minimum inside radius for this sheet?',
	2: 'What is the minimum inside radius, and which 32nd does it stand for?',
	3: 'What is the minimum radius, and which is the sharpest bar allowed?'
};

const chart = 'The chart of the airframe handbook (FAA-H-8083-31B, ch. 4, p. 4-61, Fig. 4-124).';

const asked = { 1: ['radius'], 2: ['radius', 'in32nds'], 3: ['radius', 'bar'] } as const;

export const tasks = family({
	method: leastBendRadius,
	draw(random, level) {
		const T = random.pick(
			level === 1 ? sheetThicknesses : [...sheetThicknesses, ...thickerSizes, ...olderSizes]
		);
		return {
			given: { alloy: random.pick(alloys), T },
			story: olderSizes.includes(T) ? olderStory : random.pick(stories[level]),
			question: questions[level],
			asked: asked[level],
			chief: { radius: ['thickness'], bar: ['under'] },
			told: level === 3 ? [['Nose bars in the rack', rack]] : [],
			// Near cells of the chart often hold one radius.
			apart: [
				['rowUp', 'rowDown', 'columnLeft', 'columnRight'],
				['rowUp', 'rowDown', 'annealed'],
				['rowUp', 'rowDown', 'harder']
			],
			basis: level === 3 ? `${chart} Its two decimals stand for 32nds: 0.03 is 1/32 in.` : chart,
			cautions: level === 3 ? ['bend'] : []
		};
	},
	figure: chartBeside,
	metal: (seen) => bentOver(seen)
});

const rack = `${noseRadii.map((bar) => fraction.number(bar)).join(', ')} in`;

/** As many columns are shown as can still be read on a phone. */
const columnsShown = 4;

function chartBeside({ alloy, T }: GivenValues<typeof leastBendRadius>, say: Say): Drawing {
	const bare = (key: string, size: Value) => say(key, size).replace(/ (in|mm)$/, '');
	return chartExcerpt(
		leastRadii,
		{ row: T, column: alloy },
		{
			columns: columnsShown,
			row: (size) => bare('T', size),
			cell: (size) => bare('radius', size),
			below: [
				`Sizes in ${/mm$/.test(say('T', T)) ? 'millimetres' : 'inches'}.`,
				...sharedRow(leastRadii, T, say('T', T), (size) => bare('T', size))
			]
		}
	);
}

/** A square bend of the radius that was answered, with cracks where it is too sharp. */
function bentOver(seen: SeenBy<typeof leastBendRadius>): Drawing {
	const { T } = seen.given;
	const least = seen.rightAt('in32nds');
	const R = Math.min(Math.max(seen.at('entered'), 0.002), 3 * least + T);
	const scale = Math.min(both(64) / least, both(18) / T);
	const part = section({ R, T, flats: [across(70) / scale, down(70) / scale], bends: [90] }, scale);
	const cracks =
		seen.case === 'sharp'
			? part.corners.flatMap(({ centre }) =>
					[30, 45, 60].map((at) => crack(centre, part.R, part.T, at - 90))
				)
			: [];
	return { title: seen.says, shapes: [metal(part), ...cracks] };
}

/** A crack that runs in from the outside face. */
function crack(centre: readonly [number, number], R: number, T: number, heading: number) {
	const points = [1, 0.75, 0.5, 0.35].map((depth, i) =>
		along(centre, heading + (i % 2 === 0 ? 2 : -2), R + T * depth)
	);
	return path(polyline(points), 'slip');
}
