import { source, type Source } from './source.ts';

/** A rule of the trade, in our words, with the place it stands in. */
export interface Rule {
	readonly says: string;
	readonly sources: readonly Source[];
}

const airframe = (at: string) => source('airframe', `ch. 4, ${at}`);

const rivets = {
	'diameter.three-t': {
		says: 'The rivet is three times as thick as the thicker sheet; take the next larger size.',
		sources: [airframe('pp. 4-32, 4-33'), source('ac43', 'ch. 4, par. 4-58g(2)(a), p. 4-27')]
	},
	'diameter.least': {
		says: 'A rivet under 3/32 in is never used in a part that carries stress.',
		sources: [airframe('p. 4-32')]
	},
	'length.grip': {
		says: 'The grip is the thickness of everything the rivet passes through.',
		sources: [airframe('p. 4-32, Fig. 4-76')]
	},
	'length.shank': {
		says: 'The shank stands 1.5 D past the grip to form the shop head.',
		sources: [airframe('p. 4-32, Fig. 4-76')]
	},
	'length.up': {
		says: 'Take the next stocked length up; lengths step by 1/16 in.',
		sources: [
			source('tm10', 'par. 5-6(2)'),
			source('navedtra14315', 'ch. 3, rivet identification code')
		]
	},
	'head.wanted': {
		says: 'A shop head of an A, AD, B or DD rivet is 1.5 D across and 0.5 D high.',
		sources: [airframe('p. 4-32, Fig. 4-76')]
	},
	'head.limits': {
		says: 'For A, AD, B and DD rivets the shop head is between 1.25 D and 1.66 D across, and between 0.33 D and 0.66 D high.',
		sources: [airframe('p. 4-32, Fig. 4-76')]
	},
	'head.judged': {
		says: 'Driving on spreads a head and flattens it: one that is too narrow or too high is driven more, one that is too wide or too flat is replaced.',
		sources: [airframe('p. 4-44, Fig. 4-97'), source('none', 'driving on', 'practice')]
	},
	'head.universal': {
		says: 'A universal head is 2 D across and 0.425 D high.',
		sources: [airframe('p. 4-31, Fig. 4-74')]
	},
	'number.code': {
		says: 'A rivet number gives the standard and head, the alloy letters, the diameter in 32nds of an inch, then the length in 16ths.',
		sources: [
			airframe('p. 4-31, Fig. 4-75'),
			source('navedtra14315', 'ch. 3, rivet identification code')
		]
	},
	'number.head': {
		says: 'MS20470 is the universal head, MS20426 the 100° countersunk head.',
		sources: [
			source('general', 'ch. 7, pp. 7-52 to 7-56'),
			source('ac43', 'ch. 4, par. 4-57a(4), p. 4-16')
		]
	},
	'number.alloy': {
		says: 'The letters name the alloy: A 1100, AD 2117, D 2017, DD 2024, B 5056.',
		sources: [airframe('p. 4-33, Fig. 4-77'), source('general', 'ch. 7, p. 7-56')]
	}
} as const satisfies Record<string, Rule>;

const layout = {
	'edge.least': {
		says: 'Least edge distance: 2 D for a protruding head, 2.5 D for a countersunk one.',
		sources: [airframe('pp. 4-33, 4-34, Fig. 4-79'), source('al0992', 'ch. 2, p. 59')]
	},
	'edge.greatest': {
		says: 'Greatest edge distance: 4 D. Farther in, the edge can lift.',
		sources: [airframe('pp. 4-33, 4-34'), source('al0992', 'ch. 2, p. 59')]
	},
	'edge.preferred': {
		says: 'Preferred edge distance: the least plus 1/16 in, so that the hole can later go oversize.',
		sources: [airframe('p. 4-34, Fig. 4-79')]
	},
	'row.ends': {
		says: 'A row is laid out by its end distances first; the pitch is then stepped off between them.',
		sources: [airframe('pp. 4-34, 4-35, Fig. 4-81')]
	},
	'row.spaces': {
		says: 'A row is divided into equal spaces, none wider than the greatest pitch; it has one rivet more than spaces.',
		sources: [source('none', 'plain geometry', 'worked')]
	},
	'row.pitch-least': {
		says: 'Rivets in a row stand at least 3 D apart.',
		sources: [airframe('p. 4-34'), source('ac43', 'ch. 4, par. 4-57, p. 4-17', 'quoted')]
	},
	'row.pitch-by-rows': {
		says: 'Least pitch by rows: protruding heads 3 D for one or three rows and 4 D for two; countersunk heads 3.5 D and 4.5 D.',
		sources: [airframe('p. 4-34, Fig. 4-80')]
	},
	'rows.apart': {
		says: 'Rows stand 75 percent of the pitch apart, and never closer than 2.5 D.',
		sources: [airframe('p. 4-34, Fig. 4-81'), source('tm10', 'par. 5-6(3)(b)')]
	},
	'rows.width': {
		says: 'A lap is as wide as an edge distance on both sides and the spaces between its rows.',
		sources: [source('none', 'plain geometry', 'worked')]
	}
} as const satisfies Record<string, Rule>;

