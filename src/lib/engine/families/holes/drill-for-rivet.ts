import { type Drawing, rectangle, segment, type Shape, text } from '../../figures/drawing.ts';
import { dimensionAcross } from '../../figures/parts/dimension.ts';
import { drillBit } from '../../figures/parts/drill-bit.ts';
import { looseRivet } from '../../figures/parts/rivet.ts';
import { drillForRivet } from '../../methods/drill-for-rivet.ts';
import type { Method } from '../../solver/method.ts';
import { type Draw, family } from '../family.ts';
import type { Level } from '../level.ts';
import { calledOut, diameterIn, fromNumber } from '../parts/numbered.ts';
import { rivetInHole } from './parts/rivet-in-hole.ts';
import { across, both, down } from '../../figures/size.ts';

const stories = {
	light: [
		'The hole pattern for a flap skin is marked, and the drill motor is still empty.',
		'A patch is clamped over the skin, ready for the first hole.',
		'Stiffeners are clamped to a panel, and every hole still has to be drilled.',
		'A new door skin is clamped to its frame, and rivet holes go along the edge.',
		'A practice coupon gets one row of rivets from edge to edge.'
	],
	heavy: [
		'You lay out drills on the bench before the landing gear rib is drilled to its spar.',
		'A spar splice is clamped, ready for the first hole.',
		'Wing attach angles are clamped to a spar web, and every hole still has to be drilled.',
		'A gusset at a wing attach frame is marked for its rivets.',
		'A practice coupon gets two rows of rivets.'
	]
};

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
		const { story, number } = calledOut(random, stories, {
			older: level === 3,
			heads: ['universal', 'countersunk']
		});
		const start: Pick<Draw, 'method' | 'given'> =
			level === 1
				? { given: { D: diameterIn({ number }) } }
				: { method: numbered, given: { number } };
		return {
			...start,
			story,
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
	const [pilot, final, rivet] = [across(52), across(172), across(292)];
	const sheet = { width: across(344), y: 0, thickness: down(22) };
	const [small, large, r] = [both(26), both(30), both(14)];
	const [tip, long, shank] = [sheet.thickness + 16, down(96), down(46)];
	const under = (x: number, words: string) =>
		text(x, shank + 18, words, { anchor: 'middle', tone: 'ink' });
	const shapes: Shape[] = [
		rectangle(0, 0, sheet.width, sheet.thickness, 'metal-a'),
		...[
			[final, small],
			[rivet, large]
		].map(([x = 0, wide = 0]) => rectangle(x - wide / 2, 0, wide, sheet.thickness, 'paper')),
		...[pilot, final].map((x) => segment(x, -10, x, tip, 'centre')),
		...drillBit(pilot, -6, small, long),
		...drillBit(final, -6, large, long),
		...looseRivet(rivet, r, shank, 'universal'),
		under(pilot, '1 pilot'),
		under(final, '2 final')
	];
	return {
		title: 'Three steps side by side: the pilot drill, the final drill, and the rivet in the hole.',
		shapes: [...shapes, ...dimensionAcross(rivet - r, rivet + r, shank + 22, shank, D)]
	};
}
