/**
 * Slips by id that were added when tasks of their steps had been given out. No draw hangs on them: task
 * numbers keep their numbers. A family that raises its `rev` may let its own count.
 */
export const addedSlips: ReadonlySet<string> = new Set(
	`twoRowsUp twoRowsDown twoColumnsLeft twoColumnsRight twiceUnstocked bothRoundedOnce
	twoAsOne fiveD twoRows flatLeftOut lastFlatLeftOut lengthTwice
	upNoKerf diameterOneUnder one32ndOver kerfEighth kerfSixteenth usedEighth
	usedSixteenth gaugeOver gaugeUnder densityAboutSteel fourEdges navyForRadius
	twiceAllowance rowTooFew columnTooFew quarterD marginAndPitch lengthOver32
	dashIn64ths lengthOneUnder lengthForSize thicknessForR
	usedTwoKerfs`.split(/\s+/)
);
