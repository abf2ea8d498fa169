import { topic } from '../card.ts';

export const panel = topic('panel', 'Panels', 7, [
	['PN', 1, 'whole-panel', 'A panel, from stack to last hole']
]);
