import type { Drawing } from '../../figures/drawing.ts';
import { bendDetail } from '../../figures/parts/bend-detail.ts';
import {
	angleBetween,
	note,
	radiusBeyondArc,
	setbackDimension
} from '../../figures/parts/bent-notes.ts';
import { boundsOf } from '../../figures/to-svg.ts';
import { setbackFromLegs } from '../../methods/setback-from-legs.ts';
import { sheetFor } from './parts/sheet-for.ts';
import { bentMetal, bothLegsMetal } from './parts/bent-metal.ts';
import { kRows, material } from './parts/told-rows.ts';
import type { GivenValues } from '../../solver/method.ts';
import { mostBend } from '../../trade/parts-that-exist/worked.ts';
import { family, type Say, type SeenBy } from '../family.ts';

const stories = [
	'The drawing of a door hinge bracket shows the angle between its legs.',
	'You copy a cracked baffle bracket and take the angle between its legs with a protractor.',
	'A corner gusset comes with the angle measured inside, from leg to leg.',
	'An old seat bracket lies on the bench; the bevel protractor shows the angle between its legs.'
];

/** A closed bend has less than 90° between its legs, an open one more (airframe handbook, p. 4-59). */
const closedStories = [
	...stories,
	'A rib flange closes in on the skin; the angle between the two is on the drawing.',
	'The lip of a duct is turned back over a seal; the drawing gives the angle inside.'
];
const openStories = [
	...stories,
	'A gusset flange opens out to lie on a sloping floor; the drawing gives the angle inside.',
	'A fairing bracket opens wider than square; the angle is taken from leg to leg.'
];

/** Degrees between the legs of the closest bend. */
const leastBetween = 180 - mostBend;

const questions = {
	1: 'How far is this sheet bent from flat?',
	2: 'What is the setback of this bend?',
	3: 'What are the bend angle, K and the setback?'
} as const;

const asked = { 1: ['angle'], 2: ['setback'], 3: ['angle', 'K', 'setback'] } as const;

const chief = {
	1: { angle: ['legs', 'fromSquare'] },
	2: { setback: ['legs', 'fromSquare', 'noT'] },
	3: { angle: ['legs', 'fromSquare'], K: ['legs'], setback: ['legs', 'noT'] }
} as const;

export const tasks = family({
	method: setbackFromLegs,
	draw(random, level) {
		const between =
			level === 3 ? random.int(leastBetween, 155) : random.int(leastBetween / 5, 31) * 5;
		const story = random.pick(between < 90 ? closedStories : openStories);
		const { alloy, T, bars } = sheetFor(random, story);
		return {
			given: { R: random.pick(bars), T, betweenLegs: between },
			story,
			question: questions[level],
			asked: asked[level],
			chief: chief[level],
			told: level === 1 ? [] : [material(alloy), kRows(between)],
			cautions: []
		};
	},
	figure: bendFromLegs,
	metal: (seen) => (seen.key === 'angle' ? legsApart(seen) : bothLegsMetal(seen, bendOf(seen)))
});

type Given = GivenValues<typeof setbackFromLegs>;

function bendFromLegs({ R, T, betweenLegs }: Given, say: Say, like?: Given): Drawing {
	const { part, shapes } = bendDetail({
		R,
		T,
		angle: 180 - betweenLegs,
		labels: { T: `T ${say('T', T)}` },
		like: like && { ...like, angle: 180 - like.betweenLegs }
	});
	const noted = [
		...shapes,
		...part.corners.flatMap((corner) => [
			...setbackDimension(corner),
			...angleBetween(part, corner, say('betweenLegs', betweenLegs))
		])
	];
	const { left, right, bottom } = boundsOf(noted);
	const radius = `R ${say('R', R)}`;
	const [corner] = part.corners;
	const led = corner ? radiusBeyondArc(part, corner, radius) : null;
	return {
		title: `Section through a bend with ${say('betweenLegs', betweenLegs)} between its legs; the setback is marked.`,
		shapes: [...noted, ...(led ?? [note((left + right) / 2, bottom + 20, `${radius} inside`)])]
	};
}

type SeenLegs = SeenBy<typeof setbackFromLegs>;

function bendOf({ given: { R, T }, rightAt }: SeenLegs) {
	return { R, T, angle: rightAt('angle') };
}

/** Bent as far as the answer says; drawn no farther than the legs lie on each other. */
function legsApart(seen: SeenLegs): Drawing {
	const { R, T, angle } = bendOf(seen);
	const flats = [4 * (R + T), 4 * (R + T)];
	return bentMetal({
		wanted: { R, T, flats, bends: [angle] },
		got: { R, T, flats, bends: [Math.min(Math.max(seen.at('angle'), 0), 175)] },
		says: seen.says
	});
}
