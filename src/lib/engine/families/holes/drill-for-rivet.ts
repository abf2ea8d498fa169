import { type Drawing, rectangle, segment, type Shape, text } from '../../figures/drawing.ts';
import { dimensionAcross } from '../../figures/parts/dimension.ts';
import { drillBit } from '../../figures/parts/drill-bit.ts';
import { looseRivet } from '../../figures/parts/rivet.ts';
import { drillForRivet } from '../../methods/drill-for-rivet.ts';
import type { Method } from '../../solver/method.ts';
import { type Draw, family } from '../family.ts';
import type { Level } from '../level.ts';
import { diameterIn, fromNumber, someNumber } from '../parts/numbered.ts';
import { rivetInHole } from './parts/rivet-in-hole.ts';

const stories: readonly string[] = [
	'The hole pattern for a flap skin is marked, and the drill motor is still empty.',
	'You lay out drills on the bench before the new rib is drilled to its spar.',
	'A patch is clamped over the skin, ready for the first hole.',
	'Stiffeners are pinned to a panel, and every hole still has to be drilled.',
	'The door skin is off its frame, and new rivet holes go along the edge.',
	'A practice coupon gets one row of rivets from edge to edge.'
];

const questions: Readonly<Record<Level, string>> = {
	1: 'Which drill makes the final hole?',
	2: 'Which drill makes the pilot hole, and which the final one?',
	3: 'Which drills do you take, and how much clearance does the final one leave?'
};

const method: Method = drillForRivet;
const numbered = fromNumber(drillForRivet);

export const tasks = family({
	method,
	draw(random, level) {
		const number = someNumber(random, { older: level === 3 });
		const start: Pick<Draw, 'method' | 'given'> =
			level === 1
				? { given: { D: diameterIn({ number }) } }
				: { method: numbered, given: { number } };
		return {
			...start,
			story: random.pick(stories),
			question: questions[level],
			asked: { 1: ['final'], 2: ['pilot', 'final'], 3: ['pilot', 'final', 'clearance'] }[level],
			chief: {
				pilot: ['finalForPilot', 'removalForPilot'],
				final: ['nominal', 'rowAbove', 'rowBelow', 'sixtyFourthOver'],
				clearance: ['oneSide', 'bothSides']
			},
			told: level === 1 ? [['Rivet', number]] : [],
			basis: 'Drills by heart, as Fig. 4-90 of the airframe handbook lists them.',
			cautions: ['drill']
		};
	},
	figure: (given, say) =>
		threeSteps(typeof given.number === 'string' ? 'by number' : say('D', Number(given.D))),
	metal: (seen) => rivetInHole(seen, diameterIn(seen.given))
});

/** Pilot, final hole and rivet side by side; not to scale. */
function threeSteps(D: string): Drawing {
	const [pilot, final, rivet] = [52, 172, 292];
	const sheet = { width: 344, y: 0, thickness: 22 };
	const under = (x: number, words: string) => text(x, 64, words, { anchor: 'middle', tone: 'ink' });
	const shapes: Shape[] = [
		rectangle(0, 0, sheet.width, sheet.thickness, 'metal-a'),
		...[
			[final, 26],
			[rivet, 30]
		].map(([x = 0, wide = 0]) => rectangle(x - wide / 2, 0, wide, sheet.thickness, 'paper')),
		...[pilot, final].map((x) => segment(x, -10, x, 38, 'centre')),
		...drillBit(pilot, -6, 26, 96),
		...drillBit(final, -6, 30, 96),
		...looseRivet(rivet, 14, 46, 'universal'),
		under(pilot, '1 pilot'),
		under(final, '2 final')
	];
	return {
		title: 'Three steps side by side: the pilot drill, the final drill, and the rivet in the hole.',
		shapes: [...shapes, ...dimensionAcross(rivet - 14, rivet + 14, 60, 46, D)]
	};
}
