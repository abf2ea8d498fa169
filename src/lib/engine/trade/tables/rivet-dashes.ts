import { fraction } from '../../quantity/kinds.ts';
import { source } from '../source.ts';
import { rivetDashes } from '../stock.ts';
import { byNumber } from '../table/axis.ts';
import { holding, measure, measures, table } from '../table/table.ts';
import { asNumber } from '../table/writing.ts';

const dashes = Array.from({ length: 14 }, (_, i) => i + 3);
const inFractions = holding<number>(fraction, asNumber(fraction));
const stocked = new Set<number>(rivetDashes);

/** What the two dash numbers of a rivet number count; diameters only of rivets that have a drill. */
export const dashNumbers = table({
	id: 'rivet-dashes',
	title: 'Rivet sizes by dash number, as in MS20470AD4-5',
	topic: 'rivets',
	called: 'the list of dash numbers',
	source: source('airframe', 'ch. 4, p. 4-31, Fig. 4-75'),
	rows: byNumber('Dash number', dashes),
	...measures({
		diameter: measure('First: diameter, in', inFractions),
		length: measure('Second: length, in', inFractions)
	}),
	cells: dashes.map((dash) => [stocked.has(dash) ? dash / 32 : null, dash / 16])
});
