import { randomFrom } from '../families/random.ts';
import type { TaskSet } from './set.ts';
import { shuffled } from './shuffled.ts';

/** What stands in the order of the set, in the order of one student's sheet. */
export function inOwnOrder<T>(
	{ order }: Pick<TaskSet, 'order'>,
	hash: string,
	code: string,
	tasks: readonly T[]
): readonly T[] {
	if (order === 'fixed') return tasks;
	const random = randomFrom(`order ${hash} ${code}`);
	return shuffled(tasks, (limit) => random.int(0, limit - 1));
}
