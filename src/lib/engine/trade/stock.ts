import { source } from './source.ts';

/*
 * What stands on the shelf. Sizes are picked from these lists so that a task never asks for a
 * sheet, a rivet or a drill that cannot be had.
 */

/** Sheet thicknesses of the decimal series that aircraft sheet comes in, inches. */
export const sheetThicknesses = [
	0.016, 0.02, 0.025, 0.032, 0.04, 0.05, 0.063, 0.071, 0.08, 0.09
] as const;
export const sheetThicknessSource = source('airframe', 'ch. 4, p. 4-61, Fig. 4-124, rows');

/** Widths and lengths of stock sheet, inches. */
export const stockSheets = [
	{ width: 24, length: 48 },
	{ width: 36, length: 96 },
	{ width: 48, length: 96 },
	{ width: 48, length: 120 },
	{ width: 48, length: 144 }
] as const;
export const stockSheetSource = source('none', 'usual stock sheet sizes', 'practice');

/** Solid rivet diameters with a drill in the handbook's figure, in 32nds of an inch. */
export const rivetDashes = [3, 4, 5, 6, 8] as const;
export const rivetDashSource = source('airframe', 'ch. 4, p. 4-39, Fig. 4-90');

/** Inside bend radii a shop has nose bars or shims for, inches. */
export const noseRadii = [1 / 16, 3 / 32, 1 / 8, 5 / 32, 3 / 16, 1 / 4] as const;
export const noseRadiusSource = source('none', 'usual nose bars', 'practice');
