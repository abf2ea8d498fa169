/*
 * A panel as somebody describes it: lengths in inches, positions from the lower left corner along
 * length (x, to the right) and width (y, up).
 */

/** Which way a member or a row of holes runs: `across` the panel, up its width, or `along` its length. */
export type Runs = 'across' | 'along';

/** A rectangle from its lower left corner. */
export interface Area {
	readonly x: number;
	readonly y: number;
	readonly length: number;
	readonly width: number;
}

/** A frame, stringer or strip behind the panel, by the flange that lies against it. */
export interface Member {
	readonly name: string;
	readonly runs: Runs;
	/** Middle of the flange: x where it runs across, y where it runs along. */
	readonly at: number;
	readonly flange: number;
	readonly thickness: number;
	readonly rows: 1 | 2;
	/** Where it begins and ends along its run. */
	readonly from: number;
	readonly to: number;
	/** Holes it has already, along its run; null where it is not drilled. */
	readonly drilled: readonly number[] | null;
	/** Where it stands in the file: `members.0`. */
	readonly field: string;
}

export interface Doubler extends Area {
	readonly name: string;
	readonly thickness: number;
	readonly field: string;
}

/** An opening: a rectangle, or round about its centre. */
export type Cutout = { readonly name: string } & (
	| ({ readonly round: false } & Area)
	| { readonly round: true; readonly x: number; readonly y: number; readonly diameter: number }
);

export type Edge = 'left' | 'right' | 'bottom' | 'top';

/** An edge bent up; the panel's size on that side is to the mold line. */
export interface Bend {
	readonly edge: Edge;
	/** To the mold line. */
	readonly leg: number;
	/** Degrees, from flat. */
	readonly angle: number;
	/** Inside. */
	readonly radius: number;
	readonly field: string;
}

export interface StockSheet {
	readonly length: number;
	readonly width: number;
}

export interface PanelJob {
	readonly name: string;
	readonly length: number;
	readonly width: number;
	/** Null where it could not be read: nothing is riveted then. */
	readonly thickness: number | null;
	readonly alloy: string;
	readonly cornerRadius: number;
	/** Added for trimming on every side that is not bent. */
	readonly trim: number;
	readonly members: readonly Member[];
	readonly doublers: readonly Doubler[];
	readonly cutouts: readonly Cutout[];
	readonly bends: readonly Bend[];
	readonly rivet: {
		readonly head: 'universal' | 'countersunk';
		readonly alloy: string;
		/** Null where it goes by the stack. */
		readonly diameter: number | null;
	};
	/** Null where it could not be read: no new holes are laid out then. */
	readonly greatestPitch: number | null;
	/** Null where the preferred edge distance is used. */
	readonly endMargin: number | null;
	readonly stock: readonly StockSheet[];
	readonly kerf: number;
}

/** What is wrong, in one sentence, and the field it is about: `members.0.flange`. */
export interface Problem {
	readonly field: string;
	readonly says: string;
}
