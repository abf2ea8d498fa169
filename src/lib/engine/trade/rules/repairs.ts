import { source } from '../source.ts';
import { airframe, type Rules } from './rule.ts';

export const repairs = {
	'repair.per-inch': {
		says: 'Rivets per inch of width come out of a table, by sheet thickness and rivet diameter.',
		sources: [
			airframe('pp. 4-86, 4-88, Fig. 4-169'),
			source('ac43', 'ch. 4, Table 4-10, p. 4-38', 'quoted')
		]
	},
	'repair.each-side': {
		says: 'Width of the break times rivets per inch, rounded up to a whole rivet, is the number on each side of it.',
		sources: [source('ac43', 'ch. 4, pars. 4-58g and 4-62, and Fig. 4-20, p. 4-41', 'quoted')]
	}
} as const satisfies Rules;
