import { circle, type Drawing, rectangle, segment, type Shape } from '../../figures/drawing.ts';
import { leader } from '../../figures/parts/dimension.ts';
import { rivetDrawing, rivetScale } from '../../figures/parts/rivet-drawing.ts';
import { rivetNumberReading } from '../../methods/rivet-number-reading.ts';
import { headNumber, lettersOf, rivetNumber } from '../../trade/rivet-code.ts';
import { type Effect, type EffectInput, family, type Outcome, type Say } from '../family.ts';
import { solidRivet } from './parts/solid-rivets.ts';

const stories: readonly string[] = [
	'The drawing of a flap track fairing calls this rivet out beside a seam.',
	'A box of rivets comes back from stores, and you check it against its label.',
	'The parts list of a door repair names the rivet by its number only.',
	'Somebody tipped two drawers together; the label of one is still readable.',
	'The repair sheet for a wing walk panel gives the rivet as a number.'
];

const questions = {
	diameter: 'Which diameter is this rivet?',
	length: 'How long is this rivet?'
} as const;

export const tasks = family({
	method: rivetNumberReading,
	draw(random, level) {
		const { head, alloy, diameterDash, lengthDash } = solidRivet(random, level);
		const one = random.pick(['diameter', 'length'] as const);
		return {
			given: {
				number: rivetNumber(headNumber(head), lettersOf(alloy), diameterDash, lengthDash)
			},
			story: random.pick(stories),
			question:
				level === 1
					? questions[one]
					: level === 2
						? 'Which diameter and length is this rivet?'
						: 'Which head, alloy, diameter and length is this rivet?',
			asked:
				level === 1
					? [one]
					: level === 2
						? ['diameter', 'length']
						: ['head', 'alloy', 'diameter', 'length'],
			cautions: []
		};
	},
	figure: ({ number }) => seam(number),
	effect: sized
});

/** A lap seam from above, the rivet called out by its number. */
function seam(number: string): Drawing {
	const rivets = Array.from({ length: 7 }, (_, i) => 24 + i * 36);
	const shapes: Shape[] = [
		rectangle(0, 46, 264, 66, 'metal-b'),
		rectangle(0, 0, 264, 78, 'metal-a'),
		segment(0, 46, 264, 46, 'hidden'),
		segment(-8, 62, 272, 62, 'centre'),
		...rivets.map((x) => circle(x, 62, 8, 'rivet')),
		...leader(rivets[5] ?? 0, 53, 236, -18, number)
	];
	return {
		title: `A lap seam from above; a line from one of its rivets leads to the number ${number}.`,
		shapes
	};
}

interface Size {
	readonly D: number;
	readonly length: number;
}

/** The rivet with one size as answered and the other as the number has it. */
function sized(input: EffectInput<typeof rivetNumberReading>, say: Say): Effect | null {
	const { right, key, entered } = input;
	if ((key !== 'diameter' && key !== 'length') || typeof entered !== 'number') return null;
	const wanted = { D: Number(right.diameter), length: Number(right.length) };
	const answered = key === 'diameter' ? { ...wanted, D: entered } : { ...wanted, length: entered };
	const scale = rivetScale([sizeDrawn(answered), wanted]);
	const outcome = (size: Size): Outcome => {
		const notes = { D: say('diameter', size.D), length: say('length', size.length) };
		const says = `A rivet ${notes.D} thick and ${notes.length} long.`;
		const head = right.head === 'countersunk' ? 'countersunk' : 'universal';
		const letters = lettersOf(String(right.alloy));
		const shown = { ...sizeDrawn(size), head, letters } as const;
		return { drawing: { title: says, shapes: rivetDrawing(shown, notes, scale) }, says };
	};
	return { entered: outcome(answered), right: outcome(wanted) };
}

/** Sizes that no rivet has are drawn cut down, or as a thin stub. */
function sizeDrawn({ D, length }: Size): Size {
	return {
		D: Math.min(Math.max(D, 0.01), 0.75),
		length: Math.min(Math.max(length, 0.02), 2.5)
	};
}
