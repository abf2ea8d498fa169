import type { Drawing } from '../../../figures/drawing.ts';
import { stripWithHoles } from '../../../figures/parts/hole-row.ts';
import type { SeenBy } from '../../family.ts';

/** More holes than this are not drawn: they would run into one another. */
const mostHoles = 60;

/** Outcomes where the row is as it was asked. */
const sound = ['right'];

/** Where an answer puts the holes. */
const holesAt: Readonly<Record<string, string>> = {
	spaces: 'holes',
	count: 'holes',
	pitch: 'stepped',
	positions: 'positions'
};

/** The row as the answer lays it out, or null where it has too many holes to draw. */
export function rowLaidOut(seen: SeenBy, length: number, endMargin: number): Drawing | null {
	const holes = seen.case === 'noRow' ? [] : seen.list(holesAt[seen.key] ?? '');
	if (holes.length > mostHoles) return null;
	return {
		title: seen.says,
		shapes: stripWithHoles({ length, endMargin, holes, off: !sound.includes(seen.case) })
	};
}
