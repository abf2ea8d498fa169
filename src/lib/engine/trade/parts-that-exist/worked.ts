/*
 * What the tools of a shop can make, and what is left of it: common practice where no document is named.
 * Families draw by it, and the facts in sheets.ts say it.
 */

/** Degrees from flat: at more the leaf of a brake meets its nose, and a closer bend needs other tools. */
export const mostBend = 135;

/** Inches of flat that a leaf brake must have under its clamp to hold a leg. */
export const leastClamped = 1 / 4;

/** Inches of bar; what is shorter cannot be measured with a rule. */
export const leastRemnant = 1 / 64;

/** Least that a first drill or a reamer is under the size wanted, inches: FAA-H-8083-30B, p. 11-13. */
export const leastUnder = 0.003;

/** Whether the next fraction drill below a size, inches, leaves the second drill or the reamer enough to cut. */
export function leavesEnough(size: number): boolean {
	return size % (1 / 64) >= leastUnder - 1e-9;
}
