import { source } from '../source.ts';
import { airframe, type Rules } from './rule.ts';

export const bends = {
	'bend.angle': {
		says: 'The bend angle counts from flat: 180° less the angle between the legs.',
		sources: [airframe('pp. 4-64, 4-66')]
	},
	'bend.k': {
		says: 'K is the tangent of half the bend angle; at 90° it is 1.',
		sources: [
			airframe('pp. 4-59, 4-60, Fig. 4-122'),
			source('ac43', 'ch. 4, par. 4-56b and Table 4-7')
		]
	},
	'bend.setback': {
		says: 'Setback: SB = K (R + T). All of T counts, for mold lines lie on the outside faces.',
		sources: [airframe('pp. 4-59, 4-63'), source('ac43', 'ch. 4, par. 4-56b, p. 4-14')]
	},
	'bend.allowance': {
		says: 'Bend allowance: BA = (0.01743 R + 0.0078 T) N, with N in degrees from flat.',
		sources: [airframe('p. 4-64')]
	},
	'bend.flat': {
		says: 'A flat is its mold line dimension less the setbacks. Outer leg: 1 setback; leg between bends: 2.',
		sources: [airframe('pp. 4-59, 4-63')]
	},
	'bend.developed-width': {
		says: 'Developed width is the flats plus the bend allowances. It is always less than the sum of the mold line dimensions.',
		sources: [airframe('pp. 4-59, 4-66')]
	},
	'bend.sight-line': {
		says: 'The sight line is one radius inside the bend tangent line that goes under the nose of the brake.',
		sources: [airframe('pp. 4-59, 4-66, 4-73, Fig. 4-131')]
	},
	'bend.least-radius': {
		says: 'The minimum inside radius depends on alloy, temper and thickness; the drawing and the maker’s chart come first.',
		sources: [airframe('pp. 4-60, 4-61, Fig. 4-124')]
	},
	'bend.chart-32nds': {
		says: 'The chart prints 32nds of an inch as two decimals: 0.16 in is 5/32 in.',
		sources: [airframe('p. 4-61')]
	},
	'bend.nose-bar': {
		says: 'The nose bar of the brake makes the inside radius; a bar that is too sharp is changed for a larger one or wrapped with shims.',
		sources: [airframe('pp. 4-68, 4-69, Figs. 4-136 to 4-138')]
	},
	'bend.grain': {
		says: 'Bend lines run across the grain where they can, so a blank that is bent may not be turned in the sheet.',
		sources: [airframe('p. 4-58')]
	}
} as const satisfies Rules;
