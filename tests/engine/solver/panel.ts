import { drillForRivet } from '../../../src/lib/engine/methods/drill-for-rivet.ts';
import { edgeDistance } from '../../../src/lib/engine/methods/edge-distance.ts';
import { rivetDiameterFromStack } from '../../../src/lib/engine/methods/rivet-diameter-from-stack.ts';
import { rivetLength } from '../../../src/lib/engine/methods/rivet-length.ts';
import { rivetRow } from '../../../src/lib/engine/methods/rivet-row.ts';
import { join, part } from '../../../src/lib/engine/solver/join.ts';

/** Sheets to diameter, length, drills, edge distance and the row: one job, five methods. */
export const panelParts = [
	part(rivetDiameterFromStack),
	part(rivetLength, { D: 'diameter' }),
	part(drillForRivet, { D: 'diameter' }),
	part(edgeDistance, { D: 'diameter' }),
	part(rivetRow, { endMargin: 'preferred' }, { length: 'pieceLength' })
];

export const panel = join({
	id: 'panel',
	title: 'A row of rivets, from sheet to hole',
	parts: panelParts
});
