import { topic } from '../card.ts';

export const layout = topic('layout', 'Edge distance and layout', 2, [
	['ED', 2, 'edge-distance', 'Edge distance'],
	['LR', 3, 'rivet-row', 'A row of rivets'],
	['LF', 3, 'lap-width', 'Width of a lap']
]);
