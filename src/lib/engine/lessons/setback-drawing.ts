import type { Say } from '../families/family.ts';
import { type Drawing, path, polyline, type Shape, text, widthOf } from '../figures/drawing.ts';
import { marked } from '../figures/marked.ts';
import { bendDetail } from '../figures/parts/bend-detail.ts';
import { along, arc, type Corner, type Section } from '../figures/parts/bent.ts';
import { angleFromFlat, setbackDimension } from '../figures/parts/bent-notes.ts';
import { dimensionDown, leader } from '../figures/parts/dimension.ts';
import type { Values } from '../solver/compiled.ts';

/**
 * A bend as the lesson on setback shows it: from the centre of the bend R + T down to the outside
 * face and the setback along that to the mold line, with half of the bend angle between. This
 * triangle is where K comes from.
 *
 * @param given `R` and `T` in inches, `angle` in degrees from flat
 * @param like the givens that set the scale, where they are others
 */
export function setbackDrawing(given: Values, say: Say, like: Values = given): Drawing {
	const { R, T, angle } = bendIn(given);
	const { part, shapes } = bendDetail({
		...{ R, T, angle, labels: { T: `T ${say('T', T)}` } },
		like: bendIn(like)
	});
	const [corner] = part.corners;
	const title = `Section through a bend of ${say('angle', angle)} from flat. The setback is a leg of the shaded triangle: R + T from the centre to the outside face, the setback from there to the mold line, half the bend angle at the centre.`;
	if (!corner) return { title, shapes };
	const told = [
		...depths(part, corner, `R ${say('R', R)}`),
		...halfAngle(part, corner),
		...setbackDimension(corner),
		...angleFromFlat(corner, say('angle', angle))
	];
	const drawing = { title, shapes: [wash(corner), ...shapes, ...sides(corner), ...told] };
	return marked(drawing, ['setback']);
}

function bendIn({ R, T, angle }: Values) {
	return { R: Number(R), T: Number(T), angle: Number(angle) };
}

/** Where the outside face of the first leg begins to bend. */
function tangentPoint({ moldPoint, before, setback }: Corner) {
	return along(moldPoint, before, -setback);
}

function wash(corner: Corner): Shape {
	const corners = [corner.centre, tangentPoint(corner), corner.moldPoint];
	return path(polyline(corners, true), 'none', 'wash');
}

function sides(corner: Corner): Shape[] {
	return [
		path(polyline([corner.centre, tangentPoint(corner)]), 'centre'),
		path(polyline([corner.centre, corner.moldPoint]), 'dim')
	];
}

/** R, and R with T under it, down from the level of the centre and left of the tangent line. */
function depths({ R, T }: Section, { centre: [x, y] }: Corner, label: string): Shape[] {
	const sum = x - 24 - widthOf(label);
	return [
		...dimensionDown(y, y + R, x - 16, x, label),
		...dimensionDown(y, y + R + T, sum, x, 'R + T').map((shape) =>
			// Beside the leg, whose metal its line crosses.
			shape.kind === 'text' ? { ...shape, y: y + R / 2 + 4 } : shape
		)
	];
}

/** Half of the bend angle, between the sides that meet at the centre. */
function halfAngle({ R }: Section, { centre, turn }: Corner): Shape[] {
	const label = 'N/2';
	const half = turn / 2;
	const radius = Math.min(22, R * 0.6);
	const between = path(polyline(arc(centre, radius, -90, -90 + half)), 'dim');
	// In the triangle where it is wide enough before the metal begins, or else above the centre.
	const wide = widthOf(label) + 10;
	const down = Math.max(radius + 13, wide / Math.tan((half * Math.PI) / 180) + 8);
	const [x, y] = centre;
	if (Math.hypot(wide, down) < R) return [between, text(x + 5, y + down, label)];
	const [toX, toY] = along(centre, -90 + half / 2, radius);
	return [between, ...leader(toX, toY, x - 10, y - 14, label)];
}
