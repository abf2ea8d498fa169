import { inBothUnits } from '../quantity/both-units.ts';
import type { Effect, Outcome, SeenBy } from '../families/family.ts';
import { isList, type LengthUnit, type Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { type Seen, seenAt } from '../solver/outcome.ts';
import { textAt } from '../solver/show.ts';
import type { Task } from './task.ts';

/** What an effect is told of: a task, or the numbers of a lesson. */
export type Worked = Pick<Task, 'method' | 'drawn' | 'right' | 'family'>;

/**
 * What an answer to a step does to the metal, and what the right one does; null where the method
 * or the family shows nothing for it.
 *
 * @param entered the answer, in base units
 * @param exact whether the right answer is known, so that its sentences may tell amounts exactly
 */
export function effectOf(
	task: Worked,
	key: string,
	entered: Value,
	units: LengthUnit = 'in',
	exact = false
): Effect | null {
	const { method, drawn, right } = task;
	const { metal } = task.family;
	if (!metal) return null;
	const say = (at: string, value: Value) => textAt(method, at, value, units);
	const seen = (value: Value | undefined) =>
		value === undefined ? null : seenAt(method, drawn.given, right, key, value, units, exact);
	const [own, good] = [seen(entered), seen(right[key])];
	if (!own || !good) return null;
	const outcome = (one: Seen, other: Seen): Outcome | null => {
		const draw = () => metal(seenBy(one, other, drawn.given), say);
		const drawing = draw();
		if (!drawing) return null;
		return { drawing, draw: () => draw() ?? drawing, says: inBothUnits(one.says, units) };
	};
	const [yours, wanted] = [outcome(own, good), outcome(good, own)];
	return yours && wanted ? { entered: yours, right: wanted } : null;
}

function seenBy(seen: Seen, other: Seen, given: Values): SeenBy {
	const shown = shownIn(seen);
	const beside = shownIn(other);
	return {
		...seen,
		given,
		at: (key) => numberIn(shown, key),
		list: (key) => listIn(shown, key),
		word: (key) => String(shown[key] ?? ''),
		rightAt: (key) => numberIn(seen.right, key),
		rightList: (key) => listIn(seen.right, key),
		beside: (key) => numberIn(beside, key)
	};
}

function shownIn({ values, shows, entered }: Seen): Values {
	return { ...values, ...shows, entered };
}

function numberIn(values: Values, key: string): number {
	const value = values[key];
	if (typeof value === 'number') return value;
	throw new Error(`${key} is no number that the method shows`);
}

function listIn(values: Values, key: string): readonly number[] {
	const value = values[key];
	if (isList(value)) return value.filter((one) => typeof one === 'number');
	throw new Error(`${key} is no list that the method shows`);
}
