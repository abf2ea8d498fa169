import type { Draw } from '../families/family.ts';
import type { Values } from '../solver/compiled.ts';
import { withSlipAsFar } from '../solver/as-far.ts';
import { withSlip } from '../solver/evaluate.ts';
import type { Method } from '../solver/method.ts';
import { differs, isTakenFor } from '../solver/tolerance.ts';
import { orNull } from '../solver/trade-function.ts';

/**
 * The first chief slip of a draw that leads to an answer that would be accepted, as an error; null
 * when all of them show. A slip that leads to no answer at all cannot pass.
 *
 * @param rounded the right values with every step rounded as a shop carries them
 * @throws Error when the draw names a slip or a step that its method has not
 */
export function chiefFault(
	method: Method,
	drawn: Draw,
	right: Values,
	rounded: Values
): Error | null {
	for (const [key, ids = []] of Object.entries(drawn.chief ?? {})) {
		// One record may serve all levels; a step that this level does not ask is passed over.
		if (!Object.hasOwn(method.steps, key)) {
			throw new Error(
				`chief slips are named for ${key}, which is no step of ${method.id}: its steps are ${Object.keys(method.steps).join(', ')}`
			);
		}
		const unknown = ids.find((id) => !Object.hasOwn(method.slips, id));
		if (unknown !== undefined) throw new Error(unknownSlip(method, key, unknown));
		if (!drawn.asked.includes(key)) continue;
		const passes = ids.find((id) => passesAt(method, key, id, right, rounded));
		if (passes !== undefined) {
			return new Error(
				`the chief slip ${passes} leads to the right ${key}: draw other numbers, or correct its formula`
			);
		}
	}
	return null;
}

/**
 * Two slips that a draw wants told apart and that lead to the same wrong answers at all it asks, as an
 * error; null when there are none. Slips that do not show are passed over.
 *
 * @throws Error when the draw names a slip that its method has not
 */
export function alikeFault(method: Method, drawn: Draw, right: Values): Error | null {
	for (const group of drawn.apart ?? []) {
		const unknown = group.find((id) => !Object.hasOwn(method.slips, id));
		if (unknown !== undefined) {
			throw new Error(`a draw wants ${unknown} told apart, which is no slip of ${method.id}`);
		}
		const isApart = (one: Values, other: Values) =>
			drawn.asked.some((key) => differs(method, key, one, other));
		const seen: (readonly [id: string, Values])[] = [];
		for (const id of group) {
			const slipped = withSlipAsFar(method, right, id);
			if (!isApart(slipped, right)) continue;
			const alike = seen.find(([, other]) => !isApart(slipped, other));
			if (alike) {
				return new Error(
					`the slips ${alike[0]} and ${id} lead to the same answer: draw other numbers`
				);
			}
			seen.push([id, slipped]);
		}
	}
	return null;
}

function unknownSlip({ id, steps, slips }: Method, key: string, wanted: string): string {
	// A slip made before the asked step leads to a wrong answer there too.
	const upTo = Object.keys(steps).slice(0, Object.keys(steps).indexOf(key) + 1);
	const known = Object.keys(slips).filter((one) => upTo.includes(slips[one]?.step ?? ''));
	return `the chief slips of ${key} name ${wanted}, which is no slip of ${id} up to there: choose among ${known.join(', ')}`;
}

function passesAt(method: Method, key: string, id: string, right: Values, rounded: Values) {
	const slipped = orNull(() => withSlip(method, right, id));
	if (!slipped) return false;
	return [right, rounded].some((values) => isTakenFor(method, key, values, slipped));
}
