import { decapital } from '../quantity/capital.ts';
import type { Family } from '../families/family.ts';
import { type Level, levels } from '../families/level.ts';
import { type Random, randomFrom } from '../families/random.ts';
import type { LengthUnit } from '../quantity/value.ts';
import { textAt } from '../solver/show.ts';
import type { Task } from '../tasks/task.ts';
import { deal, drawDealt } from './deal.ts';
import { type Option, optionsFor } from './options.ts';

/** One question of a rehearsal: a drawn task, and the options for one of its values. */
export interface Question {
	readonly task: Task;
	/** The step that is asked for. */
	readonly key: string;
	readonly options: readonly Option[];
	/** Place of the right one among the options. */
	readonly right: number;
}

/**
 * The questions of a written exam: every topic as often as any other, neighbours from different
 * topics, and no numbers twice. The same seed text and families give the same questions, and other
 * families beside them few others.
 */
export function composeRehearsal(
	seed: string,
	families: readonly Family[],
	count: number,
	among: readonly Level[] = levels
): Question[] {
	const places = deal({ seed, families, count, levels: among });
	return drawDealt(seed, places, (task) =>
		questionOn(task, randomFrom(`options ${task.number} ${seed}`))
	);
}

/** A question on the last value asked that has enough options; lists are not asked for. */
export function questionOn(task: Task, random: Random): Question | null {
	for (const key of [...task.drawn.asked].reverse()) {
		if (typeof task.right[key] === 'object') continue;
		const options = optionsFor(task, key, random);
		if (!options) continue;
		return { task, key, options, right: options.findIndex(({ cause }) => cause === null) };
	}
	return null;
}

/** The options as the shop writes them. */
export function optionTexts({ task, key, options }: Question, units: LengthUnit): string[] {
	return options.map(({ value }) => textAt(task.method, key, value, units));
}

/** What the question asks for: the task's own question where that asks for one value only. */
export function questionText({ task, key }: Question): string {
	if (task.drawn.asked.length === 1) return task.drawn.question;
	// What stands behind the colon of a label says how to work it.
	const [label = key] = (task.method.steps[key]?.label ?? key).split(':');
	return `Wanted: ${decapital(label)}`;
}
