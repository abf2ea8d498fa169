import type { Value } from '../quantity/value.ts';
import { compiledOf, type Values } from '../solver/compiled.ts';
import type { Method } from '../solver/method.ts';
import { differs } from '../solver/tolerance.ts';
import { candidate, costOf, costs, idsIn } from './match-slip.ts';
import { type Candidate, kindOf, type Question, type Seen } from './question.ts';
import { isSameAct } from './same-act.ts';
import { type SlipCause, stepOfSlip } from './verdict.ts';
import { World } from './world.ts';

/** Every single slip that leads to the entry, and every act that does: a slip made in two steps alike. */
export function singleSlips(question: Question): Candidate[] {
	return [...slipsAlone(question, madeCost), ...actsInTwo(question)];
}

/**
 * Slips whose own step was entered right and then not worked on with. A stocked size or a fraction is
 * come to in so many ways that none is told of it.
 */
export function unusedSlips(question: Question): Candidate[] {
	const { mistakes } = kindOf(question);
	const isFraction = question.entry.grain === 0 && mistakes.coarse.length > 0;
	return mistakes.stocked || isFraction ? [] : slipsAlone(question, unusedCost);
}

type CostOf = (
	question: Question,
	world: World,
	id: string,
	carried: () => readonly Value[]
) => number | null;

function slipsAlone(question: Question, costBy: CostOf): Candidate[] {
	const onward = workedOn(question);
	return question.worlds.flatMap((world) => {
		const hits: { readonly id: string; readonly found: Candidate }[] = [];
		for (const id of idsIn(question, world)) {
			const values = world.single(id);
			const carried = () => world.carried(id, question.key);
			const cost = costBy(question, world, id, carried);
			if (cost === null) continue;
			// Of slips that are one act in this task, the first is told.
			if (hits.some((hit) => isSameAct(question.task, hit.id, id))) continue;
			const match = cost + notAlike(question, { world, onward }, id) + passedOver(question, id);
			const found = candidate(question, { kind: 'slip', slips: [id] }, values, match);
			hits.push({ id, found: { ...found, act: actOf(question.task.method, id) } });
		}
		return hits.map(({ found }) => found);
	});
}

/**
 * What it costs that a slip leaves out what was entered right: who has found the run between the end holes
 * hardly divides the whole length.
 */
function passedOver({ task: { method }, sheet }: Question, id: string): number {
	const { steps, slips } = compiledOf(method);
	const used = slips[id]?.needs ?? [];
	const left = (steps[stepOfSlip(method, id)]?.needs ?? []).filter((one) => !used.includes(one));
	const isPassed = sheet.some(({ key, state }) => state === 'right' && left.includes(key));
	return isPassed ? costs.passedOver : 0;
}

/** What a slip is done as in several steps: its act, or itself where one step stands in a method twice. */
function actOf({ slips }: Method, id: string): string | undefined {
	const { act, from, step } = slips[id] ?? {};
	if (act !== undefined || !from) return act;
	const isTwice = Object.values(slips).some(
		(other) => other.step !== step && other.from.unit === from.unit && other.from.key === from.key
	);
	return isTwice ? `${from.unit} ${from.key}` : undefined;
}

/**
 * What it costs that another slip of the same act would have shown in an entry that is right, or that
 * follows from this one.
 */
function notAlike(
	{ task, sheet }: Question,
	{ world, onward }: { readonly world: World; readonly onward: World | null },
	id: string
): number {
	const others = partners(world, task.method, id);
	const isShownBy = (state: Seen['state'], from: World, some: readonly string[]) =>
		sheet.some(
			(seen) =>
				seen.state === state &&
				some.some((other) => differs(task.method, seen.key, from.base, from.single(other)))
		);
	// What follows from a right entry of the other step tells no more than that.
	const steps = sheet.filter(({ state }) => state === 'right').map(({ key }) => key);
	const open = others.filter((other) => !steps.includes(stepOfSlip(task.method, other)));
	if (onward && isShownBy('carried', onward, open)) return costs.notAlike.carried;
	return isShownBy('right', world, others) ? costs.notAlike.right : 0;
}

/** What comes of the entry where it was worked on with; null where it was not, and no world is worked. */
function workedOn(question: Question): World | null {
	const { task, key, entry, sheet } = question;
	if (!sheet.some(({ state }) => state === 'carried')) return null;
	const own = kindOf(question).toValue(entry, task.right[key]);
	return own === null ? null : new World(task, { [key]: own });
}

/** The slips of other steps that are the same act. */
function partners(world: World, method: Method, id: string): readonly string[] {
	const { act, step } = method.slips[id] ?? {};
	if (act === undefined) return [];
	return world.slipIds.filter((other) => {
		const slip = method.slips[other];
		return slip?.act === act && slip.step !== step;
	});
}

/** Two slips of one act, made together, that lead to exactly the entry. */
function actsInTwo(question: Question): Candidate[] {
	const [world] = question.worlds;
	const { method } = question.task;
	const ids = idsIn(question, world).filter((id) => !world.isIdle(id));
	return ids.flatMap((id, i) => {
		const others = partners(world, method, id).filter((other) => ids.includes(other));
		const [other] = others;
		// Each two are worked once.
		if (other === undefined || others.length > 1 || ids.indexOf(other) < i) return [];
		const values = world.together([id, other]);
		const cost = costOf(question, world, values, () => []);
		if (cost === null || isOneEnough(question, world, [id, other], values)) return [];
		const cause: SlipCause = { kind: 'slip', slips: [id, other] };
		const own = candidate(question, cause, values, cost);
		return [{ ...own, cost: costs.slip + costs.twice + cost, act: method.slips[id]?.act }];
	});
}

/** Whether one of two slips comes to what both do. */
function isOneEnough(
	{ task, key }: Question,
	world: World,
	ids: readonly string[],
	both: Values
): boolean {
	return ids.some((id) => !differs(task.method, key, both, world.single(id)));
}

function madeCost(
	question: Question,
	world: World,
	id: string,
	carried: () => readonly Value[]
): number | null {
	return costOf(question, world, world.single(id), carried);
}

/** The same where the slip's own step was entered right, and then not worked on with. */
function unusedCost(
	question: Question,
	world: World,
	id: string,
	carried: () => readonly Value[]
): number | null {
	const step = stepOfSlip(question.task.method, id);
	const isRight = question.sheet.some(({ key, state }) => key === step && state === 'right');
	if (!isRight) return null;
	const cost = costOf(question, world, world.single(id), carried, step);
	return cost === null ? null : cost + costs.unused;
}
