import * as v from 'valibot';
import { short, stamp, uuid } from './event-fields.ts';

/*
 * What the log keeps of time plans: what was set for one as it was last left, and what became of
 * each step. A plan belongs to a panel; its steps from the order of work are not kept, but worked
 * out again.
 */

export const longestStepName = 60;
export const longestQuestion = 300;
export const longestReply = 200;
export const mostOwnSteps = 30;
export const mostTimes = 60;
export const mostQuestions = 12;
/** Longest step, in minutes: a day. */
export const mostMinutes = 1440;

const minutes = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostMinutes));
const date = v.pipe(v.string(), v.isoDate());
/** Minutes after midnight; 1440 is the end of the day. */
const timeOfDay = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1440));

/** When one is at the bench. */
const timeSchema = v.object({ day: date, from: timeOfDay, to: timeOfDay });

const ownStepSchema = v.object({
	id: uuid,
	name: v.pipe(v.string(), v.maxLength(longestStepName)),
	minutes,
	/** The step it follows; null for the first of all. */
	after: v.nullable(short),
	/** Whether it may wait until after the hand-in. */
	canWait: v.boolean()
});

const questionSchema = v.object({
	id: uuid,
	text: v.pipe(v.string(), v.maxLength(longestQuestion)),
	/** The step that cannot begin without an answer, or null. */
	step: v.nullable(short),
	/** What was answered; empty while it is open. */
	answer: v.pipe(v.string(), v.maxLength(longestReply))
});

const settingsEntries = {
	due: v.nullable(v.object({ day: date, time: timeOfDay })),
	times: v.pipe(v.array(timeSchema), v.maxLength(mostTimes)),
	own: v.pipe(v.array(ownStepSchema), v.maxLength(mostOwnSteps)),
	/** Minutes as the student corrected them, by step. */
	minutes: v.pipe(v.record(short, minutes), v.maxEntries(60)),
	/** Steps that are left out. */
	out: v.pipe(v.array(short), v.maxLength(60)),
	questions: v.pipe(v.array(questionSchema), v.maxLength(mostQuestions))
};

const planSchema = v.object({
	...stamp,
	type: v.literal('time-plan'),
	panel: uuid,
	...settingsEntries
});

const stepSchema = v.object({
	...stamp,
	type: v.literal('time-step'),
	panel: uuid,
	step: short,
	state: v.picklist(['open', 'begun', 'done']),
	/** What it took, of a step that is done. */
	minutes: v.optional(minutes),
	/** What it was guessed to take before anybody had worked at it. */
	guess: v.optional(minutes)
});

export type TimeSettings = Pick<TimePlanSaved, keyof typeof settingsEntries>;
export type WorkingTime = TimeSettings['times'][number];
export type OwnStep = TimeSettings['own'][number];
export type PlanQuestion = TimeSettings['questions'][number];

export const timePlanSchemas = { 'time-plan': planSchema, 'time-step': stepSchema };

/** What was set for a time plan. */
export type TimePlanSaved = Readonly<v.InferOutput<typeof planSchema>>;
/** A step was begun, done, or opened again. */
export type TimeStepChanged = Readonly<v.InferOutput<typeof stepSchema>>;
export type TimePlanEvent = TimePlanSaved | TimeStepChanged;

export function isTimePlanEvent(event: { readonly type: string }): event is TimePlanEvent {
	return Object.hasOwn(timePlanSchemas, event.type);
}
