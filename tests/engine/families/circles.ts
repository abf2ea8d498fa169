import type { Outcome } from '../../../src/lib/engine/families/family.ts';
import type { Line } from '../../../src/lib/engine/figures/drawing.ts';

/** A hole or head as it is drawn, in drawing units. */
interface Circle {
	readonly x: number;
	readonly radius: number;
	readonly line: Line;
}

/** The circles in an outcome's drawing, in the order they are drawn. */
export function circlesIn(outcome: Outcome | null): Circle[] {
	return (outcome?.drawing.shapes ?? []).flatMap((shape) => {
		if (shape.kind !== 'path') return [];
		const found = /^M(\S+) \S+A(\S+) \2 0 1 0/.exec(shape.d);
		if (!found) return [];
		const [left, radius] = [Number(found[1]), Number(found[2])];
		return [{ x: left + radius, radius, line: shape.line }];
	});
}
