import type { Driven } from '$lib/engine/figures/parts/rivet-asked.ts';
import { sayVerdict } from '$lib/engine/marking/say.ts';
import { inBothUnits } from '$lib/engine/quantity/both-units.ts';
import type { Verdict } from '$lib/engine/marking/verdict.ts';
import type { LengthUnit, Value } from '$lib/engine/quantity/value.ts';
import { kindAt } from '$lib/engine/solver/kind-at.ts';
import { seenAt } from '$lib/engine/solver/outcome.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import type { Check } from '$lib/ui/sheet/task-work.svelte.ts';

/** What an answer to the first task comes to: a verdict, and what it does to the metal. */
export interface FirstAnswer {
	readonly verdict: 'accept' | 'rework';
	/** What stands beside the stamp. */
	readonly head: string;
	/** What the metal says. */
	readonly metal: string;
	/** Why: the slip, or the sum. */
	readonly why: string;
	/** Which of the two entries are wrong. */
	readonly wrong: { readonly needed: boolean; readonly taken: boolean };
	/** Null where it cannot be drawn. */
	readonly driven: Driven | null;
}

/** What the metal is driven by. */
const key = 'length';

/** Longest shank that is drawn past the stack, in D. */
const longest = 4;

/** Read once the method has told (`tell`). */
export function firstAnswer(task: Task, check: Check, units: LengthUnit): FirstAnswer | null {
	const { method, drawn, right } = task;
	const { needed, length } = check.verdicts;
	const entry = check.entries[key];
	if (!needed || !length || !entry) return null;
	const entered = kindAt(method, key).toValue(entry, right[key]);
	const seen = entered === null ? null : seenAt(method, drawn.given, right, key, entered, units);
	const wrong = { needed: needed.kind !== 'accept', taken: length.kind !== 'accept' };
	const whyNeeded = wrong.needed ? whyNotNeeded(task, needed) : '';
	const told = wrong.taken ? whyNotTaken(task, length, entered, units) : '';
	// A slip that is counted from a wrong sum says too long where the metal says too short.
	const isAside = wrong.needed && wrong.taken && told !== whyNeeded && isTold(length);
	const whyTaken = isAside ? 'Then take the next 1/16 in up.' : told;
	const why = [
		wrong.needed ? `Length needed: ${whyNeeded}` : '',
		// One slip may lead to both numbers; it is told once.
		whyTaken === whyNeeded ? '' : whyTaken
	].filter(Boolean);
	const good = length.kind === 'accept' && !length.carried;
	const onlyNeeded = wrong.needed && good;
	const metal = seen ? inBothUnits(seen.says, units) : '';
	return {
		verdict: check.accepted ? 'accept' : 'rework',
		head: onlyNeeded ? 'The rivet will do. The length needed is not right.' : metal,
		metal,
		why: inBothUnits(check.accepted ? sumOf(task, units) : why.join(' '), units),
		wrong,
		driven: seen && drivenBy(seen, Number(right.grip), Number(drawn.given.D), good)
	};
}

function drivenBy(
	{ entered, shows, case: of }: NonNullable<ReturnType<typeof seenAt>>,
	grip: number,
	D: number,
	right: boolean
): Driven {
	const out = (Number(entered) - grip) / D;
	const headless = of === 'inside' || of === 'stub';
	const head = headless
		? null
		: of === 'bends'
			? 'bent'
			: { across: Number(shows.headAcross), high: Number(shows.headHigh) };
	const length = Math.max(0, Math.min(Number(entered), grip + longest * D));
	return { length, out: out.toFixed(2), head, right };
}

/** Whether the number tells one cause. */
function isTold(verdict: Verdict): boolean {
	return verdict.kind !== 'rework' || !['unknown', 'either'].includes(verdict.cause.kind);
}

/** The slip where the number tells one; else the way to go. */
function whyNotNeeded(task: Task, verdict: Verdict): string {
	return isTold(verdict)
		? sayVerdict(task, verdict, 'needed')
		: 'Add the layers, and 1.5D for the shop head.';
}

/** The slip where the number tells one; else what is missing, or the way to go. */
function whyNotTaken(
	task: Task,
	verdict: Verdict,
	entered: Value | null,
	units: LengthUnit
): string {
	if (isTold(verdict)) return sayVerdict(task, verdict, key);
	const short = Number(task.right.needed) - Number(entered);
	return short > 0 && short < 1 / 16
		? `It is ${textAt(task.method, 'needed', short, units)} short: a length always goes up to the next 1/16 in.`
		: 'Add the layers, add 1.5D for the shop head, and take the next 1/16 in up.';
}

/** The sum as it is worked. */
function sumOf({ method, drawn, right }: Task, units: LengthUnit): string {
	const say = (at: string, value: unknown) => textAt(method, at, value as number, units);
	const layers = (drawn.given.layers as readonly number[]).map((one) => say('layers', one));
	const parts = [...layers, `1.5 × ${say('D', drawn.given.D)}`].join(' + ');
	return `${parts} = ${say('needed', right.needed)}, and the next 1/16 in up is ${say(key, right[key])}.`;
}
