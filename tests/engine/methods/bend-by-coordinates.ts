/*
 * A bend worked by coordinates, with neither tangents nor setbacks: the first leg lies along the
 * x-axis with its outside face on it, the bend goes up.
 */

interface Line {
	/** A point of the line, and the way it runs. */
	readonly at: readonly [number, number];
	readonly way: readonly [number, number];
}

/** Where two lines cross. */
function crossing(one: Line, other: Line): readonly [number, number] {
	const [ax, ay] = one.way;
	const [bx, by] = other.way;
	const [dx, dy] = [other.at[0] - one.at[0], other.at[1] - one.at[1]];
	const t = (dx * by - dy * bx) / (ax * by - ay * bx);
	return [one.at[0] + ax * t, one.at[1] + ay * t];
}

/** The line through a point at an angle, moved `left` to its left side. */
function face(through: readonly [number, number], degrees: number, left: number): Line {
	const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
	return { at: [through[0] - s * left, through[1] + c * left], way: [c, s] };
}

/**
 * Where the centre of the inside radius lies along a leg of `leg` to its mold point: it is R + T
 * from the outside faces of both legs. The bend tangent line is straight below it.
 */
export function centreAlongLeg(leg: number, R: number, T: number, angle: number): number {
	const moldPoint = [leg, 0] as const;
	const first = face(moldPoint, 0, R + T);
	const second = face(moldPoint, angle, R + T);
	return crossing(first, second)[0];
}
