import { sayVerdict } from '$lib/engine/marking/say.ts';
import type { Verdict } from '$lib/engine/marking/verdict.ts';
import { inBothUnits } from '$lib/engine/quantity/both-units.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { outcomesOf } from './outcomes.ts';
import type { TaskWork } from './task-work.svelte.ts';

/** What is said of an entry in the open step. */
export interface Said {
	readonly typed: string;
	readonly kind: Verdict['kind'];
	readonly says: string;
	/** What the entry would do to the metal; empty where nothing is told. */
	readonly metal: string;
	/** Whether the entry has been changed since. */
	readonly earlier: boolean;
}

/** What the last check says of the open step; null where that is right or not yet entered. */
export function saidOf(work: TaskWork, units: LengthUnit): Said | null {
	const { task, last } = work;
	const key = work.stepKeys[work.at] ?? '';
	const line = work.lines[work.at];
	const verdict = last?.verdicts[key];
	if (!last || !line || !verdict || verdict.kind === 'accept') return null;
	const isRework = verdict.kind === 'rework';
	return {
		typed: last.typed[key] ?? '',
		kind: verdict.kind,
		says:
			isRework && verdict.cause.kind === 'unknown'
				? 'That is not it. Its formula helps.'
				: inBothUnits(sayVerdict(task, verdict, key), units),
		metal: isRework ? (outcomesOf(task, last, units, false, true)[0]?.outcome.says ?? '') : '',
		earlier: work.verdictOn(line) === undefined
	};
}
