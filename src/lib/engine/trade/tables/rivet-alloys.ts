import { alloyOf } from '../alloy.ts';
import { word } from '../../quantity/kinds.ts';
import { source } from '../source.ts';
import { byName } from '../table/axis.ts';
import { lookUp } from '../table/look-up.ts';
import { holding, measure, measures, table } from '../table/table.ts';
import { asPrinted } from '../table/writing.ts';

/** Letters of solid rivets by alloy; 3003, which shares the letter A with 1100, is left out. */
export const rivetAlloys = table({
	id: 'rivet-alloys',
	title: 'Alloy letters of solid rivets',
	topic: 'rivets',
	called: 'the list of rivet alloys',
	source: source('airframe', 'ch. 4, p. 4-33, Fig. 4-77'),
	rows: byName('Alloy', [['1100'], ['5056'], ['2117'], ['2017'], ['2024']], {
		means: alloyOf
	}),
	...measures({ letters: measure('Letters', holding<string>(word, asPrinted)) }),
	cells: [['A'], ['B'], ['AD'], ['D'], ['DD']]
});

/** Letters of a rivet alloy: `AD` for 2117, or for 2117-T4. */
export const letters = lookUp(rivetAlloys, {
	name: 'letters',
	column: 'letters',
	shown: 'letters of',
	words: { above: 'the letters of another alloy', below: 'the letters of another alloy' }
});
