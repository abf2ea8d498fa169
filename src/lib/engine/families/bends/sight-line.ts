import type { Drawing, Shape } from '../../figures/drawing.ts';
import { metal, type Section, section } from '../../figures/parts/bent.ts';
import { angleFromFlat, legDimension, moldLines, note } from '../../figures/parts/bent-notes.ts';
import { leader } from '../../figures/parts/dimension.ts';
import { noseBar } from '../../figures/parts/nose-bar.ts';
import { boundsOf } from '../../figures/to-svg.ts';
import { sightLine } from '../../methods/sight-line.ts';
import { evaluate } from '../../solver/evaluate.ts';
import type { GivenValues } from '../../solver/method.ts';
import { sheetFor } from './parts/sheet-for.ts';
import { leastClamped } from '../../trade/parts-that-exist/worked.ts';
import { bentMetal } from './parts/bent-metal.ts';
import { openedBend } from './parts/opened-bend.ts';
import { betweenLegs, kRows, material } from './parts/told-rows.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Level } from '../level.ts';
import type { Random } from '../random.ts';
import { across, both, down } from '../../figures/size.ts';

const stories = [
	'The blank for a rib clip lies ready beside the brake.',
	'You set the blank of an angle into the leaf brake for its only bend.',
	'One leg of a mounting tab goes under the nose of the brake.',
	'The last bend of a duct bracket is left to make.',
	'A stiffener blank is marked with its flats and goes to the brake.',
	'An instrument bracket gets its one bend, and the brake is free.'
];

/** Shortest and longest leg under the nose, inches. */
const [shortest, longest] = [5 / 8, 7 / 4] as const;

/**
 * Slips that a rule tells from the right line only now and then, the middle of the allowance in wide
 * bends and T in thick sheet: a draw is about one of them. All at once left little but 135° and 1/4 in.
 */
const fine = {
	1: ['middle', 'noT'],
	2: ['middle', 'noT', 'brackets'],
	3: ['middle', 'noT', 'brackets']
} as const;

function chiefOf(random: Random, level: Level) {
	const sometimes = random.pick(fine[level]);
	if (level === 1) return { sightLine: ['atTangent', 'moldLines', sometimes] };
	if (level === 2) return { sightLine: ['atTangent', 'legs', 'square', sometimes] };
	return {
		tangentLine: ['legs', 'moldLines'],
		sightLine: ['atTangent', 'legs', sometimes]
	};
}

export const tasks = family({
	method: sightLine,
	draw(random, level) {
		const story = random.pick(stories);
		const { alloy, T, bars } = sheetFor(random, story);
		const angle = level === 1 ? 90 : openedBend(random);
		const R = random.pick(bars);
		return {
			given: { leg: legFor(random, { R, T, angle }), R, T, angle },
			story,
			question:
				level === 3
					? 'Where do the bend tangent line and the sight line go, from the edge under the nose?'
					: 'Where does the sight line go, from the edge under the nose?',
			asked: level === 3 ? ['tangentLine', 'sightLine'] : ['sightLine'],
			chief: chiefOf(random, level),
			told: level === 1 ? [material(alloy)] : [material(alloy), betweenLegs(angle), kRows(angle)],
			cautions: ['bend']
		};
	},
	figure: inTheBrake,
	metal: (seen) => bentOffLine(seen)
});

/** A leg whose flat the brake can clamp, in whole sixteenths. */
function legFor(random: Random, bend: Omit<Given, 'leg'>): number {
	const setback = Number(evaluate(sightLine, { ...bend, leg: longest }).setback);
	const least = Math.max(shortest, setback + leastClamped);
	return random.int(Math.ceil(16 * least - 1e-9), 16 * longest) / 16;
}

/** The part as it leaves the brake, the nose bar still on the leg that was clamped. */
type Given = GivenValues<typeof sightLine>;

function inTheBrake(given: Given, say: Say, like = given): Drawing {
	const { leg, R, T, angle } = given;
	const flat = Number(evaluate(sightLine, given).tangentLine);
	const scale = Math.min(across(210) / like.leg, both(64) / (like.R + like.T));
	const part = section({ R, T, flats: [flat, down(84) / scale], bends: [angle] }, scale);
	const shapes = [
		metal(part),
		...moldLines(part),
		...withNose(part),
		...legDimension(part, 0, 34, `leg ${say('leg', leg)}`),
		...part.corners.flatMap((corner) => angleFromFlat(corner, say('angle', angle)))
	];
	const { left, right, bottom } = boundsOf(shapes);
	return {
		title: `A sheet bent ${say('angle', angle)} round the nose of the brake; one leg lies under the nose.`,
		shapes: [
			...shapes,
			...part.corners.flatMap(({ centre: [x, y] }) => {
				const back = x - noseLength(x);
				return leader(back + 5, y + part.R - 14, back - 18, y + part.R - 26, 'nose');
			}),
			note((left + right) / 2, bottom + 20, `R ${say('R', R)} inside, T ${say('T', T)}`)
		]
	};
}

/** How far back the nose goes from the centre of the bend. */
function noseLength(x: number): number {
	return Math.max(8, Math.min(across(100), x - 6));
}

function withNose({ corners, R }: Section): Shape[] {
	return corners.map(({ centre }) => noseBar(centre, R, noseLength(centre[0])));
}

/** The leg under the nose as it is made; what it has too much is missing in the cut-off other one. */
function bentOffLine(seen: SeenBy<typeof sightLine>): Drawing {
	const { R, T, angle } = seen.given;
	const flat = seen.rightAt('tangentLine');
	const other = Math.max(flat, 4 * (R + T));
	return bentMetal({
		wanted: { R, T, flats: [flat, other], bends: [angle] },
		got: { R, T, flats: [seen.at('made'), other - seen.at('more')], bends: [angle] },
		also: withNose,
		says: seen.says
	});
}
