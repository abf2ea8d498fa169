import type { Drawing } from '../../figures/drawing.ts';
import { rivetDrawing, rivetScale } from '../../figures/parts/rivet-drawing.ts';
import type { HeadShape } from '../../figures/parts/rivet.ts';
import { rivetNumber } from '../../methods/rivet-number.ts';
import { TradeError } from '../../solver/trade-function.ts';
import { lettersOf, rivetNumberParts } from '../../trade/rivet-code.ts';
import { family, type Outcome, type Say } from '../family.ts';
import { type SolidRivet, solidRivet } from './parts/solid-rivets.ts';

const stories: readonly string[] = [
	'You fill in the parts list of a skin repair before the stores close.',
	'A drawer of the rivet cabinet has lost its label, and you write a new one.',
	'The work card names head, alloy and size; stores wants the rivet number.',
	'You measured a rivet from the kit and order a box more of the same.',
	'A repair sketch needs the rivet number beside the seam.'
];

export const tasks = family({
	method: rivetNumber,
	draw(random, level) {
		const { head, alloy, diameterDash, lengthDash } = solidRivet(random, level);
		return {
			given: { head, alloy, D: diameterDash / 32, length: lengthDash / 16 },
			story: random.pick(stories),
			question: 'What is the number of this rivet?',
			asked: ['number'],
			basis: 'Numbers begin with MS20, then head, alloy letters and the two dash numbers.',
			cautions: []
		};
	},
	figure: ({ head, alloy, D, length }, say) =>
		drawn(
			{ head, alloy, diameterDash: D * 32, lengthDash: length * 16 },
			rivetScale([{ D, length }]),
			say
		),
	effect: ({ right, key, entered }, say) => {
		const [wrong, fetched] = [rivetCalled(entered), rivetCalled(right.number)];
		if (key !== 'number' || !wrong || !fetched) return null;
		const scale = rivetScale([sizeDrawn(wrong), sizeDrawn(fetched)]);
		return {
			entered: handedOut(String(entered), wrong, scale, say),
			right: handedOut(String(right.number), fetched, scale, say)
		};
	}
});

/** The rivet a number stands for; null when it stands for none in the bins. */
function rivetCalled(number: unknown): SolidRivet | null {
	try {
		return rivetNumberParts(String(number));
	} catch (error) {
		if (error instanceof TradeError) return null;
		throw error;
	}
}

/** Longer and thicker rivets are drawn cut down to this; inches. */
const most = { D: 0.75, length: 2.5 };

function sizeDrawn({ diameterDash, lengthDash }: SolidRivet) {
	return {
		D: Math.min(diameterDash / 32, most.D),
		length: Math.min(lengthDash / 16, most.length)
	};
}

function drawn(rivet: SolidRivet, scale: number, say: Say): Drawing {
	const { head, alloy, diameterDash, lengthDash } = rivet;
	const shape: HeadShape = head === 'countersunk' ? 'countersunk' : 'universal';
	return {
		title: `A rivet with a ${head} head from the side and from above, with its diameter and length.`,
		shapes: rivetDrawing(
			{ ...sizeDrawn(rivet), head: shape, letters: lettersOf(alloy) },
			{ D: say('D', diameterDash / 32), length: say('length', lengthDash / 16) },
			scale
		)
	};
}

function handedOut(number: string, rivet: SolidRivet, scale: number, say: Say): Outcome {
	const size = `${say('D', rivet.diameterDash / 32)} by ${say('length', rivet.lengthDash / 16)}`;
	return {
		drawing: drawn(rivet, scale, say),
		says: `${number} is a ${rivet.head} head rivet of ${rivet.alloy}, ${size}.`
	};
}
