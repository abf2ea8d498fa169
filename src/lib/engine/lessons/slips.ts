import type { Effect } from '../families/family.ts';
import type { LengthUnit, Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { withSlipAsFar } from '../solver/as-far.ts';
import type { Slip } from '../solver/method.ts';
import { differs } from '../solver/tolerance.ts';
import { effectOf } from '../tasks/effect.ts';
import type { Way } from './lesson.ts';

/** A slip of a lesson, worked on the numbers that stand there. */
export interface SlipShown {
	/** Its id in the method. */
	readonly id: string;
	/** The step it is made in. */
	readonly step: string;
	/** The values it leads to, as far as they can be worked. */
	readonly values: Values;
	/** The step that shows it, and both numbers there; null where on these numbers none does. */
	readonly at: { readonly key: string; readonly wrong: Value; readonly right: Value } | null;
	/** What it does to the metal beside the right one, where the family draws that. */
	readonly effect: Effect | null;
}

/** The slips that are made in the steps of a lesson: those that tasks are about first. */
export function slipsOf({ method, steps, chief }: Way): (readonly [id: string, slip: Slip])[] {
	const all = Object.entries(method.slips).filter(([, { step }]) => steps.includes(step));
	const place = ([id, { rare }]: (typeof all)[number]) => (chief.has(id) ? 0 : rare ? 2 : 1);
	return [...all].sort((one, other) => place(one) - place(other));
}

/** Works a slip on numbers: as far down the steps as it shows, and where that is drawn. */
export function slipShown(
	way: Way,
	given: Values,
	right: Values,
	id: string,
	units: LengthUnit = 'in'
): SlipShown {
	const { method, family, steps, start } = way;
	const step = method.slips[id]?.step ?? '';
	const values = withSlipAsFar(method, right, id);
	const task = { method, family, right, drawn: { ...start, given } };
	const off = steps
		.slice(steps.indexOf(step))
		.filter((key) => values[key] !== undefined && differs(method, key, right, values))
		.reverse();
	const seen = off.map((key) => ({
		key,
		effect: effectOf(task, key, values[key] ?? '', units, true)
	}));
	const told = seen.find(({ effect }) => effect) ?? seen[0];
	if (!told) return { id, step, values, at: null, effect: null };
	const { key, effect } = told;
	return {
		id,
		step,
		values,
		at: { key, wrong: values[key] ?? '', right: right[key] ?? '' },
		effect
	};
}
