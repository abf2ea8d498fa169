import { topic } from '../card.ts';

export const layout = topic('layout', 'Edge distance and layout', 2, [
	['ED', 5, 'edge-distance', 'Edge distance'],
	['LR', 6, 'rivet-row', 'A row of rivets'],
	['LF', 7, 'lap-width', 'Width of a lap']
]);
