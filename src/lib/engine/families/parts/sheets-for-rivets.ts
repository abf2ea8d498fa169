import { isSuited } from '../../trade/parts-that-exist/alloys.ts';
import { rivetDashes, sheetThicknesses } from '../../trade/stock.ts';
import type { Random } from '../random.ts';

/** Whether the rivet by 3T is stocked: 0.063 in comes out at 7/32 in, which the bins do not hold. */
function hasRivet(thickness: number): boolean {
	const dash = Math.max(3, Math.ceil(96 * thickness - 1e-9));
	return rivetDashes.some((stocked) => stocked === dash);
}

/** Stocked sheets whose rivet by 3T is stocked too. */
export const thicknessesForRivets = sheetThicknesses.filter(hasRivet);

/** Sheet of the older gauge series that is still found in the rack, inches. */
const older = [0.036, 0.051, 0.081] as const;

/** Sheet sold by the millimetre. */
const metric = [0.5, 0.6, 0.8, 1, 1.2, 1.5, 2] as const;

/** One sheet as it is written on its label. */
export interface LabelledSheet {
	/** Inches. */
	readonly T: number;
	readonly label: string | null;
}

export const inchSheets: readonly LabelledSheet[] = [...thicknessesForRivets, ...older].map(
	(T) => ({ T, label: null })
);

export const metricSheets: readonly LabelledSheet[] = metric
	.map((size) => ({ T: size / 25.4, label: `${size.toFixed(1)} mm` }))
	.filter(({ T }) => hasRivet(T));

export const binsHold = ['Bins hold', '3/32, 1/8, 5/32, 3/16 and 1/4 in'] as const;

/** Sheets with a stocked rivet within 2.5T to 3T and one above; above the thicker ones is no 7/32 in. */
export const sheetsWithRange: readonly LabelledSheet[] = [
	...[0.032, 0.036, 0.05, 0.063, 0.064, 0.071, 0.072].map((T) => ({ T, label: null })),
	...[0.8, 1.2, 1.5, 1.6, 1.8].map((size) => ({ T: size / 25.4, label: `${size} mm` }))
];

const alloys = [
	'2014-T6',
	'clad 2014-T6',
	'2024-T3',
	'clad 2024-T3',
	'6061-T6',
	'7075-T6',
	'clad 7075-T6'
] as const;

/** Told beside a part and of no use for its rivet: the alloy of the sheet, one that such a part is made of. */
export function sheetAlloy(random: Random, part: string): readonly [string, string] {
	return ['Sheet', random.pick(alloys.filter((alloy) => isSuited(part, alloy)))];
}
