import { source } from '../source.ts';
import { airframe, type Rules } from './rule.ts';

export const layout = {
	'edge.least': {
		says: 'Minimum edge distance: 2D for a protruding head, 2.5D for a countersunk one.',
		sources: [airframe('pp. 4-33, 4-34, Fig. 4-79'), source('al0992', 'ch. 2, p. 59')]
	},
	'edge.greatest': {
		says: 'Maximum edge distance: 4D. Farther in, the edge can lift.',
		sources: [airframe('pp. 4-33, 4-34'), source('al0992', 'ch. 2, p. 59')]
	},
	'edge.preferred': {
		says: 'Preferred edge distance: the minimum plus 1/16 in, so that the hole can later go oversize.',
		sources: [airframe('p. 4-34, Fig. 4-79')]
	},
	'row.ends': {
		says: 'A row is laid out by its end margins first; the pitch is then stepped off between them.',
		sources: [airframe('pp. 4-34, 4-35, Fig. 4-81')]
	},
	'row.spaces': {
		says: 'A row is divided into equal spaces, none wider than the maximum pitch; it has one rivet more than it has spaces.',
		sources: [source('none', 'plain geometry', 'worked')]
	},
	'row.pitch-least': {
		says: 'Minimum pitch: 3D from rivet to rivet.',
		sources: [airframe('p. 4-34'), source('ac43', 'ch. 4, par. 4-57, p. 4-17', 'quoted')]
	},
	'row.pitch-by-rows': {
		says: 'Minimum pitch by rows: protruding heads 3D for one or three rows and 4D for two; countersunk heads 3.5D and 4.5D.',
		sources: [airframe('p. 4-34, Fig. 4-80')]
	},
	'rows.apart': {
		says: 'Rows stand 75 percent of the pitch apart, and never closer than 2.5D.',
		sources: [airframe('p. 4-34, Fig. 4-81'), source('tm10', 'par. 5-6(3)(b)')]
	},
	'rows.width': {
		says: 'A lap is as wide as an edge distance on both sides and the spaces between its rows.',
		sources: [source('none', 'plain geometry', 'worked')]
	}
} as const satisfies Rules;
