import type { Drawing } from '../../figures/drawing.ts';
import { type BentSheet, metal, scaleToFit, section } from '../../figures/parts/bent.ts';
import { angleFromFlat, legDimension, moldLines, note } from '../../figures/parts/bent-notes.ts';
import { boundsOf } from '../../figures/to-svg.ts';
import { developedWidth } from '../../methods/developed-width.ts';
import { evaluate } from '../../solver/evaluate.ts';
import { isList } from '../../quantity/value.ts';
import type { GivenValues } from '../../solver/method.ts';
import { sheetFor } from './parts/sheet-for.ts';
import { bentMetal } from './parts/bent-metal.ts';
import { drawBentPart } from './parts/bent-parts.ts';
import { kRows, material } from './parts/told-rows.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import { across, down } from '../../figures/size.ts';

type Given = GivenValues<typeof developedWidth>;

export const tasks = family({
	method: developedWidth,
	draw(random, level) {
		const { story, names, legs, angles } = drawBentPart(random, level);
		const { alloy, T, bars } = sheetFor(random, story);
		return {
			given: { R: random.pick(bars), T, legs, angles },
			story,
			question:
				level === 3
					? 'What are the flats, the bend allowances and the developed width?'
					: 'How wide do you cut the blank?',
			asked: level === 3 ? ['flats', 'allowances', 'width'] : ['width'],
			labels: {
				legs: names.map((name) => `${name}, to the mold lines`),
				angles:
					angles.length === 1
						? ['Bend angle, from flat']
						: angles.map((_, i) => `Bend ${i + 1}, from flat`)
			},
			chief: chiefOf(angles),
			told: [material(alloy), ...kRowsOf(angles)],
			basis:
				'Bend allowance by the airframe handbook’s formula with 0.01743 and 0.0078 (FAA-H-8083-31B, ch. 4, p. 4-64).',
			cautions: ['shear', 'bend']
		};
	},
	figure: bentPart,
	metal: (seen) => bentUp(seen)
});

/** A channel loses two setbacks at its web; a bend that is not square has a K of its own. */
function chiefOf(angles: readonly number[]) {
	const square = angles.every((angle) => angle === 90);
	return {
		flats: ['moldLines', ...(square ? [] : ['square'])],
		allowances: ['allowSetback'],
		width: [
			'noAllowance',
			'halfSetback',
			...(angles.length > 1 ? ['once', 'oneAllowance'] : []),
			...(square ? ['sum'] : ['legs'])
		]
	};
}

/** K of a square bend is known by heart. */
function kRowsOf(angles: readonly number[]) {
	const open = angles.find((angle) => angle !== 90);
	return open === undefined ? [] : [kRows(open)];
}

/**
 * Which way each bend goes. A part with three legs is drawn as a channel when its flanges are
 * alike and as a Z when they are not; the blank is as wide either way.
 */
function turns(legs: readonly number[], angles: readonly number[]): number[] {
	const zed = legs.length === 3 && legs[0] !== legs[2];
	const ways = legs.length === 5 ? [1, -1, -1, 1] : zed ? [1, -1] : [1, 1, 1, 1];
	return angles.map((angle, i) => angle * (ways[i] ?? 1));
}

/** A channel stands with its web down; other parts start with a level leg. */
function startOf(legs: readonly number[]): number {
	return legs.length === 3 && legs[0] === legs[2] ? -90 : 0;
}

/** The flats as the method works them. */
function flatsOf(given: Given): readonly number[] {
	const { flats } = evaluate(developedWidth, given);
	return isList(flats) ? flats.filter((one) => typeof one === 'number') : [];
}

function sheetOf(given: Given): BentSheet {
	const { R, T, legs, angles } = given;
	return { R, T, flats: flatsOf(given), bends: turns(legs, angles) };
}

function bentPart(given: Given, say: Say, like = given): Drawing {
	const { R, T, legs, angles } = given;
	const start = startOf(legs);
	const scale = scaleToFit(
		sheetOf(like),
		Math.max(across(200), 120),
		down(180),
		startOf(like.legs)
	);
	const part = section(sheetOf(given), scale, start);
	const square = angles.every((angle) => angle === 90);
	const shapes = [
		metal(part),
		...moldLines(part),
		...legs.flatMap((leg, i) => legDimension(part, i, square ? 26 : 66, say('legs', leg))),
		...(square
			? []
			: part.corners.flatMap((corner, i) => angleFromFlat(corner, say('angles', angles[i] ?? 0))))
	];
	const { left, right, bottom } = boundsOf(shapes);
	return {
		title: `Section through a part with ${legs.length} legs and its mold line dimensions.`,
		shapes: [
			...shapes,
			note((left + right) / 2, bottom + 20, `R ${say('R', R)} inside, T ${say('T', T)}`)
		]
	};
}

function bentUp(seen: SeenBy<typeof developedWidth>): Drawing {
	const { R, T, legs, angles } = seen.given;
	const bends = turns(legs, angles);
	return bentMetal({
		wanted: { R, T, flats: seen.rightList('flats'), bends },
		got: { R, T, flats: seen.list('made'), bends },
		start: startOf(legs),
		says: seen.says
	});
}
