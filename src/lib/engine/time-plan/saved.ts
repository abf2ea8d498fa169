import {
	isTimePlanEvent,
	type TimePlanEvent,
	type TimeSettings,
	type TimeStepChanged
} from '../schedule/time-plan-events.ts';

/** What became of a step. */
export interface StepState {
	readonly state: TimeStepChanged['state'];
	/** What it took; null unless it is done. */
	readonly minutes: number | null;
	/** When it was begun or done, milliseconds since 1970-01-01 UTC. */
	readonly at: number;
}

/** A time plan as the log tells of it. */
export interface SavedTimePlan {
	readonly settings: TimeSettings;
	readonly steps: ReadonlyMap<string, StepState>;
}

export const emptySettings: TimeSettings = {
	due: null,
	times: [],
	own: [],
	minutes: {},
	out: [],
	questions: []
};

/** The time plan of a panel, from the events of a log in their order. */
export function timePlanOf(
	events: readonly { readonly type: string }[],
	panel: string
): SavedTimePlan {
	let settings = emptySettings;
	const steps = new Map<string, StepState>();
	for (const event of ofTimePlans(events)) {
		if (event.panel !== panel) continue;
		if (event.type === 'time-step') steps.set(event.step, stateOf(event));
		else {
			const { due, times, own, minutes, out, questions } = event;
			settings = { due, times, own, minutes, out, questions };
		}
	}
	return { settings, steps };
}

/** Most and least that guesses are stretched by: one odd step must not move a whole plan. */
const bounds = { least: 0.5, most: 3 } as const;

/** How long done steps took beside their first guesses. */
export interface Pace {
	readonly factor: number;
	/** Steps that it rests on. */
	readonly steps: number;
}

/** The learner's pace, over the done steps of all plans in a log. */
export function paceOf(events: readonly { readonly type: string }[]): Pace {
	const done = new Map<string, { readonly minutes: number; readonly guess: number }>();
	for (const event of ofTimePlans(events)) {
		if (event.type !== 'time-step') continue;
		const key = `${event.panel} ${event.step}`;
		const { state, minutes, guess } = event;
		if (state === 'done' && minutes && guess) done.set(key, { minutes, guess });
		else done.delete(key);
	}
	const all = [...done.values()];
	const sum = (of: 'minutes' | 'guess') => all.reduce((total, one) => total + one[of], 0);
	if (all.length === 0) return { factor: 1, steps: 0 };
	const factor = Math.min(Math.max(sum('minutes') / sum('guess'), bounds.least), bounds.most);
	return { factor, steps: all.length };
}

function ofTimePlans(events: readonly { readonly type: string }[]): TimePlanEvent[] {
	return events.filter(isTimePlanEvent);
}

function stateOf({ state, minutes, at }: TimeStepChanged): StepState {
	return { state, minutes: state === 'done' ? (minutes ?? null) : null, at };
}
