import { topic } from '../card.ts';

export const cutting = topic('cutting', 'Cutting', 3, [
	['CB', 1, 'blank-size', 'Size of a blank'],
	['CS', 1, 'pieces-per-sheet', 'Blanks from a sheet'],
	['CP', 1, 'bar-pieces', 'Pieces from a bar'],
	['CW', 1, 'sheet-weight', 'Weight of a sheet']
]);
