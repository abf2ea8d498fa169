import type { Drawing } from '../../figures/drawing.ts';
import { bendDetail } from '../../figures/parts/bend-detail.ts';
import { angleBetween, note, setbackDimension } from '../../figures/parts/bent-notes.ts';
import { setbackFromLegs } from '../../methods/setback-from-legs.ts';
import { bendSheets } from '../../trade/nose-bars.ts';
import { bentOutcome, setbackOutcome } from './parts/bent-outcome.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';

const stories = [
	'The drawing of a door hinge bracket shows the angle between its legs.',
	'You copy a cracked baffle bracket and take the angle between its legs with a protractor.',
	'A rib flange closes in on the skin; the angle between the two is on the drawing.',
	'A corner gusset comes with the angle measured inside, from leg to leg.',
	'An old seat bracket lies on the bench; the bevel reads the angle between its legs.'
];

const questions = {
	1: 'How far is this sheet bent from flat?',
	2: 'What is the setback of this bend?',
	3: 'What are the bend angle, K and the setback?'
} as const;

const asked = { 1: ['angle'], 2: ['setback'], 3: ['angle', 'K', 'setback'] } as const;

export const tasks = family({
	method: setbackFromLegs,
	draw(random, level) {
		const { alloy, T, bars } = random.pick(bendSheets);
		const between = level === 3 ? random.int(30, 155) : random.int(6, 31) * 5;
		return {
			given: { R: random.pick(bars), T, betweenLegs: between },
			story: random.pick(stories),
			question: questions[level],
			asked: asked[level],
			told: [['Material', alloy]],
			cautions: []
		};
	},
	figure: ({ R, T, betweenLegs }, say) => bendFromLegs(R, T, betweenLegs, say),
	effect: (input, say) =>
		typeof input.entered === 'number'
			? {
					entered: outcome(input, input.entered, say),
					right: outcome(input, Number(input.right[input.key]), say)
				}
			: null
});

function bendFromLegs(R: number, T: number, betweenLegs: number, say: Say): Drawing {
	const { part, shapes } = bendDetail({
		R,
		T,
		angle: 180 - betweenLegs,
		labels: { T: `T ${say('T', T)}` }
	});
	return {
		title: `Section through a bend with ${say('betweenLegs', betweenLegs)} between its legs; the setback is marked.`,
		shapes: [
			...shapes,
			note(20, 58, `R ${say('R', R)}, inside`),
			...part.corners.flatMap((corner) => [
				...setbackDimension(corner),
				...angleBetween(part, corner, say('betweenLegs', betweenLegs))
			])
		]
	};
}

function outcome(
	{ given: { R, T, betweenLegs }, right, key }: EffectInput<typeof setbackFromLegs>,
	entered: number,
	say: Say
): Outcome {
	const angle = Number(right.angle);
	if (key !== 'angle') {
		return setbackOutcome({ R, T, angle, right: Number(right.setback), key, entered }, say);
	}
	const flats = [4 * (R + T), 4 * (R + T)];
	const bent = Math.min(Math.max(entered, 0), 175);
	return bentOutcome({
		wanted: { R, T, flats, bends: [angle] },
		got: { R, T, flats, bends: [bent] },
		says:
			entered === bent
				? `Bent ${say('angle', entered)} from flat, the legs stand ${say('betweenLegs', 180 - bent)} apart; ${say('betweenLegs', betweenLegs)} is wanted.`
				: `A sheet cannot be bent ${say('angle', entered)} from flat; the legs meet before that.`
	});
}
