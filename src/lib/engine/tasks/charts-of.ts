import { type Chart, charts } from '../trade/charts.ts';
import { stepsOf, type Task } from './task.ts';

/**
 * All charts, in the order they are wanted for a task: what its steps look up, step by step, then
 * those of its topic, then the others.
 */
export function chartsOf(task: Pick<Task, 'method' | 'drawn' | 'family'>): readonly Chart[] {
	const lookedUp = stepsOf(task).flatMap((key) => {
		const rule = task.method.steps[key]?.rule ?? '';
		return charts.filter(({ rules }) => rules.includes(rule));
	});
	const near = charts.filter(({ table }) => table.topic === task.family.topic);
	return [...new Set([...lookedUp, ...near, ...charts])];
}
