import { number } from '../../quantity/kinds.ts';
import { source } from '../source.ts';
import { byName, byNumber } from '../table/axis.ts';
import { holding, table } from '../table/table.ts';
import { asPrinted } from '../table/writing.ts';

/** Least pitch in rivet diameters, by the rows of a joint and the head. */
export const rivetPitches = table({
	id: 'rivet-pitches',
	title: 'Minimum rivet spacing in a row, in rivet diameters',
	topic: 'layout',
	called: 'the spacing figure',
	source: source('airframe', 'ch. 4, p. 4-34, Fig. 4-80'),
	rows: byNumber('Rows of rivets', [1, 2, 3]),
	columns: byName(
		'Head',
		['protruding', 'countersunk'].map((head) => [head])
	),
	holds: holding<number>(number, asPrinted, ' D'),
	cells: [
		[3, 3.5],
		[4, 4.5],
		[3, 3.5]
	]
});
