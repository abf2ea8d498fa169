import type { Exact } from '../quantity/exact.ts';
import { carriedRoom } from '../quantity/kinds/find-mistakes.ts';
import type { Entry, Judgement } from '../quantity/kinds/kind.ts';
import type { Values } from '../solver/compiled.ts';
import { evaluateAsFar } from '../solver/as-far.ts';
import { type Changes } from '../solver/evaluate.ts';
import { kindAt } from '../solver/kind-at.ts';
import { carriedIn, toleranceOf } from '../solver/tolerance.ts';
import type { Task } from '../tasks/task.ts';

/**
 * How an entry stands to the value as computed, or as it comes out when every step is rounded as
 * the shop carries it.
 *
 * @param put the student's own earlier values, which it is to follow from
 */
export function judged({ method, drawn }: Task, key: string, entry: Entry, put: Values): Judgement {
	const kind = kindAt(method, key);
	const judgedBy = (changes: Changes, tolerance: Exact): Judgement => {
		const values = evaluateAsFar(method, drawn.given, changes);
		const value = values[key];
		return value === undefined ? { is: 'off' } : kind.judge(entry, value, tolerance, values);
	};
	const tolerance = toleranceOf(method, key, entry.value);
	const exact = judgedBy({ values: put }, tolerance);
	const room = carriedRoom(kind, tolerance.valueOf());
	const carried = judgedBy({ values: put, carry: carriedIn(method) }, room);
	return carried.is === 'right' ? carried : exact;
}
