import type { Drawing } from '$lib/engine/figures/drawing.ts';
import { marked } from '$lib/engine/figures/marked.ts';
import { toSvg } from '$lib/engine/figures/to-svg.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { compiledOf } from '$lib/engine/solver/compiled.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Task } from '$lib/engine/tasks/task.ts';

/** The drawing of a task, and which of its givens are lettered on it. */
export interface Figure {
	readonly svg: string;
	/** Keys of givens of one value. */
	readonly lettered: ReadonlySet<string>;
}

/**
 * The drawing of a task with its values in the units that are shown.
 *
 * @param about the step whose dimension is marked, or what it is worked from where it has none
 */
export function figureOf(task: Task, units: LengthUnit, about: string | null = null): Figure {
	const { family, method, drawn } = task;
	const said = new Map<string, string>();
	const drawing = family.figure(drawn.given, (key, value) => {
		const text = textAt(method, key, value, units);
		said.set(key, text);
		return text;
	});
	const words = drawing.shapes.flatMap((one) => (one.kind === 'text' ? one.text : [])).join('\n');
	const lettered = [...said].flatMap(([key, text]) =>
		!Array.isArray(drawn.given[key]) && words.includes(text) ? key : []
	);
	const shown = about === null ? drawing : aboutStep(task, drawing, about, said);
	return { svg: toSvg(shown), lettered: new Set(lettered) };
}

function aboutStep(
	{ method }: Task,
	drawing: Drawing,
	step: string,
	said: ReadonlyMap<string, string>
): Drawing {
	const own = (key: string) => {
		const { label = key, symbol = null } = method.steps[key] ?? method.given[key] ?? {};
		return [label.replace(/[:,].*/, ''), symbol ?? key];
	};
	const first = marked(drawing, own(step));
	if (first !== drawing) return first;
	const needs = compiledOf(method).steps[step]?.needs ?? [];
	return marked(
		drawing,
		needs.flatMap((key) => said.get(key) ?? own(key))
	);
}
