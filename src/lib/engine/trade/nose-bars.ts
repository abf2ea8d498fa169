import { TradeError } from '../solver/trade-function.ts';
import { noseRadii, sheetThicknesses } from './stock.ts';
import { minimumRadius } from './tables/least-radius.ts';

/** Room for radii that were computed. */
const slack = 1e-9;

/** Radius of the sharpest nose bar that is not under `radius`, inches. */
export function nextBar(radius: number): number {
	const bar = noseRadii.find((one) => one >= radius - slack);
	if (bar === undefined)
		throw new TradeError('No nose bar has so large a radius: wrap the nose with shims.');
	return bar;
}

/** Radius of the largest nose bar that is under `radius`, inches. */
export function barUnder(radius: number): number {
	const bar = noseRadii.filter((one) => one < radius - slack).at(-1);
	if (bar === undefined) throw new TradeError('No nose bar is sharper than that.');
	return bar;
}

/**
 * The chart prints 32nds as two decimals, so that 0.16 is 5/32 in (airframe handbook, ch. 4,
 * p. 4-61); a bar is compared with the 32nd that is meant.
 */
export function in32nds(printedRadius: number): number {
	return Math.round(printedRadius * 32) / 32;
}

/** A sheet with the nose bars it may be bent over, sharpest first. */
export interface BendSheet {
	readonly alloy: string;
	readonly T: number;
	readonly bars: readonly number[];
}

const bentAlloys = ['2024-T3', '6061-T6', '5052-H34', '2024-O', '6061-T4'] as const;

/** Gauges that brackets, clips and stiffeners are bent from, inches: common practice. */
const [thinnest, thickest] = [0.02, 0.08];

/** Every stocked sheet of these that a bar in the shop can bend, with the two sharpest bars allowed. */
export const bendSheets: readonly BendSheet[] = bentAlloys
	.flatMap((alloy) =>
		sheetThicknesses
			.filter((T) => T >= thinnest && T <= thickest)
			.map((T) => {
				const least = in32nds(minimumRadius.run(alloy, T));
				return { alloy, T, bars: noseRadii.filter((bar) => bar >= least).slice(0, 2) };
			})
	)
	.filter(({ bars }) => bars.length > 0);
