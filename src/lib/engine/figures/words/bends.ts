import { circle, path, polyline, rectangle, segment, type Shape, text } from '../drawing.ts';
import { alignedDimension } from '../parts/aligned-dimension.ts';
import { along, arc, type Corner, metal, type Section, section } from '../parts/bent.ts';
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
import { both as u } from '../size.ts';

/* A square bend with what each word names marked on it. */

const bent = () => section({ R: 34, T: 16, flats: [96, 60], bends: [90] }, u(1));

/** The bend, and what is drawn on it. */
function marked(...marks: ((part: Section) => readonly Shape[])[]): Shape[] {
	const part = bent();
	return [metal(part), ...marks.flatMap((mark) => mark(part))];
}

/** What stands on the corner of the bend. */
function atCorner(draw: (at: Corner, part: Section) => readonly Shape[]) {
	return (part: Section) => part.corners.slice(0, 1).flatMap((at) => draw(at, part));
}

function dot([x, y]: readonly [number, number]): Shape {
	return circle(x, y, 4, 'dye', 'none');
}

function flats(part: Section): Shape[] {
	return part.legs.slice(0, 1).flatMap(({ from, to, heading }) => {
		const under = heading - 90;
		return alignedDimension(along(from, under, 8), along(to, under, 8), under, 24, 'flat');
	});
}

const bar = atCorner(({ centre }) => [noseBar(centre, u(34), u(70))]);

export const bends: Readonly<Record<string, () => Shape[]>> = {
	setback: () => marked(moldLines, atCorner(setbackDimension)),
	'mold line': () =>
		marked(
			moldLines,
			atCorner(({ moldPoint }) => [dot(moldPoint)])
		),
	'mold line dimension': () => marked(moldLines, (part) => legDimension(part, 0, 26, 'MLD')),
	'bend tangent line': () => marked(atCorner((at) => tangentLines(at, u(66)))),
	'bend allowance': () =>
		marked(atCorner((at, part) => [...tangentLines(at, u(56)), ...allowanceArc(part, at, 'BA')])),
	'neutral line': () =>
		marked(
			atCorner(({ centre, before, turn }) => [
				path(polyline(arc(centre, u(34 + 7), before - 90, before - 90 + turn)), 'centre')
			])
		),
	'bend angle': () =>
		marked(
			moldLines,
			atCorner((at) => angleFromFlat(at, '90°'))
		),
	flat: () =>
		marked(
			atCorner((at) => tangentLines(at, u(56))),
			flats
		),
	leg: () => marked(moldLines, (part) => legDimension(part, 0, 26, 'leg')),
	flange: () => marked(moldLines, (part) => legDimension(part, 1, 26, 'flange')),
	'inside radius': () => marked(atCorner((at, part) => insideRadius(part, at, 'R'))),
	K: () =>
		marked(
			moldLines,
			atCorner(({ centre, moldPoint, before }) => [
				path(polyline([centre, moldPoint], false), 'dim'),
				path(polyline([centre, along(centre, before - 90, u(50))]), 'dim'),
				text(centre[0] - 4, centre[1] - 6, 'N ÷ 2', { anchor: 'end' })
			])
		),
	'nose bar': () => marked(bar),
	'sight line': () =>
		marked(
			bar,
			atCorner(({ centre: [x, y] }) => [
				segment(x + u(34), y - u(20), x + u(34), y + u(66), 'dim'),
				...dimensionAcross(x, x + u(34), y + u(50) + 16, y + u(50), 'R')
			])
		),
	'square bend': () => marked(atCorner((at) => angleFromFlat(at, '90°'))),
	thickness: () => marked(() => dimensionDown(-u(8), u(8), -24, 0, 'T')),
	'developed width': () => [
		rectangle(0, 0, u(190), u(44), 'metal-a'),
		segment(u(76), -4, u(76), u(44) + 4, 'centre'),
		segment(u(114), -4, u(114), u(44) + 4, 'centre'),
		...dimensionAcross(0, u(190), u(44) + 24, u(44), 'width')
	],
	grain: () => [
		rectangle(0, 0, u(160), u(80), 'metal-a'),
		...[20, 40, 60].map((y) => segment(u(10), u(y), u(150), u(y), 'thin')),
		segment(u(80), -8, u(80), u(80) + 8, 'centre'),
		text(u(80), u(80) + 22, 'bend line', { anchor: 'middle' })
	],
	brake: () => marked(bar)
};
