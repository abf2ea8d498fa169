import type { Outcome } from '$lib/engine/families/family.ts';
import { effectOf } from '$lib/engine/tasks/effect.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { kindAt } from '$lib/engine/solver/kind-at.ts';
import type { Check } from './task-work.svelte.ts';

/**
 * What the checked answers do to the metal: the first one that is off, or else the first that
 * can be drawn. The right part is shown beside it once the answer may be known.
 */
export function outcomesOf(
	task: Task,
	check: Check,
	units: LengthUnit,
	known: boolean
): { heading: string; outcome: Outcome }[] {
	const keys = Object.keys(check.verdicts);
	const off = keys.filter((key) => check.verdicts[key]?.kind !== 'accept');
	for (const key of off.length > 0 ? off : keys) {
		const entry = check.entries[key];
		const entered = entry ? kindAt(task.method, key).toValue(entry, task.right[key]) : null;
		const shown = entered === null ? null : effectOf(task, key, entered, units);
		if (!shown) continue;
		if (off.length === 0) return [{ heading: 'On the metal', outcome: shown.right }];
		const yours = { heading: 'Your number on the metal', outcome: shown.entered };
		return known ? [yours, { heading: 'As it should be', outcome: shown.right }] : [yours];
	}
	return [];
}
