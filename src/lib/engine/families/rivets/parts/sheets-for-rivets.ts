import { rivetDashes, sheetThicknesses } from '../../../trade/stock.ts';

/**
 * Stocked sheets whose rivet by three times the thickness is stocked too: 0.063 and 0.071 in
 * come out at 7/32 in and 0.090 in at 9/32 in, which the bins do not hold.
 */
export const thicknessesForRivets = sheetThicknesses.filter((thickness) => {
	const dash = Math.max(3, Math.ceil(96 * thickness - 1e-9));
	return rivetDashes.some((stocked) => stocked === dash);
});
