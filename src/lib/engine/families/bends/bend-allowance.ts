import type { Drawing } from '../../figures/drawing.ts';
import { bendDetail } from '../../figures/parts/bend-detail.ts';
import { allowanceArc, angleFromFlat, tangentLines } from '../../figures/parts/bent-notes.ts';
import { bendAllowance } from '../../methods/bend-allowance.ts';
import { sheetFor } from './parts/sheet-for.ts';
import { bentMetal } from './parts/bent-metal.ts';
import { betweenLegs, material } from './parts/told-rows.ts';
import { mostBend } from '../../trade/parts-that-exist/worked.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Level } from '../level.ts';
import type { GivenValues } from '../../solver/method.ts';
import type { Random } from '../random.ts';

const stories = [
	'The blank for a pulley bracket is laid out on the flat before it is bent.',
	'A new angle for a door frame goes into the brake today.',
	'You make a flat pattern for the lip of an instrument cover.',
	'A stiffener for a door skin is cut to width before it is bent.',
	'The side of an oil cooler duct is bent from one piece of sheet.',
	'The flat pattern of a hinge bracket is drawn before the sheet is cut.'
];

const chief = {
	1: { allowance: ['noT', 'setback'] },
	2: { allowance: ['legs', 'square', 'noT'] },
	3: { forRadius: ['diameter'], forThickness: ['halfT'], allowance: ['legs', 'noT'] }
} as const;

function angleFor(random: Random, level: Level): number {
	if (level === 1) return 90;
	return level === 2 ? random.pick([30, 45, 60, 75, 105, 120, 135]) : random.int(20, mostBend);
}

export const tasks = family({
	method: bendAllowance,
	draw(random, level) {
		const story = random.pick(stories);
		const { alloy, T, bars } = sheetFor(random, story);
		const angle = angleFor(random, level);
		return {
			given: { R: random.pick(bars), T, angle },
			story,
			question:
				level === 3
					? 'What is each term of the bend allowance, times N, and what is their sum?'
					: 'How much metal does this bend take?',
			asked: level === 3 ? ['forRadius', 'forThickness', 'allowance'] : ['allowance'],
			chief: chief[level],
			told: level === 1 ? [material(alloy)] : [material(alloy), betweenLegs(angle)],
			basis:
				'The airframe handbook’s formula with 0.01743 and 0.0078 (FAA-H-8083-31B, ch. 4, p. 4-64).',
			cautions: []
		};
	},
	figure: bendWithAllowance,
	metal: (seen) => lastLegMetal(seen)
});

type Given = GivenValues<typeof bendAllowance>;

function bendWithAllowance({ R, T, angle }: Given, say: Say, like?: Given): Drawing {
	const { part, shapes } = bendDetail({
		R,
		T,
		angle,
		labels: { R: `R ${say('R', R)}`, T: `T ${say('T', T)}` },
		like
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

/** Two cut-off legs, of which the last is as much too long as the method says. */
function lastLegMetal({ given: { R, T, angle }, at, says }: SeenBy<typeof bendAllowance>): Drawing {
	const flat = 3.5 * (R + T);
	return bentMetal({
		wanted: { R, T, flats: [flat, flat], bends: [angle] },
		got: { R, T, flats: [flat, flat + at('more')], bends: [angle] },
		says
	});
}
