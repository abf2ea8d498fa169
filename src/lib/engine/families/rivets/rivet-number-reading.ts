import { circle, type Drawing, rectangle, segment, type Shape } from '../../figures/drawing.ts';
import { leader } from '../../figures/parts/dimension.ts';
import { rivetNumberReading } from '../../methods/rivet-number-reading.ts';
import { headNumber, lettersOf, olderRivetNumber, rivetNumber } from '../../trade/rivet-code.ts';
import { family } from '../family.ts';
import { looseRivetDrawing } from './parts/loose-rivet.ts';
import { solidRivet } from '../parts/solid-rivets.ts';
import { across, both, down } from '../../figures/size.ts';

const stories: readonly string[] = [
	'A drawing calls this rivet out beside a seam.',
	'A box of rivets comes from stores, and you check it against its label.',
	'The parts list of a repair names the rivet by its number only.',
	'Somebody tipped two drawers together; the label of one is still readable.',
	'A work card calls for a rivet by its number.',
	'An old parts list lies beside the bench, with one rivet number on it.',
	'A bag of rivets has only its number on it.'
];

const questions = {
	diameter: 'What is the diameter of this rivet?',
	length: 'How long is this rivet?'
} as const;

export const tasks = family({
	method: rivetNumberReading,
	draw(random, level) {
		const { head, alloy, diameterDash, lengthDash } = solidRivet(random, level);
		const one = random.pick(['diameter', 'length'] as const);
		const write = level > 1 && random.int(0, 3) === 0 ? olderRivetNumber : rivetNumber;
		return {
			given: { number: write(headNumber(head), lettersOf(alloy), diameterDash, lengthDash) },
			story: random.pick(stories),
			question:
				level === 1
					? questions[one]
					: level === 2
						? 'What are the diameter and the length of this rivet?'
						: 'What are the head, alloy, diameter and length of this rivet?',
			asked:
				level === 1
					? [one]
					: level === 2
						? ['diameter', 'length']
						: ['head', 'alloy', 'diameter', 'length'],
			chief: {
				diameter: ['diameterIn16ths', 'lastForDiameter'],
				length: ['lengthIn32nds', 'firstForLength']
			},
			basis:
				'Head, alloy letters, diameter in 32nds, then length in 16ths; numbers that begin with AN are older.',
			cautions: []
		};
	},
	figure: ({ number }) => seam(number),
	metal: (seen, say) => {
		// Only what was answered is drawn to size and lettered: the other size may still be asked.
		const own = seen.key === 'diameter' ? 'D' : 'length';
		const sizes = (size: number) => ({ ...anyRivet, [own]: size });
		const notes = { D: '', length: '', [own]: say(seen.key, seen.at(seen.key)) };
		const rivet = {
			...sizes(seen.at(seen.key)),
			head: seen.word('head'),
			letters: seen.word('marked')
		};
		return looseRivetDrawing(seen.says, rivet, notes, [sizes(seen.beside(seen.key))]);
	}
});

/** Sizes that stand for whatever was not answered, inches. */
const anyRivet = { D: 5 / 32, length: 1 / 2 };

/** A lap seam from above, the rivet called out by its number. */
function seam(number: string): Drawing {
	const rivets = Array.from({ length: 7 }, (_, i) => across(24 + i * 36));
	const [right, top, low, middle, bottom] = [across(264), down(46), down(78), down(62), down(112)];
	const shapes: Shape[] = [
		rectangle(0, top, right, bottom - top, 'metal-b'),
		rectangle(0, 0, right, low, 'metal-a'),
		segment(0, top, right, top, 'hidden'),
		segment(-8, middle, right + 8, middle, 'centre'),
		...rivets.map((x) => circle(x, middle, both(8), 'rivet')),
		...leader(rivets[5] ?? 0, middle - both(9), across(236), -18, number)
	];
	return {
		title: `A lap seam from above; a line from one of its rivets leads to the number ${number}.`,
		shapes
	};
}
