import { topic } from '../card.ts';

export const cutting = topic('cutting', 'Cutting', 3, [
	['CB', 5, 'blank-size', 'Size of a blank'],
	['CS', 8, 'pieces-per-sheet', 'Blanks from a sheet'],
	['CP', 5, 'bar-pieces', 'Pieces from a bar'],
	['CW', 5, 'sheet-weight', 'Weight of a sheet']
]);
