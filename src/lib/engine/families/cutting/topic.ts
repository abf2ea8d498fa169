import { topic } from '../card.ts';

export const cutting = topic('cutting', 'Cutting', 3, [
	['CB', 3, 'blank-size', 'Size of a blank'],
	['CS', 3, 'pieces-per-sheet', 'Blanks from a sheet'],
	['CP', 3, 'bar-pieces', 'Pieces from a bar'],
	['CW', 2, 'sheet-weight', 'Weight of a sheet']
]);