const bends = {
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
		says: 'Setback is K times radius plus thickness.',
		sources: [airframe('pp. 4-59, 4-63'), source('ac43', 'ch. 4, par. 4-56b, p. 4-14')]
	},
	'bend.allowance': {
		says: 'Bend allowance is (0.01743 R + 0.0078 T) for every degree of bend.',
		sources: [airframe('p. 4-64')]
	},
	'bend.flat': {
		says: 'A flat is its mold line dimension less a setback at each bent end.',
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
		says: 'The least inside radius depends on alloy, temper and thickness; the drawing and the maker’s chart come first.',
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
} as const satisfies Record<string, Rule>;

const cutting = {
	'cut.trim': {
		says: 'Trim allowance is added on every side that is finished to the line.',
		sources: [airframe('pp. 4-77, 4-79'), source('none', '', 'practice')]
	},
	'cut.sheet': {
		says: 'Every cut but the last takes a kerf, so a kerf is added to the sheet and to the piece before dividing. Only whole pieces count.',
		sources: [source('none', 'plain arithmetic', 'worked')]
	},
	'cut.bar': {
		says: 'The last piece needs no cut behind it: a kerf is added to the bar and to the piece before dividing.',
		sources: [source('none', 'plain arithmetic', 'worked')]
	},
	'cut.density': {
		says: 'Nominal density in lb/in³: 1100 0.098, 2014 0.101, 2024 0.100, 3003 0.099, 5052 0.097.',
		sources: [source('aluminum', 'table 4.3')]
	},
	'cut.weight': {
		says: 'Weight is length times width times thickness times the density of the alloy.',
		sources: [source('none', 'plain arithmetic', 'worked')]
	}
} as const satisfies Record<string, Rule>;

const holes = {
	'drill.rivet': {
		says: 'The final drill is a little over the shank: No. 40 for 3/32, No. 30 for 1/8, No. 21 for 5/32, No. 11 for 3/16, F for 1/4. The pilot printed beside it is the nominal rivet size.',
		sources: [airframe('p. 4-39, Fig. 4-90')]
	},
	'drill.sizes': {
		says: 'Number and letter drills have fixed sizes; the chart gives them in thousandths.',
		sources: [airframe('p. 4-18, Fig. 4-47')]
	},
	'drill.fraction': {
		says: 'Fraction drills step by 1/64 in; the next one up is the first that is not smaller.',
		sources: [airframe('p. 4-18, Fig. 4-47'), source('none', 'plain arithmetic', 'worked')]
	},
	'drill.clearance': {
		says: 'The hole is the smallest that lets the rivet in easily, about 0.003 in over the shank.',
		sources: [airframe('p. 4-39')]
	},
	'drill.removal': {
		says: 'A universal head is drilled off with a drill 1/32 in under the shank, to the depth of the head only.',
		sources: [airframe('pp. 4-44 to 4-46, Fig. 4-98')]
	},
	'drill.removal-tight': {
		says: 'A shank that stays tight once its head is off is drilled about two thirds through the stack, then driven out.',
		sources: [airframe('p. 4-45')]
	}
} as const satisfies Record<string, Rule>;

/** The rules by topic, as they are listed for reading. */
export const rulesByTopic = { rivets, layout, bends, cutting, holes };

export const rules = { ...rivets, ...layout, ...bends, ...cutting, ...holes };

export type RuleId = keyof typeof rules;

export function ruleById(id: string): Rule {
	const rule = Object.hasOwn(rules, id) ? rules[id as RuleId] : undefined;
	if (!rule) throw new Error(`unknown rule: ${id}`);
	return rule;
}
