import type { Outcome } from '$lib/engine/families/family.ts';
import type { Drawing } from '$lib/engine/figures/drawing.ts';
import { count } from '$lib/engine/quantity/kinds.ts';
import { effectOf } from '$lib/engine/tasks/effect.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { kindAt } from '$lib/engine/solver/kind-at.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Check } from './task-work.svelte.ts';

/**
 * What the checked answers do to the metal: the first one that is off, or else the first that
 * can be drawn. The right part is shown beside it once the answer may be known.
 *
 * @param first whether it is the first try, at which no sentence may give a right value away
 */
export function outcomesOf(
	task: Task,
	check: Check,
	units: LengthUnit,
	known: boolean,
	first: boolean
): { heading: string; outcome: Outcome }[] {
	const keys = Object.keys(check.verdicts);
	const off = keys.filter((key) => check.verdicts[key]?.kind !== 'accept');
	for (const key of off.length > 0 ? off : keys) {
		const entry = check.entries[key];
		// A factor is no size that could be drawn.
		const isSize = entry && entry.times === undefined;
		const entered = isSize ? kindAt(task.method, key).toValue(entry, task.right[key]) : null;
		const shown = entered === null ? null : effectOf(task, key, entered, units);
		if (!shown) continue;
		if (off.length === 0) return [{ heading: 'On the metal', outcome: shown.right }];
		const silent = first && !known && tellsRight(task, shown.entered.says, units);
		const outcome = silent ? { ...shown.entered, says: '' } : shown.entered;
		const yours = { heading: 'Yours', outcome };
		return known ? [yours, { heading: 'Wanted', outcome: shown.right }] : [yours];
	}
	return [];
}

/**
 * How the wanted part looks beside what was made by the first answer that is off, without
 * lettering and sizes; null where its look alone would tell the answer, or nothing is drawn.
 */
export function lookOf(task: Task, check: Check, units: LengthUnit): Drawing | null {
	const key = Object.keys(check.verdicts).find((one) => check.verdicts[one]?.kind === 'rework');
	const entry = key === undefined ? undefined : check.entries[key];
	if (key === undefined || !entry || entry.times !== undefined) return null;
	const kind = kindAt(task.method, key);
	if (kind === count || kind.isList || kind.choices.length > 0) return null;
	const entered = kind.toValue(entry, task.right[key]);
	const drawing = entered === null ? null : effectOf(task, key, entered, units)?.right.drawing;
	if (!drawing) return null;
	const shapes = drawing.shapes.filter((one) => one.kind === 'path' && one.line !== 'dim');
	return { title: 'The part as it is wanted', shapes };
}

/** Whether a sentence tells the right value of something that is asked. */
function tellsRight({ method, drawn, right }: Task, says: string, units: LengthUnit): boolean {
	return drawn.asked.some((key) => {
		const value = right[key];
		const text = value === undefined ? '' : textAt(method, key, value, units);
		const plain = text.replace(/ \(.*\)$/, '').replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
		return plain !== '' && new RegExp(`(?<![\\d./])${plain}(?![\\d/]|\\.\\d)`).test(says);
	});
}
