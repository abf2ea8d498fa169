import { rivetDiameter } from '../../methods/rivet-diameter.ts';
import { family } from '../family.ts';
import { rivetInStack, stackWithCentreLine } from './parts/rivet-in-stack.ts';
import { thicknessesForRivets } from './parts/sheets-for-rivets.ts';

const stories: readonly string[] = [
	'A crack in the skin is covered with a lap patch of the same sheet.',
	'Two offcuts from the same sheet are joined for a practice lap seam.',
	'A torn gusset is remade from the sheet it came from and riveted to its twin.',
	'The two halves of a cowl panel, both of one sheet, are spliced along the middle.',
	'A cover is made from the same stock as the inspection panel it goes onto.'
];

export const tasks = family({
	method: rivetDiameter,
	draw(random, level) {
		const sheets =
			level === 1 ? thicknessesForRivets.filter((T) => T >= 0.02) : thicknessesForRivets;
		return {
			given: { thickest: random.pick(sheets) },
			story: random.pick(stories),
			question:
				level === 3
					? 'How thick is three times the sheet, and which is the smallest rivet?'
					: 'Which is the smallest rivet diameter for these sheets?',
			asked: level === 3 ? ['threeT', 'diameter'] : ['diameter'],
			labels: { thickest: 'Each of the two sheets' },
			basis: 'Airframe handbook, p. 4-32, for a part that carries stress.',
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
