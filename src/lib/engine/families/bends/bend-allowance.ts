import type { Drawing } from '../../figures/drawing.ts';
import { bendDetail } from '../../figures/parts/bend-detail.ts';
import { allowanceArc, angleFromFlat, tangentLines } from '../../figures/parts/bent-notes.ts';
import { bendAllowance } from '../../methods/bend-allowance.ts';
import { bendSheets } from '../../trade/nose-bars.ts';
import { bentOutcome, offBy } from './parts/bent-outcome.ts';
import { type EffectInput, family, type Outcome, type Say } from '../family.ts';

const stories = [
	'The blank for a pulley bracket is laid out on the flat before it is bent.',
	'A replacement angle for a door frame goes into the brake today.',
	'You make a flat pattern for the lip of an instrument cover.',
	'A stiffener for an elevator skin is cut to width before it is bent.',
	'The side of an oil cooler duct is bent from one piece of sheet.'
];

export const tasks = family({
	method: bendAllowance,
	draw(random, level) {
		const { alloy, T, bars } = random.pick(bendSheets);
		const open = [30, 45, 60, 75, 105, 120, 135];
		return {
			given: {
				R: random.pick(bars),
				T,
				angle: level === 1 ? 90 : level === 2 ? random.pick(open) : random.int(20, 160)
			},
			story: random.pick(stories),
			question:
				level === 3
					? 'What is each term of the bend allowance, and what is their sum?'
					: 'How much metal does this bend take?',
			asked: level === 3 ? ['forRadius', 'forThickness', 'allowance'] : ['allowance'],
			told: [['Material', alloy]],
			basis:
				'The airframe handbook’s formula with 0.01743 and 0.0078 (FAA-H-8083-31B, ch. 4, p. 4-64).',
			cautions: []
		};
	},
	figure: ({ R, T, angle }, say) => bendWithAllowance(R, T, angle, say),
	effect: (input, say) =>
		input.key === 'allowance' && typeof input.entered === 'number'
			? {
					entered: outcome(input, input.entered, say),
					right: outcome(input, Number(input.right.allowance), say)
				}
			: null
});

function bendWithAllowance(R: number, T: number, angle: number, say: Say): Drawing {
	const { part, shapes } = bendDetail({
		R,
		T,
		angle,
		labels: { R: `R ${say('R', R)}`, T: `T ${say('T', T)}` }
	});
	return {
		title: `Section through a bend of ${say('angle', angle)} from flat; the metal between its tangent lines is the bend allowance.`,
		shapes: [
			...shapes,
			...part.corners.flatMap((corner) => [
				...tangentLines(corner, part.R + part.T),
				...allowanceArc(part, corner, 'bend allowance'),
				...angleFromFlat(corner, say('angle', angle))
			])
		]
	};
}

/** What the blank has too much or too little in the bend ends up in the leg that is left free. */
function outcome(
	{ given: { R, T, angle }, right }: EffectInput<typeof bendAllowance>,
	entered: number,
	say: Say
): Outcome {
	const flat = 3.5 * (R + T);
	const more = entered - Number(right.allowance);
	const off = offBy(more, say);
	const named = say('allowance', entered);
	return bentOutcome({
		wanted: { R, T, flats: [flat, flat], bends: [angle] },
		got: { R, T, flats: [flat, flat + more], bends: [angle] },
		says: off
			? `With ${named} allowed for the bend, the last leg comes out ${off}.`
			: `With ${named} allowed for the bend, the last leg comes out to its mold line.`
	});
}
