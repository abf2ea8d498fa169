import { type Memory, emptyMemory, isMet, recall, recallLeft, remember } from './memory.ts';
import type { SkillId, TaskKind } from './skill.ts';

/**
 * A learner who answers as expected. No chance is drawn, so the same plan always has the same
 * forecast. What a try leaves behind is the mean of what a right and a wrong answer would leave;
 * which tasks are missed, and so come back, is dealt evenly: of ten tries at a recall of 0.7, three.
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
		const chance = recall(memory, day);
		const owed = (this.#owed.get(skill) ?? 0.5) + chance;
		const right = owed >= 1;
		this.#owed.set(skill, right ? owed - 1 : owed);
		this.memories.set(skill, meanAfter(memory, chance, right, day));
		return right;
	}
}

/**
 * The memory to be expected after a try. It fades faster as far as it had faded, and not for a slip
 * of the hand: otherwise daily practice would seem to wear a skill out.
 */
function meanAfter(memory: Memory, chance: number, right: boolean, day: number): Memory {
	const [hit, miss] = [remember(memory, 'right', day), remember(memory, 'wrong', day)];
	const kept = isMet(memory) ? recallLeft(memory, day) : chance;
	const mean = (one: number, other: number, weight: number) => weight * one + (1 - weight) * other;
	return {
		stability: Math.exp(mean(Math.log(hit.stability), Math.log(miss.stability), kept)),
		difficulty: mean(hit.difficulty, miss.difficulty, kept),
		grasp: mean(hit.grasp, miss.grasp, chance),
		lastDay: hit.lastDay,
		missedDay: (right ? hit : miss).missedDay
	};
}
