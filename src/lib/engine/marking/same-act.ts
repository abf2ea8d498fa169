import type { Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { evaluateAsFar } from '../solver/as-far.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Task } from '../tasks/task.ts';
import { stepOfSlip } from './verdict.ts';

/**
 * Whether two slips in one step are the same act in this task, and do not only come to the same by
 * its numbers: with two layers alike, “one layer only” and “the thinnest left out”. Then they come
 * to the same with other numbers too, as long as what is alike stays alike.
 */
export function isSameAct(task: Task, one: string, other: string): boolean {
	const { method } = task;
	const step = stepOfSlip(method, one);
	if (step !== stepOfSlip(method, other)) return false;
	const kind = kindAt(method, step);
	// Whole numbers and stocked sizes come to the same by rounding.
	if (kind.mistakes.stocked || kind.mistakes.coarse.length === 0) return false;
	const at = (id: string, given: Values) =>
		evaluateAsFar(method, given, { slips: { [step]: id } })[step];
	const given = otherGivens(task);
	const [now, first, second] = [at(one, task.drawn.given), at(one, given), at(other, given)];
	if (now === undefined || first === undefined || second === undefined) return false;
	return kind.differs(now, first, 1e-9) && !kind.differs(first, second, 1e-9);
}

/**
 * The givens of a task, each number larger by a share of its own, a list as a whole. A square bend
 * stays square: that K is 1 there is what makes two slips one.
 */
function otherGivens({ method, drawn }: Task): Record<string, Value> {
	return Object.fromEntries(
		Object.entries(drawn.given).map(([key, value], i) => {
			const more = (one: number) => (one === 90 ? one : one * (1 + 0.0137 * (i + 1)));
			return [key, kindAt(method, key).map(value, more)];
		})
	);
}
