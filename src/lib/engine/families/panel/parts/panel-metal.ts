import type { Drawing } from '../../../figures/drawing.ts';
import type { Say, SeenBy } from '../../family.ts';
import { rivetInHole } from '../../holes/parts/rivet-in-hole.ts';
import { holeByEdge } from '../../layout/parts/hole-by-edge.ts';
import { rowLaidOut } from '../../layout/parts/row-laid-out.ts';
import { rivetByLength } from '../../rivets/parts/rivet-by-length.ts';
import { rivetInStack } from '../../rivets/parts/rivet-in-stack.ts';

const size = (one: unknown) => Number(one);

/** What an answer does to the panel, drawn as in the task of that step; null where it is no size. */
export function panelMetal(seen: SeenBy, say: Say): Drawing | null {
	const layersOf = (key: string) =>
		Array.isArray(seen.given[key]) ? seen.given[key].map(size) : [];
	const { key } = seen;
	switch (key) {
		case 'diameter':
			return rivetInStack(layersOf('layers'), seen);
		case 'length':
		case 'lengthB':
			return rivetByLength(
				layersOf(key === 'length' ? 'layers' : 'layersB'),
				seen.at('diameter'),
				seen
			);
		case 'final':
			return rivetInHole(seen, seen.at('diameter'));
		case 'least':
		case 'preferred':
		case 'greatest':
			return holeByEdge(seen, say);
		case 'spaces':
		case 'count':
		case 'pitch':
			return rowLaidOut(seen, size(seen.given.rowLength), seen.at('preferred'));
		default:
			return null;
	}
}
