import type { Draw } from '../families/family.ts';
import type { Values } from '../solver/compiled.ts';
import { withSlip } from '../solver/evaluate.ts';
import type { Method } from '../solver/method.ts';
import { isTakenFor } from '../solver/tolerance.ts';
import { orNull } from '../solver/trade-function.ts';

/**
 * The first chief slip of a draw that leads to an answer that would be accepted, as a sentence; null
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
): string | null {
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
			return `the chief slip ${passes} leads to the right ${key}: draw other numbers, or correct its formula`;
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
