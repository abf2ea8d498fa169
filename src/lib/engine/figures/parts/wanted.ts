import type { Shape } from '../drawing.ts';
import { type BentSheet, outlineOf, type Section, scaleToFit, section } from './bent.ts';
import { across, down } from '../size.ts';

/** How many times its own size a flat may grow in a drawing. */
const longest = 1.8;

/**
 * The part as it comes out, and the outline of the wanted one from the same first edge. Flats
 * beyond all measure are cut short so that the drawing stays on its sheet.
 */
export function againstWanted(
	got: BentSheet,
	wanted: BentSheet,
	start: number
): { part: Section; outline: Shape } {
	const scale = scaleToFit(wanted, across(210), down(150), start);
	const most = Math.max(...wanted.flats) * longest;
	const flats = got.flats.map((flat) => Math.min(Math.max(flat, 0), most));
	const part = section({ ...got, flats }, scale, start);
	return { part, outline: outlineOf(section(wanted, scale, start)) };
}
