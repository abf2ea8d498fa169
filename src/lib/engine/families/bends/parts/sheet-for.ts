import { type BendSheet, bendSheets } from '../../../trade/nose-bars.ts';
import { isStrongEnough, isUsualGauge } from '../../../trade/parts-that-exist/made-of.ts';
import type { Random } from '../../random.ts';

/** A sheet that the part in a story is bent from. */
export function sheetFor(random: Random, story: string): BendSheet {
	return random.pick(
		bendSheets.filter(({ alloy, T }) => isUsualGauge(story, T) && isStrongEnough(story, alloy))
	);
}
