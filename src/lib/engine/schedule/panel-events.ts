import * as v from 'valibot';
import { shortList, stamp, uuid } from './event-fields.ts';

/*
 * What the log keeps of panels: the file of each as it was last left, and the ticks at the bench.
 */

/** Longest panel file, as text. */
export const longestPanel = 16_000;

/** What is done to every hole, in order. */
export const stages = ['mark', 'pilot', 'final', 'deburr', 'drive'] as const;
export type Stage = (typeof stages)[number];

const panelSchema = v.object({
	...stamp,
	type: v.literal('panel'),
	/** Which panel; the newest file of one counts. */
	panel: uuid,
	/** The panel file as text; empty where the panel was removed. */
	file: v.pipe(v.string(), v.maxLength(longestPanel))
});

const tickSchema = v.object({
	...stamp,
	type: v.literal('panel-tick'),
	panel: uuid,
	stage: v.picklist(stages),
	/** Places as `x y` in inches: numbers of holes move when the panel is changed. */
	holes: shortList,
	done: v.boolean()
});

export const panelSchemas = { panel: panelSchema, 'panel-tick': tickSchema };

/** A panel was planned or changed. */
export type PanelSaved = Readonly<v.InferOutput<typeof panelSchema>>;
/** Holes were ticked, or a tick taken back. */
export type PanelTick = Readonly<v.InferOutput<typeof tickSchema>>;
export type PanelEvent = PanelSaved | PanelTick;
