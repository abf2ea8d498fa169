import type { Outcome } from '$lib/engine/families/family.ts';
import type { Drawing } from '$lib/engine/figures/drawing.ts';
import type { Kind } from '$lib/engine/quantity/kinds/kind.ts';
import { count } from '$lib/engine/quantity/kinds.ts';
import { effectOf } from '$lib/engine/tasks/effect.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import type { Verdict } from '$lib/engine/marking/verdict.ts';
import { kindAt } from '$lib/engine/solver/kind-at.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Check } from './task-work.svelte.ts';

/**
 * What the checked answers do to the metal: the first one that is off, or else the last that
 * can be drawn, for the others lead to it. The right part is shown beside it once the answer may be known.
 *
 * @param first whether it is the first try, at which no sentence may give a right value away
 */
export function outcomesOf(
	task: Task,
	check: Pick<Check, 'entries' | 'verdicts'>,
	units: LengthUnit,
	known: boolean,
	first: boolean
): { heading: string; outcome: Outcome }[] {
	const keys = Object.keys(check.verdicts);
	const off = keys.filter((key) => check.verdicts[key]?.kind !== 'accept');
	const carried = keys.filter((key) => isCarried(check.verdicts[key]));
	for (const key of off.length > 0 ? [...off, ...carried] : keys.toReversed()) {
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

function isCarried(verdict: Verdict | undefined): boolean {
	return verdict?.kind === 'accept' && verdict.carried;
}

/**
 * How the wanted part looks beside what was made by the first answer that is off, without
 * lettering and sizes; null where its look alone would tell the answer, or nothing is drawn.
 */
export function lookOf(task: Task, check: Check, units: LengthUnit): (() => Drawing) | null {
	const off = Object.keys(check.verdicts).filter((key) => {
		const verdict = check.verdicts[key];
		return verdict?.kind === 'rework' || isCarried(verdict);
	});
	for (const key of off) {
		const entry = check.entries[key];
		const kind = kindAt(task.method, key);
		if (!entry || entry.times !== undefined || tellsByLook(kind)) continue;
		const entered = kind.toValue(entry, task.right[key]);
		const effect = entered === null ? null : effectOf(task, key, entered, units);
		if (!effect) continue;
		return () => {
			const { shapes } = effect.right.draw();
			const bare = shapes.filter((one) => one.kind === 'path' && one.line !== 'dim');
			return { title: 'The part as it is wanted', shapes: bare };
		};
	}
	return null;
}

/** Whether the drawing of a value is the value: what is counted, placed, or one of a few. */
function tellsByLook(kind: Kind): boolean {
	return kind === count || kind.isList || kind.choices.length > 0;
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
