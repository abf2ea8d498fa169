import { type Drawing, segment, text } from '../../figures/drawing.ts';
import { dimensionAcross, leader } from '../../figures/parts/dimension.ts';
import { setRivet, stackSection } from '../../figures/parts/joint.ts';
import { plate, roundFeature } from '../../figures/parts/plate.ts';
import { edgeDistance } from '../../methods/edge-distance.ts';
import type { Values } from '../../solver/compiled.ts';
import { type Draw, family, type OtherDraw, type Say } from '../family.ts';
import type { Level } from '../level.ts';
import { calledOut, diameterIn, fromNumber } from '../parts/numbered.ts';
import { holeByEdge } from './parts/hole-by-edge.ts';
import { across, both, down } from '../../figures/size.ts';

type Head = 'protruding' | 'countersunk';

const stories: Readonly<Record<Head, Record<'light' | 'heavy', readonly string[]>>> = {
	protruding: {
		light: [
			'A stiffener goes along the edge of a baggage bulkhead. You draw its rivet line first.',
			'The new floor panel of a training aircraft gets one row of rivets along its front edge.',
			'A cover plate in a wheel well is riveted along all four edges.'
		],
		heavy: [
			'A gusset at the main spar is drilled from a paper pattern, and the pattern needs its rivet line.',
			'A splice plate goes onto a spar web, with one row of rivets along its edge.',
			'A landing gear rib gets an angle along its edge. You draw the rivet line first.'
		]
	},
	countersunk: {
		light: [
			'The leading edge skin of a training wing is riveted flush, close to its cut edge.',
			'A flush patch goes onto a fuselage side, and its outer row follows the edge.',
			'The door skin of a light aircraft has flush rivets all round its edge.',
			'A wing tip fairing is riveted flush to the last rib.'
		],
		heavy: [
			'The strap along a spar cap is riveted flush, and its rivet line is drawn first.',
			'The splice plate of a wing spar is riveted flush along its edge.'
		]
	}
};

const asked = {
	1: ['least'],
	2: ['least', 'greatest'],
	3: ['least', 'preferred', 'greatest']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How near the edge may the hole centres be?',
	2: 'Between which edge distances must the rivet line lie?',
	3: 'What are the minimum, the preferred and the maximum edge distance?'
};

/** The rivet is called out by its number, and its diameter is read off that. */
const byNumber = fromNumber(edgeDistance, {
	id: 'edge-distance-by-number',
	title: 'Edge distance of a rivet called out by its number'
});

const toTheCentre = 'FAA-H-8083-31B, Fig. 4-79: from the hole centre to the edge.';

const basis: Readonly<Record<Level, string>> = {
	1: toTheCentre,
	2: toTheCentre,
	3: 'FAA-H-8083-31B, Fig. 4-79: preferred is the minimum plus 1/16 in.'
};

export const tasks = family({
	method: edgeDistance,
	draw(random, level) {
		const head = random.pick(['protruding', 'countersunk'] as const);
		const { story, number } = calledOut(random, stories[head], {
			heads: [head === 'countersunk' ? 'countersunk' : 'universal']
		});
		const task = {
			story,
			question: questions[level],
			asked: asked[level],
			basis: basis[level],
			cautions: ['drill']
		} as const;
		return level === 1
			? byDiameter(task, { D: diameterIn({ number }), head }, number)
			: byItsNumber(task, { number, head });
	},
	figure: (given, say) => besideEdge(given, say),
	metal: holeByEdge
});

type Told = Pick<Draw<typeof edgeDistance>, 'story' | 'question' | 'asked' | 'basis' | 'cautions'>;

/** The diameter is given; the number of the rivet only stands there too. */
function byDiameter(task: Told, given: { D: number; head: Head }, number: string) {
	return { ...task, chief: chiefOf(given.head), given, told: [['Rivet', number] as const] };
}

function byItsNumber(task: Told, given: { number: string; head: Head }): OtherDraw {
	const chief = chiefOf(given.head);
	return {
		...task,
		method: byNumber,
		chief: { ...chief, least: [...chief.least, 'diameterIn16ths', 'lastForDiameter'] },
		given
	};
}

/** Twice the minimum is the maximum of a protruding head, so that slip is none of these. */
function chiefOf(head: Head) {
	return {
		least: [head === 'countersunk' ? 'protrudingFactor' : 'flushFactor', 'halfLeast'],
		preferred: ['nothingAdded'],
		greatest: ['pitchForGreatest']
	};
}

/** Section and plan of the edge, the rivets 3 D from it whatever is asked: not to scale. */
function besideEdge({ head, ...given }: Values, say: Say): Drawing {
	const flush = head === 'countersunk';
	const [width, unit] = [across(290), both(28)];
	const [x, planTop] = [width - 3 * unit, 2.5 * unit + 26];
	const planBottom = planTop + down(110);
	const headRadius = (flush ? 0.9 : 1) * unit;
	const y = (planTop + planBottom) / 2;
	// Beside the shank, its lettering clear of the sheets.
	const under = unit + Math.max(0.75 * unit, 12);
	return {
		title: `Edge of a sheet in section and from above, with ${head} rivet heads in a line beside it.`,
		shapes: [
			...stackSection({ layers: [0.5, 0.5], names: [], width, scale: unit }),
			...setRivet(x, 1, 2.5, unit, flush ? 'countersunk' : 'universal'),
			...plate({ left: 0, top: planTop, right: width, bottom: planBottom }, 'metal-a', ['left']),
			...roundFeature(x, y, headRadius, 'rivet'),
			segment(x, planTop - 6, x, planBottom + 6, 'centre'),
			...dimensionAcross(x, width, planBottom + 26, planBottom, ''),
			text(x - 8, planBottom + 30, 'edge distance', { anchor: 'end' }),
			...leader(x - unit / 2, under, x - unit / 2 - 22, under, rivetText(given, say)),
			text(0, planTop - 8, 'not to scale', { tone: 'soft' })
		]
	};
}

/** The rivet as it is given: by its diameter or its number. */
function rivetText({ D, number }: Values, say: Say): string {
	return D === undefined ? String(number) : `D ${say('D', D)}`;
}
