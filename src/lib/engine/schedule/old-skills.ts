import type { SkillId } from './skill.ts';

/*
 * Records keep the ids that a skill and its slips had when they were written. A skill or slip that
 * is renamed, or joined with others into one, gets a line here and is read by its new id from then
 * on. Lines are only ever added: a backup may be as old as any of them.
 */

/** New id of a skill by its old one, written `method/step`; several old ones may become one. */
export const oldSkills: Readonly<Record<SkillId, SkillId>> = {
	'rivet-length/grip': 'piece/grip',
	'removal-drill/grip': 'piece/grip',
	'rivet-length/shank': 'piece/shank',
	'rivet-length/length': 'piece/stocked-length',
	'rivet-diameter/threeT': 'piece/three-t',
	'rivet-diameter-from-stack/threeT': 'piece/three-t',
	'rivet-diameter/diameter': 'piece/stocked-diameter',
	'rivet-diameter-from-stack/diameter': 'piece/stocked-diameter',
	'edge-distance/factor': 'piece/edge-factor',
	'lap-width/factor': 'piece/edge-factor',
	'edge-distance/least': 'piece/least-edge',
	'lap-width/edge': 'piece/least-edge',
	'setback/K': 'piece/setback-k',
	'setback-from-legs/K': 'piece/setback-k',
	'sight-line/K': 'piece/setback-k',
	'developed-width/K': 'piece/setback-k',
	'setback/setback': 'piece/setback',
	'setback-from-legs/setback': 'piece/setback',
	'sight-line/setback': 'piece/setback',
	'developed-width/setbacks': 'piece/setback',
	'sight-line/tangentLine': 'piece/flat',
	'developed-width/flats': 'piece/flat',
	'developed-width/allowances': 'piece/allowance',
	'drill-for-rivet/pilot': 'piece/pilot-drill',
	'drill-for-rivet/final': 'piece/final-drill',
	'rivet-number-reading/diameterDash': 'piece/diameter-dash',
	'rivet-number-reading/diameter': 'piece/dash-diameter'
};

/** New id of a slip by the old id of its skill and then its own old id. */
export const oldSlips: Readonly<Record<SkillId, Readonly<Record<string, string>>>> = {
	'developed-width/K': { legsAngle: 'legs' },
	'sight-line/tangentLine': { noSetback: 'moldLines' }
};

/**
 * What slips that are looked for no longer said, by their skill and id of now: they stand in records,
 * and the progress page tells them as before.
 */
const goneSlips: Readonly<Record<SkillId, Readonly<Record<string, string>>>> = {
	'piece/pilot-drill': {
		halfForPilot: 'Half the rivet: the pilot is the nominal rivet size.'
	},
	'sheet-weight/density': {
		specificGravity:
			'2.7 is the specific gravity of aluminium; the density is in pounds per cubic inch.'
	},
	'sheet-weight/weight': {
		twice: 'Both faces were counted: the thickness reaches from one to the other, once.'
	}
};

/** The sentence of a slip that is looked for no longer; empty when there is none. */
export function goneSlipSays(skill: SkillId, slip: string): string {
	return own(own(goneSlips, skill) ?? {}, slip) ?? '';
}

/** The id that a skill of a record goes by now. */
export function currentSkill(skill: SkillId): SkillId {
	return own(oldSkills, skill) ?? skill;
}

/** The id that a slip of a record goes by now; `skill` is the skill's id in that record. */
export function currentSlip(skill: SkillId, slip: string): string {
	return own(own(oldSlips, skill) ?? {}, slip) ?? slip;
}

/** What a table holds under a name from outside, which may be `constructor`. */
function own<T>(table: Readonly<Record<string, T>>, key: string): T | undefined {
	return Object.hasOwn(table, key) ? table[key] : undefined;
}
