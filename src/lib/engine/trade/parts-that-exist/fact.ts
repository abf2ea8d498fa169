import type { Source } from '../source.ts';

/** A layer of a joint, by the name it has in a task. */
export interface Layer {
	readonly name: string;
	/** Thickness, inches. */
	readonly T: number;
}

/** A part or a job as a task tells it; whatever it does not tell is left out. */
export interface Job {
	readonly story: string;
	readonly layers?: readonly Layer[];
	/** Rivet diameter, inches. */
	readonly D?: number;
	/** Length of a rivet called out by its number for a joint, inches. */
	readonly length?: number;
	/** Alloy letters of the rivet. */
	readonly letters?: string;
	/** Alloy of the sheet: `2024-T3`. */
	readonly alloy?: string;
	/** Whether a part that is made says that it is heat treated once it has its shape; absent where a sheet is only looked up. */
	readonly heatTreated?: boolean;
	/** Thickness of a single sheet, inches. */
	readonly T?: number;
	/** Degrees, from flat. */
	readonly bend?: number;
	/** The flat that lies under the clamp of a brake, inches. */
	readonly clamped?: number;
	/** What is left of a bar, where that is asked for, inches. */
	readonly remnant?: number;
	/** What a hole is drilled with first, and the size it is finished to, inches. */
	readonly inTwo?: readonly [first: number, finished: number];
	/** Blanks that a sheet gives by its area. */
	readonly blanks?: number;
	/** Pounds. */
	readonly weight?: number;
	readonly cautions?: readonly string[];
}

/** What holds of every part that can be had and every job that is done. */
export interface Fact {
	readonly id: string;
	readonly says: string;
	readonly source: Source;
	/** Whether it holds; null where the job does not tell what it is about. */
	readonly holds: (job: Job) => boolean | null;
}

/** Room for sizes that were computed. */
export const slack = 1e-9;
