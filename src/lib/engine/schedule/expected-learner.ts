import { type Memory, emptyMemory, recall, remember } from './memory.ts';
import type { SkillId, TaskKind } from './skill.ts';

/**
 * A learner who answers as expected: of ten tries at a recall of 0.7, seven are right, evenly spread.
 * No chance is drawn, so the same plan always has the same forecast.
 */
export class ExpectedLearner {
	readonly memories: Map<SkillId, Memory>;
	/** Expected right answers not yet given, by skill. */
	readonly #owed = new Map<SkillId, number>();

	constructor(memories: ReadonlyMap<SkillId, Memory>) {
		this.memories = new Map(memories);
	}

	/** One try at every skill of the kind; whether all were right. */
	answer(kind: TaskKind, day: number): boolean {
		return kind.skills.map((skill) => this.#try(skill, day)).every((right) => right);
	}

	#try(skill: SkillId, day: number): boolean {
		const memory = this.memories.get(skill) ?? emptyMemory;
		const owed = (this.#owed.get(skill) ?? 0.5) + recall(memory, day);
		const right = owed >= 1;
		this.#owed.set(skill, right ? owed - 1 : owed);
		this.memories.set(skill, remember(memory, right ? 'right' : 'wrong', day));
		return right;
	}
}
