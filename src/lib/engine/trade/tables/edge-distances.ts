import { number } from '../../quantity/kinds.ts';
import { source } from '../source.ts';
import { byName } from '../table/axis.ts';
import { lookUp } from '../table/look-up.ts';
import { holding, measure, measures, table } from '../table/table.ts';
import { asPrinted } from '../table/writing.ts';

/** Least edge distance in rivet diameters; what is preferred is 1/16 in more. */
export const edgeDistances = table({
	id: 'edge-distances',
	title: 'Least edge distance, in rivet diameters',
	topic: 'layout',
	called: 'the edge distance figure',
	source: source('airframe', 'ch. 4, pp. 4-33, 4-34, Fig. 4-79'),
	rows: byName<string>('Head', [['protruding'], ['countersunk']]),
	...measures({ least: measure('Least, × D', holding<number>(number, asPrinted)) }),
	cells: [[2], [2.5]]
});

/** Least edge distance in rivet diameters for a `protruding` or `countersunk` head. */
export const leastEdge = lookUp(edgeDistances, {
	name: 'leastEdge',
	column: 'least',
	shown: 'factor',
	words: { above: 'the least for the other head', below: 'the least for the other head' }
});
