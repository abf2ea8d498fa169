import { topic } from '../card.ts';

export const bends = topic('bends', 'Bends', 4, [
	['BS', 2, 'setback', 'Setback'],
	['BL', 2, 'setback-from-legs', 'Setback from the angle between the legs'],
	['BA', 2, 'bend-allowance', 'Bend allowance'],
	['BW', 2, 'developed-width', 'Developed width'],
	['BG', 2, 'sight-line', 'Sight line for the brake'],
	['BE', 1, 'finished-leg', 'Finished leg from a flat'],
	['BR', 2, 'least-bend-radius', 'Minimum bend radius']
]);
