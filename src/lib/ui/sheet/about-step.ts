import type { Drawing } from '$lib/engine/figures/drawing.ts';
import { marked } from '$lib/engine/figures/marked.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { compiledOf } from '$lib/engine/solver/compiled.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import { drawnWith } from './figure.ts';

/**
 * What draws a task with the dimension of a step marked, or those that it is worked from
 * where it has none of its own.
 */
export function figureAbout(task: Task, units: LengthUnit, step: string): () => Drawing {
	return () => {
		const { drawing, said } = drawnWith(task, units);
		return aboutStep(task, drawing, step, said);
	};
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
