import { drillForRivet } from '../../../methods/drill-for-rivet.ts';
import { edgeDistance } from '../../../methods/edge-distance.ts';
import { rivetsInAll } from '../../../methods/pieces/rivets-in-all.ts';
import { rivetDiameterFromStack } from '../../../methods/rivet-diameter-from-stack.ts';
import { rivetLength } from '../../../methods/rivet-length.ts';
import { rivetRow } from '../../../methods/rivet-row.ts';
import { count } from '../../../quantity/kinds.ts';
import { given } from '../../../solver/given.ts';
import { join, part } from '../../../solver/join.ts';
import { method } from '../../../solver/write.ts';

/* A panel is worked by the methods of its parts, each fed by those before it. */

const inAll = method({
	id: 'rivets-in-all',
	title: 'Rivets of a panel',
	given: { rows: given(count, 'Rows'), count: given(count, 'Rivets in each row') },
	steps: { total: rivetsInAll }
});

const diameter = part(rivetDiameterFromStack);

/** Whoever has the wrong layer of two stacks has hardly looked for the thinnest, but at the other stack. */
const diameterOfTwo = part(
	rivetDiameterFromStack,
	{},
	{},
	{ rare: { outerLeftOut: false, thinnest: true } }
);
const drills = part(drillForRivet, { D: 'diameter' }, {}, { until: 'final' });

const length = part(rivetLength, { D: 'diameter' });

const lengthA = part(
	rivetLength,
	{ D: 'diameter' },
	{},
	{ labels: { grip: 'Grip at A', needed: 'Length needed at A', length: 'Rivet length at A' } }
);

const lengthB = part(
	rivetLength,
	{ D: 'diameter' },
	{ layers: 'layersB', grip: 'gripB', needed: 'neededB', length: 'lengthB' },
	{ labels: { grip: 'Grip at B', needed: 'Length needed at B', length: 'Rivet length at B' } }
);

/** How far from the edges the holes stand, how far apart, and how many they are. */
const holes = [
	part(edgeDistance, { D: 'diameter' }),
	part(
		rivetRow,
		{ endMargin: 'preferred' },
		{ length: 'rowLength' },
		{ until: 'pitch', labels: { count: 'Rivets in each row' } }
	),
	part(inAll, { count: 'count' })
];

/** The parts of each method, in the order of the work. */
export const partsOf = {
	rivets: [diameter, length, drills, part(inAll)],
	rows: [diameter, length, drills, ...holes],
	// One diameter for both stacks, by the thicker one, and a length for each.
	twoStacks: [diameterOfTwo, lengthA, lengthB, drills, ...holes]
};

export const panelRivets = join({
	id: 'panel-rivets',
	title: 'Rivets of a panel, from stack to number',
	parts: partsOf.rivets
});

export const panelRows = join({
	id: 'panel-rows',
	title: 'Rows of a panel, from stack to rivets',
	parts: partsOf.rows
});

export const panelTwoStacks = join({
	id: 'panel-two-stacks',
	title: 'Rows of a panel through two stacks',
	parts: partsOf.twoStacks
});
