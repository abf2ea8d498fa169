import { topic } from '../card.ts';

export const bends = topic('bends', 'Bends', 4, [
	['BS', 5, 'setback', 'Setback'],
	['BL', 5, 'setback-from-legs', 'Setback from the angle between the legs'],
	['BA', 6, 'bend-allowance', 'Bend allowance'],
	['BW', 4, 'developed-width', 'Developed width'],
	['BG', 6, 'sight-line', 'Sight line for the brake'],
	['BE', 6, 'finished-leg', 'Finished leg from a flat'],
	['BR', 6, 'least-bend-radius', 'Minimum bend radius']
]);
