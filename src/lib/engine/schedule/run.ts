import { type Policy, SHIPPED } from './policy.ts';
import type { SkillId, TaskKind } from './skill.ts';

/** Why a task is in the run. The wording is the page's. */
export type Reason =
	/** Missed on an earlier `day` and not put right since, or missed a moment ago in this run. */
	| { readonly kind: 'missed'; readonly skill: SkillId; readonly day: number }
	/** Practised last on `day`; `recall` is the chance that it is still right. */
	| {
			readonly kind: 'fading';
			readonly skill: SkillId;
			readonly day: number;
			readonly recall: number;
	  }
	/** First met today. */
	| { readonly kind: 'new'; readonly skill: SkillId }
	/** Part of the final look over everything before the exam on `exam`. */
	| { readonly kind: 'sweep'; readonly skill: SkillId; readonly exam: number }
	/** The learner picked the topic. */
	| { readonly kind: 'chosen'; readonly skill: SkillId };

/** One task to draw. */
export interface RunItem {
	readonly kind: TaskKind;
	/** The skill it was chosen for. */
	readonly skill: SkillId;
	readonly reason: Reason;
	/** Time the task is expected to take. */
	readonly seconds: number;
	/** Whether another of the kind is shown worked before it, for a step in it is met first here. */
	readonly worked: boolean;
	/** Time to read the worked one; 0 without it. */
	readonly reading: number;
	/** Whether a miss put it here. */
	readonly returned: boolean;
}

/** One sitting: the tasks in order, together never longer than `budget` seconds. */
export interface Run {
	readonly day: number;
	readonly items: readonly RunItem[];
	readonly budget: number;
}

/** Seconds a run takes as planned. */
export function runSeconds(items: readonly RunItem[]): number {
	return items.reduce((sum, item) => sum + item.seconds + item.reading, 0);
}

/** Other tasks between a miss and its return: two, or three where two would seat like by like. */
const GAPS = [2, 3];

/**
 * The run after the task at `index` was missed: the same kind once more, with new numbers, after two
 * or three others. The last tasks make room, so the run does not grow past its budget. The run stays
 * as it is when too few tasks follow or returns already fill their share of it; then the miss comes
 * back on a later day only. `step` is the skill the slip sits in, where it is not the one aimed at.
 */
export function afterMiss(run: Run, index: number, step?: SkillId, policy = SHIPPED): Run {
	const missed = run.items[index];
	if (!missed || missed.returned || !mayReturn(missed, run, policy)) return run;
	const back = returning(missed, step ?? missed.skill, run.day);
	const places = GAPS.map((gap) => index + 1 + gap);
	const apart = places.filter((at) => !isBeside(run, at, (k) => k.family === back.kind.family));
	const notSame = places.filter((at) => !isBeside(run, at, (k) => k.id === back.kind.id));
	for (const at of [...apart, ...notSame]) {
		const items = insert(run, at, back);
		if (items) return { ...run, items };
	}
	return run;
}

function mayReturn({ reason, worked }: RunItem, { items }: Run, policy: Policy): boolean {
	const share = reason.kind === 'new' || worked ? policy.newReturns : policy.returns;
	return items.filter((item) => item.returned).length + 1 <= share * items.length;
}

function returning({ kind, seconds }: RunItem, skill: SkillId, day: number): RunItem {
	const reason: Reason = { kind: 'missed', skill, day };
	return { kind, skill, seconds, worked: false, reading: 0, reason, returned: true };
}

// Whether a task put in at `at` would get such a neighbour.
function isBeside({ items }: Run, at: number, like: (kind: TaskKind) => boolean): boolean {
	return items.slice(Math.max(0, at - 1), at + 1).some((item) => like(item.kind));
}

// Undefined where it does not fit. Earlier returns are not dropped for a new one.
function insert(run: Run, at: number, back: RunItem): RunItem[] | undefined {
	if (at > run.items.length) return undefined;
	const items = [...run.items.slice(0, at), back, ...run.items.slice(at)];
	while (runSeconds(items) > run.budget && items.length > at + 1) {
		if (items.at(-1)?.returned) return undefined;
		items.pop();
	}
	return runSeconds(items) > run.budget ? undefined : items;
}
