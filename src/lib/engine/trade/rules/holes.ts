import { source } from '../source.ts';
import { airframe, type Rules } from './rule.ts';

export const holes = {
	'drill.rivet': {
		says: 'The final drill is a little over the shank: No. 40 for 3/32, No. 30 for 1/8, No. 21 for 5/32, No. 11 for 3/16, F for 1/4. The pilot printed beside it is the nominal rivet size.',
		sources: [airframe('p. 4-39, Fig. 4-90')]
	},
	'drill.sizes': {
		says: 'Number and letter drills have fixed sizes; the chart gives them in decimals.',
		sources: [airframe('p. 4-18, Fig. 4-47')]
	},
	'drill.fraction': {
		says: 'Fraction drills step by 1/64 in; number and letter drills stand between them.',
		sources: [airframe('p. 4-18, Fig. 4-47'), source('none', 'plain arithmetic', 'worked')]
	},
	'drill.pilot-ream': {
		says: 'A hole that is finished to size is first drilled smaller, with the next fraction drill under it.',
		sources: [source('none', 'pilot before the finished size', 'practice')]
	},
	'drill.clearance': {
		says: 'The hole is the smallest that lets the rivet in easily, about 0.003 in over the shank.',
		sources: [airframe('p. 4-39')]
	},
	'drill.next-rivet': {
		says: 'An enlarged or damaged hole is drilled or reamed for the next larger rivet, 1/32 in over, with edge distance and pitch kept.',
		sources: [source('ac43', 'ch. 4, par. 4-57b, p. 4-16'), airframe('pp. 4-44, 4-45')]
	},
	'drill.removal': {
		says: 'A universal head is drilled off with a drill 1/32 in under the shank, to the depth of the head only. AC 43.13-1B (ch. 4, p. 4-12) drills the size of the rivet.',
		sources: [airframe('pp. 4-44 to 4-46, Fig. 4-98')]
	},
	'drill.removal-tight': {
		says: 'A shank that stays tight once its head is off is drilled about two thirds through the stack, then driven out.',
		sources: [airframe('p. 4-45')]
	}
} as const satisfies Rules;
