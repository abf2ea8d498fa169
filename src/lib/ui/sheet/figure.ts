import type { Drawing } from '$lib/engine/figures/drawing.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Task } from '$lib/engine/tasks/task.ts';

/** The drawing of a task, and which of its givens are lettered on it. */
export interface Figure {
	readonly draw: () => Drawing;
	/** Keys of givens of one value. */
	readonly lettered: ReadonlySet<string>;
}

/** The drawing of a task with its values in the units that are shown. */
export function figureOf(task: Task, units: LengthUnit): Figure {
	const { drawing, said } = drawnWith(task, units);
	const words = drawing.shapes.flatMap((one) => (one.kind === 'text' ? one.text : [])).join('\n');
	const lettered = [...said].flatMap(([key, text]) =>
		!Array.isArray(task.drawn.given[key]) && words.includes(text) ? key : []
	);
	return { draw: () => drawnWith(task, units).drawing, lettered: new Set(lettered) };
}

/** The drawing, and what was lettered for each key: of a list, its last member. */
export function drawnWith({ family, method, drawn }: Task, units: LengthUnit) {
	const said = new Map<string, string>();
	const drawing = family.figure(drawn.given, (key, value) => {
		const text = textAt(method, key, value, units);
		said.set(key, text);
		return text;
	});
	return { drawing, said };
}
