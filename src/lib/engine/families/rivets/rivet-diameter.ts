import { rivetDiameter } from '../../methods/rivet-diameter.ts';
import { rivetDiameterInRange } from '../../methods/rivet-diameter-in-range.ts';
import { family, type OtherDraw } from '../family.ts';
import type { Random } from '../random.ts';
import { rivetInStack, stackWithUnknownRivet } from './parts/rivet-in-stack.ts';
import {
	binsHold,
	inchSheets,
	type LabelledSheet,
	metricSheets,
	sheetAlloy,
	sheetsWithRange
} from '../parts/sheets-for-rivets.ts';

/** With the thinnest and the thickest sheet that such a part is made of, inches. */
const stories: readonly (readonly [story: string, least: number, most: number])[] = [
	['A crack in the skin gets a lap patch of the same sheet.', 0.016, 0.06],
	['Two offcuts of one sheet are joined for a practice lap seam.', 0.016, 0.09],
	['A torn gusset is made again from the same sheet and riveted to its twin.', 0.025, 0.09],
	['The two halves of a cowl lap along the middle; both are of one sheet.', 0.025, 0.05],
	['A cover is made from the same stock as the panel it goes onto.', 0.02, 0.06],
	['Two floor panels of one gauge lap between two beams.', 0.025, 0.06],
	['A doubler of the same sheet goes behind an inspection hole.', 0.02, 0.06],
	['Two angles of one gauge are riveted back to back.', 0.032, 0.09],
	['A cracked spar web gets a splice plate of its own gauge.', 0.032, 0.09]
];

function storyFor(random: Random, T: number): string {
	const fitting = stories.filter(([, least, most]) => T >= least - 1e-9 && T <= most);
	return random.pick(fitting)[0];
}

const labels = { thickest: 'Each of the two sheets' };

function soldAs(label: LabelledSheet['label']) {
	return label === null ? [] : [['Sold as', label] as const];
}

export const tasks = family({
	method: rivetDiameter,
	others: [rivetDiameterInRange],
	draw(random, level) {
		if (level === 3) return rangeAndAbove(random);
		const { T, label } = random.pick(level === 1 ? inchSheets : [...inchSheets, ...metricSheets]);
		const story = storyFor(random, T);
		return {
			given: { thickest: T },
			story,
			question: 'What is 3T, and which is the smallest rivet by it?',
			// Of a stocked size alone nobody can tell which of several mistakes led to it.
			asked: ['threeT', 'diameter'],
			chief: {
				threeT: ['oneT', 'twoT', 'twoAndHalfT'],
				diameter: 3 * T <= 3 / 32 ? ['tooSmall'] : ['oneT', 'down']
			},
			labels,
			told: [
				sheetAlloy(random, story),
				...soldAs(label),
				...(level === 1 ? [] : [['Rivets', 'universal head, AD'] as const])
			],
			basis: '3T, then the next stocked size up; minimum 3/32 in (airframe handbook, p. 4-32).',
			cautions: ['drill']
		};
	},
	figure: ({ thickest }, say, like) =>
		stackWithUnknownRivet(
			[thickest, thickest],
			[say('thickest', thickest), say('thickest', thickest)],
			like && [like.thickest, like.thickest]
		),
	metal: (seen) => rivetInStack([seen.given.thickest, seen.given.thickest], seen)
});

/** The stocked rivet below 3T and the one above; for some sheets 7/32 in would be next, which is not stocked. */
function rangeAndAbove(random: Random): OtherDraw {
	const { T, label } = random.pick(sheetsWithRange);
	const story = storyFor(random, T);
	return {
		method: rivetDiameterInRange,
		given: { thickest: T },
		story,
		question:
			'What is 3T, which stocked rivet lies within 2.5T to 3T, and which is the next above 3T?',
		asked: ['threeT', 'inRange', 'above'],
		chief: {
			inRange: ['highEnd', 'aboveForRange', 'next32nd'],
			above: [...(3 * T > 3 / 16 ? ['unstockedAbove'] : []), 'rangeForAbove']
		},
		labels,
		told: [sheetAlloy(random, story), ...soldAs(label), binsHold],
		basis:
			'The general range is 2.5T to 3T; the usual rule, the next size above 3T (airframe handbook, p. 4-32).',
		cautions: ['drill']
	};
}
