import type { TaskMark } from '$lib/engine/sets/collect.ts';
import { wasHelped } from '$lib/engine/sets/task-figures.ts';
import { listed } from '../listed.ts';
import type { StepState } from '$lib/engine/sets/step-marks.ts';

/** What a step's segment says. */
export const stateWords: Readonly<Record<StepState['state'], string>> = {
	right: 'right',
	follows: 'follows from a wrong step, counted',
	lost: 'lost',
	blank: 'left blank'
};

/** Whether nothing at all was entered in a task. */
export function isBlank({ answers }: Pick<TaskMark, 'answers'>): boolean {
	return answers.every(({ verdict }) => verdict === 'blank');
}

/** A cell of the table in words: `2 of 3, step 1 lost`. */
export function cellWords(mark: TaskMark): string {
	const { marks, of, steps, changed, answers } = mark;
	if (isBlank({ answers }) && !changed) return 'left blank';
	const lost = steps.flatMap(({ state }, i) => (state === 'lost' ? String(i + 1) : []));
	const words = lost.length === 0 ? '' : `, step ${listed(lost)} lost`;
	const helped = wasHelped(mark) ? ', after help' : '';
	return `${marks} of ${of}${words}${helped}${changed ? ', changed by hand' : ''}`;
}
