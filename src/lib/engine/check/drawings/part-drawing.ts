import type { Drawing } from '../../figures/drawing.ts';
import { isList } from '../../quantity/value.ts';
import type { Checkup } from '../check.ts';
import { isGauge } from '../instruments.ts';
import { bars } from './bars.ts';
import { bendRadii } from './bend-radii.ts';
import { circles } from './circles.ts';
import { holeRow } from './hole-row.ts';
import { holesAtEdge } from './holes-at-edge.ts';
import { shopHeads } from './shop-heads.ts';

type Draw = (checkup: Checkup, width: number) => Drawing;

/** How the part of a check is drawn; lengths of anything else stand as bars. */
const draws: Readonly<Record<string, Draw>> = {
	'edge-distance': (checkup, width) => holesAtEdge(checkup, width, numberIn(checkup, 'D')),
	'shop-head-check': shopHeads,
	'drill-for-rivet': (checkup, width) => circles(checkup, width, { what: 'Hole', fill: 'paper' }),
	'rivet-diameter': shanks,
	'rivet-diameter-from-stack': shanks,
	'least-bend-radius': (checkup, width) => bendRadii(checkup, width, numberIn(checkup, 'T')),
	'rivet-row': (checkup, width) => {
		const [values] = checkup.items;
		const D = values?.['D'];
		const holes = values?.['measured'];
		return holeRow(checkup, width, {
			length: numberIn(checkup, 'length'),
			holes: isList(holes) ? holes.map(Number) : [],
			D: typeof D === 'number' ? D : null
		});
	}
};

/**
 * The part to scale, as it was measured, with what is out ringed; null where a gauge told no sizes.
 *
 * @param width in drawing units, of which a screen pixel is about one
 */
export function partDrawing(checkup: Checkup, width: number): Drawing | null {
	if (isGauge(checkup.instrument) || checkup.limits.length === 0) return null;
	return (draws[checkup.check.of.id] ?? bars)(checkup, width);
}

function shanks(checkup: Checkup, width: number): Drawing {
	return circles(checkup, width, { what: 'Rivet diameter', fill: 'rivet' });
}

function numberIn({ items }: Checkup, key: string): number {
	const value = items[0]?.[key];
	if (typeof value !== 'number') throw new Error(`${key} is no number of the check`);
	return value;
}
