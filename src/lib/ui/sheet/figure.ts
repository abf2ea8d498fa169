import { toSvg } from '$lib/engine/figures/to-svg.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Task } from '$lib/engine/tasks/task.ts';

/**
 * The drawing of a task with its values in the units that are shown, as SVG.
 *
 * @param about the step whose dimensions are marked, if any
 */
export function figureOf(
	{ family, method, drawn }: Task,
	units: LengthUnit,
	about: string | null = null
): string {
	void about;
	return toSvg(family.figure(drawn.given, (key, value) => textAt(method, key, value, units)));
}
