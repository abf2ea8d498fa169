/** A skill is one step of one method, written `method/step`. */
export type SkillId = string;

/** What the scheduler must know about a skill. */
export interface Skill {
	readonly id: SkillId;
	/** The topic the plan page counts it under. */
	readonly topic: string;
	/** Skills that must have been met before this one is met for the first time. */
	readonly needs: readonly SkillId[];
}

/** A sort of task that can be drawn again and again with new numbers: one family at one level. */
export interface TaskKind {
	readonly id: string;
	/** Two neighbours of a run never share a family while another can be had. */
	readonly family: string;
	/** The skill the task is chosen for; one of `skills`. */
	readonly aim: SkillId;
	/** Every skill an answer may give evidence about, in the order of the steps. */
	readonly skills: readonly SkillId[];
	/** As many tasks of average length as it takes as long as, where these are two or more. */
	readonly length?: number;
}

/** All that can be practised. */
export interface Syllabus {
	readonly skills: readonly Skill[];
	readonly kinds: readonly TaskKind[];
}

/** How long things take this learner, in seconds. */
export interface Pace {
	/** A task of average length. */
	readonly task: number;
	/** Reading the worked task at a first meeting, on top of the task itself. */
	readonly worked: number;
	/** Tasks aimed at a skill, where that is known; `task` elsewhere. */
	readonly bySkill?: ReadonlyMap<SkillId, number>;
}
