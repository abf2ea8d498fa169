import type { PanelPlan } from '../panel/plan.ts';
import type { WorkId, WorkStep } from '../panel/order.ts';
import type { OwnStep } from '../schedule/time-plan-events.ts';
import type { Pace, SavedTimePlan, StepState } from './saved.ts';

/** A step of a time plan. Minutes are at the bench. */
export interface TimeStep {
	readonly id: string;
	readonly name: string;
	/** What it was guessed to take at first. */
	readonly guess: number;
	/** What it takes by what is known now: what it took, what was corrected, or guess times pace. */
	readonly minutes: number;
	/** What is left of that. */
	readonly left: number;
	readonly state: StepState['state'];
	/** Whether the student wrote the step. */
	readonly isOwn: boolean;
	/** Whether it may wait until after the hand-in. */
	readonly canWait: boolean;
	readonly isOut: boolean;
}

interface Rate {
	readonly fixed: number;
	/** More for every hole, opening or bend. */
	readonly each?: number;
}

/** First guesses in minutes: rough numbers for somebody's first panels, to be corrected. No document. */
const rates: Readonly<Record<WorkId, Rate>> = {
	blank: { fixed: 25 },
	openings: { fixed: 5, each: 20 },
	rows: { fixed: 10, each: 0.6 },
	coupon: { fixed: 30 },
	bend: { fixed: 10, each: 15 },
	clamp: { fixed: 10 },
	back: { fixed: 10, each: 0.3 },
	pilot: { fixed: 5, each: 0.7 },
	final: { fixed: 5, each: 0.4 },
	deburr: { fixed: 10, each: 0.6 },
	countersink: { fixed: 15, each: 0.5 },
	dimple: { fixed: 15, each: 0.8 },
	assemble: { fixed: 5, each: 0.1 },
	drive: { fixed: 10, each: 1.3 },
	inspect: { fixed: 10, each: 0.25 },
	tag: { fixed: 10 }
};

/** Holes done at a stage of the shop list, as a share of all. */
export type Shares = Readonly<Partial<Record<string, number>>>;

/** Which stage of the shop list tells how far a step is. */
export const stageOf: Readonly<Partial<Record<string, string>>> = {
	rows: 'mark',
	pilot: 'pilot',
	final: 'final',
	deburr: 'deburr',
	drive: 'drive'
};

/** What is known of the work besides the plan. */
export interface Progress {
	readonly pace: Pace;
	readonly shares: Shares;
	/** Minutes at the bench since a step was begun. */
	readonly spent: ReadonlyMap<string, number>;
}

/** The steps of a panel and the student's own, in order. */
export function stepsOf(
	plan: PanelPlan | null,
	saved: SavedTimePlan,
	progress: Progress
): TimeStep[] {
	const panel = plan?.order.map((step) => panelStep(plan, step, saved, progress)) ?? [];
	return withOwn(panel, saved, progress);
}

function panelStep(
	plan: PanelPlan,
	{ id, name }: WorkStep,
	saved: SavedTimePlan,
	progress: Progress
): TimeStep {
	const { fixed, each = 0 } = rates[id];
	const guess = toFive(fixed + each * countFor(plan, id));
	const step = timed({ id, name, guess }, saved, progress);
	return { ...step, isOwn: false, canWait: id === 'tag' };
}

function countFor({ job, holes }: PanelPlan, id: WorkId): number {
	if (id === 'openings') return job.cutouts.length;
	return id === 'bend' ? job.bends.length : holes.length;
}

const toFive = (minutes: number) => Math.max(5, Math.round(minutes / 5) * 5);

function withOwn(panel: readonly TimeStep[], saved: SavedTimePlan, progress: Progress): TimeStep[] {
	const all = [...panel];
	for (const own of saved.settings.own) {
		const before = all.findIndex(({ id }) => id === own.after);
		// What it followed may be gone from the panel: it then comes last.
		const place = own.after !== null && before < 0 ? all.length : before + 1;
		all.splice(place, 0, ownStep(own, saved, progress));
	}
	return all;
}

function ownStep(
	{ id, name, minutes, canWait }: OwnStep,
	saved: SavedTimePlan,
	progress: Progress
): TimeStep {
	return { ...timed({ id, name, guess: minutes }, saved, progress), isOwn: true, canWait };
}

function timed(
	step: Pick<TimeStep, 'id' | 'name' | 'guess'>,
	{ settings, steps }: SavedTimePlan,
	{ pace, shares, spent }: Progress
) {
	const { state, minutes: took } = steps.get(step.id) ?? { state: 'open' as const, minutes: null };
	const isOut = settings.out.includes(step.id) && state !== 'done';
	const known = settings.minutes[step.id] ?? Math.max(1, Math.round(step.guess * pace.factor));
	const minutes = took ?? known;
	const share = shares[stageOf[step.id] ?? ''] ?? 0;
	const isOver = isOut || state === 'done';
	const left = isOver ? 0 : leftOf(minutes, share, spent.get(step.id) ?? 0);
	return { ...step, state, isOut, minutes, left };
}

/** Holes that are ticked tell more than the clock; a step that is not ticked off has some left. */
function leftOf(minutes: number, share: number, spent: number): number {
	if (share > 0) return Math.ceil(minutes * (1 - share));
	return Math.max(minutes - spent, Math.min(minutes, 5));
}
