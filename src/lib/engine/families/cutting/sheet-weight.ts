import { type Drawing, path, polyline, text } from '../../figures/drawing.ts';
import { dimensionAcross, dimensionDown, leader } from '../../figures/parts/dimension.ts';
import { sheetWeight } from '../../methods/sheet-weight.ts';
import { sheetThicknesses, stockSheets } from '../../trade/stock.ts';
import { density } from '../../trade/tables/densities.ts';
import type { GivenValues } from '../../solver/method.ts';
import { family, type Say } from '../family.ts';
import type { Level } from '../level.ts';

const stories: Readonly<Record<Level, readonly string[]>> = {
	1: [
		'A full sheet is on its way from the store, and you want to know how many people carry it.',
		'A new sheet is booked in at the store by its weight.',
		'One sheet hangs from a hoist on its way to the shear.',
		'The rack for new sheet has a load limit, and the next sheet goes on top.'
	],
	2: [
		'A floor panel is replaced, and the weight change goes into the records.',
		'A new bulkhead web is weighed on paper before it is cut.',
		'A baggage floor is laid out, and its weight is estimated first.',
		'A large skin is cut for a training fuselage; two people are to lift it.'
	],
	3: [
		'Two alloys are compared for a large fairing, and you work out this one.',
		'A cargo floor is estimated before the metal is ordered.',
		'The weight of a long wing skin is wanted for the hoist.',
		'A one-piece cabin roof skin is weighed on paper.'
	]
};

/** Alloys whose density was read in a table; the others stand on the task with theirs. */
const listed = ['1100-O', '2014-T6', '2024-T3', '3003-H14', '5052-H32'] as const;
const remembered = ['6061-T6', '7075-T6'] as const;

export const tasks = family({
	method: sheetWeight,
	draw(random, level) {
		const sheet = random.pick(stockSheets.filter(({ length }) => length >= 96));
		const cut = level === 1 ? sheet : { length: random.int(40, 92), width: random.int(24, 47) };
		const alloy = random.pick(level === 3 ? listed : [...listed, ...remembered]);
		return {
			given: {
				length: cut.length,
				width: cut.width,
				T: random.pick(sheetThicknesses.filter((T) => T >= 0.025)),
				alloy
			},
			story: random.pick(stories[level]),
			question:
				level === 3
					? 'What is the density, and what does the sheet weigh?'
					: 'What does the sheet weigh?',
			asked: level === 3 ? ['density', 'weight'] : ['weight'],
			told: level === 3 ? [] : [['Density', `${density.run(alloy).toFixed(3)} lb/in³`]],
			basis: 'Nominal density of the alloy, whatever its temper.',
			cautions: ['edges']
		};
	},
	figure: (given, say) => sheetInView(given, say)
});

/** The sheet lying flat, seen a little from above; its thickness is not to scale. */
function sheetInView(
	{ length, width, T, alloy }: GivenValues<typeof sheetWeight>,
	say: Say
): Drawing {
	const scale = 280 / Math.max(length, 72);
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
