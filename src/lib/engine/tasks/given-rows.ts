import type { LengthUnit } from '../quantity/kind.ts';
import { textAt } from '../solver/show.ts';
import type { Task } from './task.ts';

/** The givens of a task as they are told: label and value, a list one row a member. */
export function givenRows(task: Task, units: LengthUnit): (readonly [string, string])[] {
	const { method } = task;
	const { given, labels = {}, told = [] } = task.drawn;
	const rows = Object.entries(given).flatMap(([key, value]): (readonly [string, string])[] => {
		const label = labels[key] ?? method.given[key]?.label ?? key;
		if (typeof value !== 'object') {
			return [[String(label), textAt(method, key, value, units)]];
		}
		return value.map((one, i) => [
			typeof label === 'string' ? `${label} ${i + 1}` : (label[i] ?? ''),
			textAt(method, key, one, units)
		]);
	});
	return [...rows, ...told];
}
