/*
 * A hole that is drilled in two, or drilled and reamed. Apart from the facts in sheets.ts, whose sentences no task
 * needs before it can be answered.
 */

/** Least that the first drill is under the size wanted, inches: FAA-H-8083-30B, ch. 11, p. 11-13. */
export const leastUnder = 0.003;

/** Whether the next fraction drill below a size, inches, leaves the second drill or the reamer enough to cut. */
export function leavesEnough(size: number): boolean {
	return size % (1 / 64) >= leastUnder - 1e-9;
}

/** Holes from this size up get a pilot hole, inches: FAA-H-8083-31B, ch. 4, pp. 4-16 and 4-19. */
export const leastPiloted = 3 / 16;
