import type { SkillId, Syllabus, TaskKind } from './skill.ts';

/** A kind of task seen as practice for one skill. */
export interface Practice {
	readonly kind: TaskKind;
	readonly skill: SkillId;
	/** Where the kind stands among the kinds for the skill, from 0 easiest to 1 hardest. */
	readonly rung: number;
}

/** The syllabus, laid out for planning. */
export interface PracticeMap {
	readonly practices: readonly Practice[];
	readonly needs: ReadonlyMap<SkillId, readonly SkillId[]>;
	readonly topicOf: ReadonlyMap<SkillId, string>;
	/** How many steps every topic has. */
	readonly stepsIn: ReadonlyMap<string, number>;
	/** Steps that can be met in a task of average length. */
	readonly inShort: ReadonlySet<SkillId>;
}

/**
 * Every way to practise every skill: the kinds that aim at it, in the order of the syllabus, which
 * is from easy to hard. A step that no kind aims at is practised by the kinds that exercise it, and by
 * long ones only where there are no others.
 */
export function mapPractice(syllabus: Syllabus): PracticeMap {
	const needs = new Map(syllabus.skills.map((skill) => [skill.id, skill.needs]));
	const practices = syllabus.skills.flatMap(({ id }) => {
		const aimed = syllabus.kinds.filter((kind) => kind.aim === id);
		const kinds = aimed.length > 0 ? aimed : shorter(syllabus.kinds, id);
		const last = Math.max(1, kinds.length - 1);
		return kinds.map((kind, i) => ({ kind, skill: id, rung: i / last }));
	});
	const topicOf = new Map(syllabus.skills.map(({ id, topic }) => [id, topic]));
	const stepsIn = new Map<string, number>();
	for (const topic of topicOf.values()) stepsIn.set(topic, (stepsIn.get(topic) ?? 0) + 1);
	const short = syllabus.kinds.filter(({ length = 1 }) => length === 1);
	const inShort = new Set(short.flatMap(({ skills }) => skills));
	return { practices, needs, topicOf, stepsIn, inShort };
}

function shorter(kinds: readonly TaskKind[], skill: SkillId): readonly TaskKind[] {
	const all = kinds.filter(({ skills }) => skills.includes(skill));
	const short = all.filter(({ length = 1 }) => length === 1);
	return short.length > 0 ? short : all;
}
