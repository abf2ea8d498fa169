import { topic } from '../card.ts';

/* A panel takes as long as three or four other tasks, so a paper has one for every three of a topic. */
export const panel = topic(
	'panel',
	'Panels',
	7,
	[['PN', 5, 'whole-panel', 'A panel, from stack to rivet count']],
	{ every: 3 }
);
