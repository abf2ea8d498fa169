import type { Family } from '../../../src/lib/engine/families/family.ts';
import type { Level } from '../../../src/lib/engine/families/level.ts';
import { randomFrom } from '../../../src/lib/engine/families/random.ts';
import { withSlipAsFar } from '../../../src/lib/engine/solver/as-far.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import type { Task } from '../../../src/lib/engine/tasks/task.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';

/* Mistakes in writing a family that would show up somewhere else, or not at all. */

/** What is wrong with how a draw is written; null where a task can be made of it. */
export function draftFault(family: Family, level: Level): string | null {
	const drawn = family.draw(randomFrom(`${family.code} ${level}`), level);
	const method = drawn.method ?? family.method;
	const [gives, wants] = [drawn.given, method.given].map((given) => Object.keys(given));
	const unlike = [...(gives ?? []), ...(wants ?? [])].find(
		(key) => !gives?.includes(key) || !wants?.includes(key)
	);
	if (unlike !== undefined) {
		return `draw gives ${gives?.join(', ')}, and ${method.id} wants ${wants?.join(', ')}`;
	}
	const keys = Object.keys(method.steps);
	for (const [key, ids = []] of Object.entries(drawn.chief ?? {})) {
		for (const id of ids) {
			const made = method.slips[id]?.step;
			if (keys.includes(key) && made && keys.indexOf(made) > keys.indexOf(key)) {
				return `the chief slip ${id} of ${key} is made later, in ${made}: name it under ${made}`;
			}
		}
	}
	return null;
}

/**
 * The slips that a method wrote itself and that never lead to another value of their step, whatever
 * is drawn. Not every method that takes a piece in draws what shows all of the piece's slips.
 */
export function idleSlips(method: Method, drawn: readonly Task[]): string[] {
	const tasks = drawn.filter((task) => task.method === method);
	if (tasks.length === 0) return [];
	const worked = tasks.flatMap(({ drawn: { given }, right }) => [
		right,
		...stretched(method, given)
	]);
	return Object.entries(method.slips)
		.filter(([, { from }]) => from.unit === method.id)
		.filter(([id, { step }]) =>
			worked.every((right) => {
				const to = withSlipAsFar(method, right, id)[step];
				return to !== undefined && JSON.stringify(to) === JSON.stringify(right[step]);
			})
		)
		.map(
			([id, { step }]) =>
				`${method.id}.${step}, slip ${id}: always comes to the right value; correct its formula, or leave it out`
		);
}

/** The method worked with one given ten times as large, where that gives an answer. */
function stretched(method: Method, given: Values): Values[] {
	return Object.entries(given).flatMap(([key, value]) => {
		if (typeof value !== 'number') return [];
		try {
			return [evaluate(method, { ...given, [key]: 10 * value })];
		} catch (error) {
			if (error instanceof TradeError) return [];
			throw error;
		}
	});
}
