import { number } from '../../quantity/kinds.ts';
import { source } from '../source.ts';
import { byName } from '../table/axis.ts';
import { lookUp } from '../table/look-up.ts';
import { holding, measure, measures, table } from '../table/table.ts';
import { asPrinted } from '../table/writing.ts';

/** Number of the standard behind MS20, by the head. */
export const rivetHeads = table({
	id: 'rivet-heads',
	title: 'Head numbers of solid rivets, after MS20',
	topic: 'rivets',
	called: 'the list of heads',
	source: source('general', 'ch. 7, pp. 7-52 to 7-56'),
	rows: byName<string>('Head', [['universal'], ['countersunk']]),
	...measures({ number: measure('Number', holding<number>(number, asPrinted)) }),
	cells: [[470], [426]]
});

/** Number of the head standard: 470 for `universal`, 426 for `countersunk`. */
export const headNumber = lookUp(rivetHeads, {
	name: 'headNumber',
	column: 'number',
	shown: 'number of',
	words: { above: 'the number of the other head', below: 'the number of the other head' }
});
