import { rivetDiameter } from '../../methods/rivet-diameter.ts';
import { family } from '../family.ts';
import { rivetInStack, stackWithCentreLine } from './parts/rivet-in-stack.ts';
import { inchSheets, metricSheets, sheetAlloy } from './parts/sheets-for-rivets.ts';

const stories: readonly string[] = [
	'A crack in the skin gets a lap patch of the same sheet.',
	'Two offcuts of one sheet are joined for a practice lap seam.',
	'A torn gusset is made again from the same sheet and riveted to its twin.',
	'The two halves of a cowl panel, of one sheet, are spliced along the middle.',
	'A cover is made from the same stock as the panel it goes onto.',
	'Two floor panels of one gauge lap over a beam.',
	'A doubler of the same sheet goes behind an inspection hole.'
];

export const tasks = family({
	method: rivetDiameter,
	draw(random, level) {
		const { T, label } = random.pick(level === 1 ? inchSheets : [...inchSheets, ...metricSheets]);
		return {
			given: { thickest: T },
			story: random.pick(stories),
			question:
				level === 3
					? 'What is 3T, and which is the smallest rivet by it?'
					: 'Which is the smallest rivet diameter by 3T?',
			asked: level === 3 ? ['threeT', 'diameter'] : ['diameter'],
			chief: {
				threeT: ['oneT', 'twoT', 'twoAndHalfT'],
				diameter: 3 * T <= 3 / 32 ? ['tooSmall'] : ['oneT', 'down']
			},
			labels: { thickest: 'Each of the two sheets' },
			told: [
				sheetAlloy(random),
				...(label === null ? [] : [['Sold as', label] as const]),
				...(level === 1 ? [] : [['Rivets', 'universal head, AD'] as const])
			],
			basis: '3T, then the next 1/32 in up; minimum 3/32 in (airframe handbook, p. 4-32).',
			cautions: ['drill']
		};
	},
	figure: ({ thickest }, say) =>
		stackWithCentreLine(
			[thickest, thickest],
			[say('thickest', thickest), say('thickest', thickest)]
		),
	metal: (seen) => rivetInStack([seen.given.thickest, seen.given.thickest], seen)
});
