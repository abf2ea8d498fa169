import type { Exact } from '../exact.ts';

/** What may go wrong in a kind of result besides the slips of a method. */
export interface Mistakes {
	readonly units: readonly UnitSlip[];
	/** Parts of the base unit that somebody may round a result to: 100 for hundredths. */
	readonly coarse: readonly number[];
	/** Parts that results on the way may have been rounded to. */
	readonly onTheWay: readonly number[];
	/** Whether it has digits that a point or two neighbours can be misplaced in. */
	readonly digits: boolean;
	/** Whether only certain sizes are made, so that a rounded one is none. */
	readonly stocked: boolean;
}

/** The right number, written in another unit or read on another scale. */
export interface UnitSlip {
	/** As `mark --json` tells it. */
	readonly id: string;
	/** What the typed number is multiplied by to be right. */
	readonly factor: Exact;
	readonly says: string;
	/** Whether it is another unit, and may so come beside a slip; else it is another scale. */
	readonly foreign?: boolean;
}

/** Words and plans: nothing to round or to convert. */
export const noMistakes: Mistakes = {
	units: [],
	coarse: [],
	onTheWay: [],
	digits: false,
	stocked: false
};

export const plainRoundings = [100, 10, 1];
