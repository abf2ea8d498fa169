import { topic } from '../card.ts';

export const bends = topic('bends', 'Bends', 4, [
	['BS', 4, 'setback', 'Setback'],
	['BL', 4, 'setback-from-legs', 'Setback from the angle between the legs'],
	['BA', 4, 'bend-allowance', 'Bend allowance'],
	['BW', 3, 'developed-width', 'Developed width'],
	['BG', 3, 'sight-line', 'Sight line for the brake'],
	['BE', 2, 'finished-leg', 'Finished leg from a flat'],
	['BR', 3, 'least-bend-radius', 'Minimum bend radius']
]);
