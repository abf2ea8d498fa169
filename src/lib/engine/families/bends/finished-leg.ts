import { type Drawing, type Shape, text, widthOf } from '../../figures/drawing.ts';
import { alignedDimension } from '../../figures/parts/aligned-dimension.ts';
import { along, metal, type Section, section } from '../../figures/parts/bent.ts';
import {
	angleFromFlat,
	legDimension,
	moldLines,
	note,
	tangentLines
} from '../../figures/parts/bent-notes.ts';
import { boundsOf } from '../../figures/to-svg.ts';
import { sightLine } from '../../methods/sight-line.ts';
import { inverseOf } from '../../solver/inverse.ts';
import { sheetFor } from './parts/sheet-for.ts';
import { openedBend } from './parts/opened-bend.ts';
import { betweenLegs, kRows, material } from './parts/told-rows.ts';
import type { Values } from '../../solver/compiled.ts';
import { family, type Say } from '../family.ts';
import type { Level } from '../level.ts';
import type { Random } from '../random.ts';
import { across, both, down } from '../../figures/size.ts';

const stories = [
	'A strip left over from a rib already has its bend tangent line drawn on.',
	'The shift before laid out the blank of a clip; the drawing is not at hand.',
	'A blank for a door stiffener lies in the rack, marked with one tangent line.',
	'The flange of a new gusset must reach over a row of holes, and its flat is marked already.',
	'An instrument bracket was laid out by eye, and you check it before it is bent.',
	'A flat was marked for an angle; the fitter asks how long its leg will be.'
];

/** Past square, the mold line lies in the air beyond the metal: that is no measure of a reach. */
const upToSquare = /reach over/;

function storyFor(random: Random, angle: number): string {
	return random.pick(stories.filter((story) => angle <= 90 || !upToSquare.test(story)));
}

const mostOfLevel: Readonly<Record<Level, number>> = { 1: 90, 2: 80, 3: Infinity };

/**
 * T left out or K taken times R alone moves the line of a thin sheet less than a rule shows: a draw
 * at level 2 is about one of them, or about none. Level 3 asks for the setback, which shows them.
 */
function chiefOf(random: Random, level: Level) {
	if (level === 1) return { leg: ['moldLines', 'inside', 'noT'] };
	const leg = ['moldLines', 'legs', 'square'];
	if (level === 2) return { leg: [...leg, ...random.pick([['noT'], ['brackets'], []])] };
	return { setback: ['noT', 'brackets'], leg };
}

function told(level: Level, alloy: string, angle: number) {
	return level === 1 ? [material(alloy)] : [material(alloy), betweenLegs(angle), kRows(angle)];
}

/** Flats are longer than any setback here, so that taking it off leaves a length too. */
const hundredths = [90, 240] as const;

export const tasks = family({
	method: inverseOf(sightLine, 'leg'),
	draw(random, level) {
		const angle = level === 1 ? 90 : openedBend(random, mostOfLevel[level]);
		const story = storyFor(random, angle);
		const { alloy, T, bars } = sheetFor(random, story);
		return {
			given: {
				R: random.pick(bars),
				T,
				angle,
				tangentLine: random.int(...hundredths) / 100
			},
			story,
			question:
				level === 3
					? 'What is the setback, and how long is the leg, to the mold line, once it is bent?'
					: 'How long is the leg, to the mold line, once it is bent?',
			asked: level === 3 ? ['setback', 'leg'] : ['leg'],
			labels: { tangentLine: 'Flat, from the edge to the bend tangent line' },
			chief: chiefOf(random, level),
			told: told(level, alloy, angle),
			cautions: ['bend']
		};
	},
	figure: (given, say, like) => bentFromFlat(bendOf(given), say, like && bendOf(like))
});

interface Bend {
	readonly R: number;
	readonly T: number;
	readonly angle: number;
	/** From the edge of the leg to the bend tangent line. */
	readonly flat: number;
}

function bendOf({ R, T, angle, tangentLine }: Values): Bend {
	return { R: Number(R), T: Number(T), angle: Number(angle), flat: Number(tangentLine) };
}

/** The bent part; its flat is dimensioned, its leg only named. */
function bentFromFlat(bend: Bend, say: Say, like = bend): Drawing {
	const { R, T, angle, flat } = bend;
	const scale = Math.min(across(170) / like.flat, both(64) / (like.R + like.T));
	const part = section({ R, T, flats: [flat, down(84) / scale], bends: [angle] }, scale);
	const shapes = [
		metal(part),
		...moldLines(part),
		...part.corners.flatMap((corner) => [
			...tangentLines(corner, part.R + part.T + 6),
			...angleFromFlat(corner, say('angle', angle))
		]),
		...flatDimension(part, `flat ${say('tangentLine', flat)}`),
		...legDimension(part, 0, 62, 'leg')
	];
	const { left, right, bottom } = boundsOf(shapes);
	return {
		title: `Section through a bend of ${say('angle', angle)} from flat; the flat of one leg is given, to the bend tangent line.`,
		shapes: [
			...shapes,
			note((left + right) / 2, bottom + 20, `R ${say('R', R)} inside, T ${say('T', T)}`)
		]
	};
}

/** From the free edge of the first leg to its bend tangent line, below the leg. */
function flatDimension({ legs, T }: Section, label: string): Shape[] {
	return legs.slice(0, 1).flatMap(({ from, to, heading }) => {
		const below = heading - 90;
		const [one, other] = [along(from, below, T / 2), along(to, below, T / 2)];
		const isLong = widthOf(label) > other[0] - one[0] - 8;
		return [
			...alignedDimension(one, other, below, 24, isLong ? '' : label),
			...(isLong ? [text(one[0] - 20, one[1] + 28, label, { anchor: 'end' })] : [])
		];
	});
}
