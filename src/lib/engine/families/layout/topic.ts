import { topic } from '../card.ts';

export const layout = topic('layout', 'Edge distance and layout', 2, [
	['ED', 1, 'edge-distance', 'Edge distance'],
	['LR', 1, 'rivet-row', 'A row of rivets'],
	['LF', 1, 'lap-width', 'Width of a lap']
]);
