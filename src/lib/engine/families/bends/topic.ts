import { topic } from '../card.ts';

export const bends = topic('bends', 'Bends', 4, [
	['BS', 1, 'setback', 'Setback'],
	['BL', 1, 'setback-from-legs', 'Setback from the angle between the legs'],
	['BA', 1, 'bend-allowance', 'Bend allowance'],
	['BW', 1, 'developed-width', 'Developed width'],
	['BG', 1, 'sight-line', 'Sight line for the brake'],
	['BE', 1, 'finished-leg', 'Finished leg from a flat'],
	['BR', 1, 'least-bend-radius', 'Least bend radius']
]);
