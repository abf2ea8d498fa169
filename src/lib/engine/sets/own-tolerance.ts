import { compiledOf, setReady } from '../solver/compiled.ts';
import type { Method, Step, Tolerance } from '../solver/method.ts';
import { differs } from '../solver/tolerance.ts';
import type { Task } from '../tasks/task.ts';
import type { TaskSet } from './set.ts';
import { SetError } from './set-error.ts';

/*
 * Where a school holds work nearer or less near than the tool of a step reads. Sizes out of the
 * bin, counts, names and what is read off a table stay exact whatever the school.
 */

type Tool = NonNullable<Tolerance['tool']>;

/** What a school may allow, in inches, by the tool that the value is held to. */
export const ownTolerances = {
	rule: ['1/128', '1/32', '1/16'],
	micrometer: ['0.002', '0.003', '0.005', '0.010']
} as const satisfies Readonly<Record<Tool, readonly string[]>>;

/** The tolerances of a set that are not those of the tool. */
export type Within = NonNullable<TaskSet['within']>;

/**
 * The tolerances of a set from what was chosen; without any, nothing.
 *
 * @throws SetError where it is none that a set may have
 */
export function ownWithin(rule = '', micrometer = ''): Pick<TaskSet, 'within'> {
	const within = {
		...(rule && { rule: amongst(ownTolerances.rule, rule) }),
		...(micrometer && { micrometer: amongst(ownTolerances.micrometer, micrometer) })
	};
	return rule || micrometer ? { within } : {};
}

function amongst<A extends string>(amounts: readonly A[], typed: string): A {
	const amount = amounts.find((one) => one === typed);
	if (amount) return amount;
	const some = amounts.slice(0, -1).join(', ');
	throw new SetError(`A set may allow ${some} or ${amounts.at(-1)} in, and nothing else.`);
}

const made = new WeakMap<Method, Map<string, Method>>();

/** The task, held to the tolerances of a set in marking, print and exports alike. */
export function heldTo(task: Task, within: Within = {}): Task {
	if (Object.keys(within).length === 0) return task;
	const key = JSON.stringify([within.rule, within.micrometer]);
	const known = made.get(task.method) ?? new Map<string, Method>();
	made.set(task.method, known);
	const method = known.get(key) ?? methodHeldTo(task.method, within);
	known.set(key, method);
	return { ...task, method };
}

function methodHeldTo(method: Method, within: Within): Method {
	const steps = Object.entries(method.steps).map(([key, step]) => [key, stepHeldTo(step, within)]);
	const held: Method = { ...method, steps: Object.fromEntries(steps) };
	setReady(held, compiledOf(method));
	return held;
}

function stepHeldTo(step: Step, within: Within): Step {
	const { tolerance } = step;
	const amount = tolerance?.tool && within[tolerance.tool];
	if (!tolerance || amount === undefined) return step;
	const why = `Within ${amount} in, as this set allows.`;
	return { ...step, tolerance: { ...tolerance, amount, why } };
}

/** Slips of a task that would pass: what they lead to lies within the tolerance. */
export function slipsPassed({ method, drawn, right, slips }: Task): string[] {
	return [...slips].flatMap(([id, values]) =>
		drawn.asked.some((key) => differs(method, key, right, values)) ? [] : id
	);
}

/** What a set says of its tolerances, in sentences; empty where there is nothing to say. */
export function toleranceWords({ within = {}, tolerance }: Pick<TaskSet, 'within' | 'tolerance'>) {
	const own = [
		...(within.rule ? [`What a steel rule reads counts within ${within.rule} in.`] : []),
		...(within.micrometer ? [`What a micrometer reads counts within ${within.micrometer} in.`] : [])
	];
	return [...own, ...(tolerance === '' ? [] : [tolerance])].join(' ');
}
