import { toSvg } from '$lib/engine/figures/to-svg.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Task } from '$lib/engine/tasks/task.ts';

/** The drawing of a task, and which of its givens are lettered on it. */
export interface Figure {
	readonly svg: string;
	/** Keys of givens of one value. */
	readonly lettered: ReadonlySet<string>;
}

/** The drawing of a task with its values in the units that are shown. */
export function figureOf({ family, method, drawn }: Task, units: LengthUnit): Figure {
	const said = new Map<string, string>();
	const drawing = family.figure(drawn.given, (key, value) => {
		const text = textAt(method, key, value, units);
		if (!Array.isArray(drawn.given[key])) said.set(key, text);
		return text;
	});
	const words = drawing.shapes.flatMap((one) => (one.kind === 'text' ? one.text : [])).join('\n');
	const lettered = [...said].filter(([, text]) => words.includes(text)).map(([key]) => key);
	return { svg: toSvg(drawing), lettered: new Set(lettered) };
}
