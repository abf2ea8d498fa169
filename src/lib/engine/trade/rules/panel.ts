import { source } from '../source.ts';
import type { Rules } from './rule.ts';

export const panel = {
	'panel.rivets': {
		says: 'A panel takes as many rivets as its rows have together, each row counted by itself.',
		sources: [source('none', 'plain counting', 'worked')]
	}
} as const satisfies Rules;
