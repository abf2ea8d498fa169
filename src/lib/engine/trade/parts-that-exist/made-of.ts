/*
 * What a part in a story is made of, where one sheet is told: gauges and alloys of light aircraft, common
 * practice. Families draw by it, and the facts in gauges.ts and sheets.ts say it.
 */

type Range = readonly [word: RegExp, least: number, most: number];

/** Inches, by a word of the story. */
const gauges: readonly Range[] = [
	[/from a rib|rib clip|blank of a clip/i, 0.02, 0.05],
	[
		/cowl|fairing|duct|baffle|lining|trim\b|scoop|deflector|cover\b|wire bundle|drip edge|seal\b/i,
		0.016,
		0.06
	],
	[/skin|door|access panel|radio|fuel line|instrument|\ba rib\b/i, 0.016, 0.063],
	[/seat|battery|gusset|hinge|pulley|spar\b|sill|floor|firewall|shelf/i, 0.025, Infinity]
];

/** Stressed skin and what carries loads. */
const stressed =
	/stressed skin|(wing|fuselage|flap|tail) skin|spar\b|stringer|bulkhead|\brib\b|longeron/i;

const soft = /^(1100|3003|5052)\b/;

/** Whether the part in a story is made of sheet so thick, inches. */
export function isUsualGauge(story: string, T: number): boolean {
	return gauges.every(
		([word, least, most]) => !word.test(story) || (T >= least - 1e-9 && T <= most + 1e-9)
	);
}

/** Whether the part in a story is made of an alloy: no stressed one of a soft alloy. */
export function isStrongEnough(story: string, alloy: string): boolean {
	return !soft.test(alloy) || !stressed.test(story);
}
