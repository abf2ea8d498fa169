import type { Say } from '$lib/engine/families/family.ts';
import { toSvg } from '$lib/engine/figures/to-svg.ts';
import type { LengthUnit } from '$lib/engine/quantity/kind.ts';
import type { Method } from '$lib/engine/solver/method.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Task } from '$lib/engine/tasks/task.ts';

/** How a drawing writes the values of a method, in the units that are shown. */
export function sayIn(method: Method, units: LengthUnit): Say {
	return (key, value) => textAt(method, key, value, units);
}

/** The drawing of a task, as SVG. */
export function figureOf({ family, drawn }: Task, units: LengthUnit): string {
	return toSvg(family.figure(drawn.given, sayIn(family.method, units)));
}
