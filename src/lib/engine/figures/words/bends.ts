import { circle, path, polyline, rectangle, segment, type Shape, text } from '../drawing.ts';
import { alignedDimension } from '../parts/aligned-dimension.ts';
import { along, arc, metal, section } from '../parts/bent.ts';
import {
	allowanceArc,
	angleFromFlat,
	insideRadius,
	legDimension,
	moldLines,
	setbackDimension,
	tangentLines
} from '../parts/bent-notes.ts';
import { dimensionAcross, dimensionDown } from '../parts/dimension.ts';
import { noseBar } from '../parts/nose-bar.ts';

/* A square bend, drawn once, with what each word names marked on it. */

const part = section({ R: 34, T: 16, flats: [96, 60], bends: [90] }, 1);
const corner = part.corners[0];
const bend: readonly Shape[] = [metal(part)];

function marked(...shapes: (readonly Shape[])[]): Shape[] {
	return [...bend, ...shapes.flat()];
}

/** What stands on the corner of the bend. */
function atCorner(draw: (at: NonNullable<typeof corner>) => readonly Shape[]): readonly Shape[] {
	return corner ? draw(corner) : [];
}

function dot([x, y]: readonly [number, number]): Shape {
	return circle(x, y, 4, 'dye', 'none');
}

const flats = part.legs.slice(0, 1).flatMap(({ from, to, heading }) => {
	const under = heading - 90;
	return alignedDimension(along(from, under, 8), along(to, under, 8), under, 24, 'flat');
});

export const bends: Readonly<Record<string, () => Shape[]>> = {
	setback: () => marked(moldLines(part), atCorner(setbackDimension)),
	'mold line': () =>
		marked(
			moldLines(part),
			atCorner(({ moldPoint }) => [dot(moldPoint)])
		),
	'mold line dimension': () => marked(moldLines(part), legDimension(part, 0, 26, 'MLD')),
	'bend tangent line': () => marked(atCorner((at) => tangentLines(at, 66))),
	'bend allowance': () =>
		marked(atCorner((at) => [...tangentLines(at, 56), ...allowanceArc(part, at, 'BA')])),
	'neutral line': () =>
		marked(
			atCorner(({ centre, before, turn }) => [
				path(polyline(arc(centre, 34 + 7, before - 90, before - 90 + turn)), 'centre')
			])
		),
	'bend angle': () =>
		marked(
			moldLines(part),
			atCorner((at) => angleFromFlat(at, '90°'))
		),
	flat: () =>
		marked(
			atCorner((at) => tangentLines(at, 56)),
			flats
		),
	leg: () => marked(moldLines(part), legDimension(part, 0, 26, 'leg')),
	flange: () => marked(moldLines(part), legDimension(part, 1, 26, 'flange')),
	'inside radius': () => marked(atCorner((at) => insideRadius(part, at, 'R'))),
	K: () =>
		marked(
			moldLines(part),
			atCorner(({ centre, moldPoint, before }) => [
				path(polyline([centre, moldPoint], false), 'dim'),
				path(polyline([centre, along(centre, before - 90, 50)]), 'dim'),
				text(centre[0] - 4, centre[1] - 6, 'N ÷ 2', { anchor: 'end' })
			])
		),
	'nose bar': () => marked(atCorner(({ centre }) => [noseBar(centre, 34, 70)])),
	'sight line': () =>
		marked(
			atCorner(({ centre }) => [
				noseBar(centre, 34, 70),
				segment(centre[0] + 34, centre[1] - 20, centre[0] + 34, centre[1] + 66, 'dim'),
				...dimensionAcross(centre[0], centre[0] + 34, centre[1] + 66, centre[1] + 50, 'R')
			])
		),
	'square bend': () => marked(atCorner((at) => angleFromFlat(at, '90°'))),
	thickness: () => marked(dimensionDown(-8, 8, -24, 0, 'T')),
	'developed width': () => [
		rectangle(0, 0, 190, 44, 'metal-a'),
		segment(76, -4, 76, 48, 'centre'),
		segment(114, -4, 114, 48, 'centre'),
		...dimensionAcross(0, 190, 70, 44, 'developed width')
	],
	grain: () => [
		rectangle(0, 0, 160, 80, 'metal-a'),
		...[20, 40, 60].map((y) => segment(10, y, 150, y, 'thin')),
		segment(80, -8, 80, 88, 'centre'),
		text(80, 104, 'bend line across the grain', { anchor: 'middle' })
	],
	brake: () => marked(atCorner(({ centre }) => [noseBar(centre, 34, 70)]))
};
