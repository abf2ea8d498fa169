import { alloyOf } from '../../trade/alloy.ts';
import { type Drawing, path, polyline, text } from '../../figures/drawing.ts';
import { dimensionAcross, dimensionDown, leader } from '../../figures/parts/dimension.ts';
import { sheetWeight } from '../../methods/sheet-weight.ts';
import { sheetThicknesses, stockSheets } from '../../trade/stock.ts';
import { isUsualGauge } from '../../trade/parts-that-exist/made-of.ts';
import { densities, density } from '../../trade/tables/densities.ts';
import type { GivenValues } from '../../solver/method.ts';
import { family, type Say } from '../family.ts';
import type { Level } from '../level.ts';
import { both } from '../../figures/size.ts';

type Sheet = (typeof stockSheets)[number];

/** Structure, which is made of the strong alloys, and parts that carry little. */
const jobs: Readonly<Record<Level, Readonly<Record<'structure' | 'light', readonly string[]>>>> = {
	1: {
		structure: [
			'A full sheet for wing skins is booked in at the store by its weight.',
			'A sheet for bulkhead webs goes onto a rack with a load limit.',
			'One sheet for spar webs goes from the rack to the shear on a cart.'
		],
		light: [
			'A full sheet for cowlings is booked in at the store by its weight.',
			'A sheet for baffles goes onto a rack with a load limit.',
			'One sheet for cabin trim is taken down from the rack and goes to the shear.'
		]
	},
	2: {
		structure: [
			'A wing skin is replaced, and the weight change goes into the records.',
			'A new bulkhead web is weighed on paper before it is cut.',
			'A fuselage skin is cut for a training aircraft and weighed on paper first.'
		],
		light: [
			'A cabin lining is replaced, and the weight change goes into the records.',
			'A baggage floor cover is laid out, and its weight is estimated first.',
			'A gap cover is weighed on paper before it is cut.'
		]
	},
	3: {
		structure: [
			'Two alloys are compared for a wing skin, and you work out this one.',
			'A fuselage skin is weighed on paper for the weight record.',
			'A bulkhead web is estimated before the metal is ordered.'
		],
		light: [
			'Two alloys are compared for a large fairing, and you work out this one.',
			'A cowl panel is estimated before the metal is ordered.',
			'A cabin lining is weighed on paper for the weight record.'
		]
	}
};

/** Alloys that stressed skins and structure are made of, and those of other parts. */
const structural = ['2014-T6', '2024-T3', '6061-T6', '7075-T6'] as const;
const fuselage = ['2024-T3', '6061-T6'] as const;
const light = ['1100-H14', '3003-H14', '5052-H32', '6061-T6'] as const;

/** Alloys whose density was read in a table; the others stand on the task with theirs. */
function isListed(alloy: string): boolean {
	return !densities.rowSources.has(alloyOf(alloy));
}

/** The densities that were read in a table, as a row of the task. */
const densityRows = densities.rows.keys
	.flat()
	.filter(isListed)
	.map((alloy) => `${alloy} ${density.run(alloy).toFixed(3)}`)
	.join(', ');

export const tasks = family({
	method: sheetWeight,
	draw(random, level) {
		const sheet = random.pick(stockSheets.filter(({ length }) => length >= 96));
		// A piece comes out of its stock sheet.
		const cut =
			level === 1 ? sheet : { length: random.int(40, 92), width: random.int(24, sheet.width - 1) };
		const use = random.pick(['structure', 'light'] as const);
		const story = random.pick(jobs[level][use]);
		const alloys: readonly string[] =
			use === 'light' ? light : /fuselage/.test(story) ? fuselage : structural;
		const alloy = random.pick(level === 3 ? alloys.filter(isListed) : alloys);
		return {
			given: {
				length: cut.length,
				width: cut.width,
				T: random.pick(sheetThicknesses.filter((T) => T >= 0.025 && isUsualGauge(story, T))),
				alloy
			},
			story,
			question:
				level === 3
					? 'What is the density, and what does the sheet weigh?'
					: 'What does the sheet weigh?',
			asked: level === 3 ? ['density', 'weight'] : ['weight'],
			chief: { density: [], weight: ['noDensity', 'noThickness', 'oneSideInFeet'] },
			told: toldAt(level, alloy, sheet),
			basis: 'Nominal density of the alloy, whatever its temper.',
			cautions: ['edges']
		};
	},
	figure: sheetInView
});

/** The density, or the table that it is read off; a piece comes out of a stock sheet. */
function toldAt(level: Level, alloy: string, { width, length }: Sheet) {
	const told: [string, string][] =
		level === 3
			? [['Density table, lb/in³', densityRows]]
			: [['Density', `${density.run(alloy).toFixed(3)} lb/in³`]];
	if (level > 1) told.push(['Cut from stock', `${width} × ${length} in sheet`]);
	if (level === 3) told.push(['Finish', 'bare']);
	return told;
}

/** The sheet lying flat, seen a little from above; its thickness is not to scale. */
type Given = GivenValues<typeof sheetWeight>;

function sheetInView(given: Given, say: Say, like = given): Drawing {
	const { length, width, T, alloy } = given;
	const scale = both(280) / Math.max(like.length, 72);
	const [long, deep] = [length * scale, width * scale];
	const thick = 6;
	return {
		title: `A sheet of ${alloy} with its length, width and thickness.`,
		shapes: [
			path(
				polyline(
					[
						[0, 0],
						[long, 0],
						[long, deep],
						[0, deep]
					],
					true
				),
				'edge',
				'metal-a'
			),
			path(
				polyline(
					[
						[0, deep],
						[long, deep],
						[long, deep + thick],
						[0, deep + thick]
					],
					true
				),
				'edge',
				'metal-c'
			),
			text(long / 2, deep / 2 + 4, alloy, { anchor: 'middle', tone: 'ink' }),
			...dimensionAcross(0, long, -18, 0, say('length', length)),
			...dimensionDown(0, deep, long + 18, long, say('width', width)),
			...leader(long * 0.7, deep + thick, long * 0.7 + 18, deep + 34, `T ${say('T', T)}`)
		]
	};
}
