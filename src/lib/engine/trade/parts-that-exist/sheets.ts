import { source } from '../source.ts';
import { type Fact, slack } from './fact.ts';
import { isSuited } from './alloys.ts';
import { isOneBatch, mostInOneBatch } from './batch.ts';
import { isStrongEnough } from './made-of.ts';
import { leastPiloted, leastUnder } from './first-drill.ts';
import { leastClamped, leastRemnant, mostBend } from './worked.ts';

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
		id: 'sheet.heavy',
		says: '7075 and 2014 are for heavy structure and wing skins: cowls, covers, doors, flaps, floor panels, patches, fuselage skins and bent angles of light aircraft are of other alloys.',
		source: source(
			'airframe',
			'ch. 4, p. 4-30: 7075 is lower in fracture toughness; which parts of light aircraft it is not used for is common practice',
			'practice'
		),
		holds: ({ alloy, story, layers = [] }) =>
			alloy === undefined
				? null
				: isSuited(`${story} ${layers.map(({ name }) => name).join()}`, alloy)
	},
	{
		id: 'sheet.annealed',
		says: 'What is shaped of annealed 2024 is heat treated before it is used, and the task says so.',
		source: source('airframe', 'ch. 4, p. 4-57'),
		holds: ({ alloy, heatTreated }) => (alloy === '2024-O' ? (heatTreated ?? null) : null)
	},
	{
		id: 'hole.in-two',
		says: `A first drill is ${leastUnder} in or more under the size that the hole is finished to.`,
		source: source('general', 'ch. 11, p. 11-13: 0.003 to 0.007 in under before reaming'),
		holds: ({ inTwo: [first = 0, finished = 0] = [] }) =>
			finished === 0 ? null : finished - first >= leastUnder - slack
	},
	{
		id: 'hole.pilot',
		says: 'A hole under 3/16 in gets no pilot hole: a smaller drill goes first where a reamer, a bushing or a hole that is there asks for it.',
		source: source('airframe', 'ch. 4, pp. 4-16, 4-19'),
		holds: ({ story, inTwo }) =>
			inTwo === undefined || /reamed|bushing|opened up/.test(story)
				? null
				: inTwo[1] >= leastPiloted - slack
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
		id: 'bend.clamped',
		says: 'A leg that goes under the nose of a leaf brake has 1/4 in of flat or more to clamp.',
		source: source('none', 'what a leaf brake holds', 'practice'),
		holds: ({ clamped }) => (clamped === undefined ? null : clamped >= leastClamped - slack)
	},
	{
		id: 'bar.remnant',
		says: 'A remnant that is asked for can be measured with a rule: 1/64 in or more.',
		source: source('none', 'what is measured of a bar', 'practice'),
		holds: ({ remnant }) => (remnant === undefined ? null : remnant >= leastRemnant - slack)
	},
	{
		id: 'sheet.batch',
		says: `A sheet is cut into at most ${mostInOneBatch.shear} blanks on a shear and ${mostInOneBatch.saw} on a saw: what is smaller is cut from strips.`,
		source: source('none', 'blanks cut from one sheet in one go', 'practice'),
		holds: ({ blanks, cautions = [] }) =>
			blanks === undefined ? null : isOneBatch(blanks, cautions.includes('shear') ? 'shear' : 'saw')
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
