/*
 * What the tools of a shop can make, and what is left of it: common practice. Families draw by it, and the facts in
 * sheets.ts say it.
 */

/** Degrees from flat: at more the leaf of a brake meets its nose, and a closer bend needs other tools. */
export const mostBend = 135;

/** Inches of flat that a leaf brake must have under its clamp to hold a leg. */
export const leastClamped = 1 / 4;

/** Inches of bar; what is shorter cannot be measured with a rule. */
export const leastRemnant = 1 / 64;
