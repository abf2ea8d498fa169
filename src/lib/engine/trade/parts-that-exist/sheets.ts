import { source } from '../source.ts';
import { type Fact, slack } from './fact.ts';
import { isStrongEnough } from './made-of.ts';
import { leastRemnant, mostBend } from './worked.ts';

/** Pounds that one person lifts: sheet is awkward to hold. */
const oneLifts = 35;

export const sheetFacts: readonly Fact[] = [
	{
		id: 'sheet.soft',
		says: 'Stressed skin, spars, ribs, stringers and bulkheads are not made of 1100, 3003 or 5052.',
		source: source('none', 'alloys for structure', 'practice'),
		holds: ({ alloy, story }) => (alloy === undefined ? null : isStrongEnough(story, alloy))
	},
	{
		id: 'lift.two',
		says: `Two people lift what weighs more than one lifts, ${oneLifts} lb.`,
		source: source('none', 'lifting by hand', 'practice'),
		holds: ({ story, weight }) =>
			weight !== undefined && /two people/i.test(story) ? weight > oneLifts : null
	},
	{
		id: 'bend.brake',
		says: `A leaf brake bends to about ${mostBend}° from flat.`,
		source: source('none', 'how far a leaf brake closes', 'practice'),
		holds: ({ bend }) => (bend === undefined ? null : bend <= mostBend + slack)
	},
	{
		id: 'bar.remnant',
		says: 'A remnant that is asked for can be measured with a rule: 1/64 in or more.',
		source: source('none', 'what is measured of a bar', 'practice'),
		holds: ({ remnant }) => (remnant === undefined ? null : remnant >= leastRemnant - slack)
	},
	{
		id: 'snips.gauge',
		says: 'Aviation snips cut aluminium up to 0.051 in.',
		source: source('general', 'ch. 11, p. 11-8; FAA-H-8083-31B, p. 4-13'),
		holds: ({ story, T }) => (T !== undefined && /snips/i.test(story) ? T <= 0.051 + slack : null)
	},
	{
		id: 'snips.caution',
		says: 'What is cut with snips has no caution about the shear.',
		source: source('none', 'the caution fits the tool', 'practice'),
		holds: ({ story, cautions = [] }) => (/snips/i.test(story) ? !cautions.includes('shear') : null)
	}
];
