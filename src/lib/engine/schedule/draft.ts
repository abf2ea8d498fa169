import type { Course, Portion } from './calendar.ts';
import { type Memory, emptyMemory, isMet } from './memory.ts';
import type { Policy } from './policy.ts';
import type { PracticeMap } from './practice.ts';
import type { RunItem } from './run.ts';
import type { Pace, SkillId, Syllabus, TaskKind } from './skill.ts';

/** What a run is planned from. The same input gives the same run. */
export interface PlanInput {
	readonly syllabus: Syllabus;
	readonly memories: ReadonlyMap<SkillId, Memory>;
	readonly course: Course;
	readonly pace: Pace;
	/** Today. */
	readonly day: number;
	/** Seconds practised today already; they come off the run. */
	readonly spent?: number;
	/** Skills the learner asked for: only these are aimed at, and needs outside them are waived. */
	readonly chosen?: ReadonlySet<SkillId>;
	/** Other numbers than the shipped ones; for the bench. */
	readonly policy?: Policy;
}

/** A run in the making, and what is known at its present end. */
export class Draft {
	readonly items: RunItem[] = [];
	seconds = 0;
	readonly input: PlanInput;
	readonly map: PracticeMap;
	readonly portion: Portion;
	readonly policy: Policy;
	/** Last place in the run at which a skill was exercised. */
	readonly #places = new Map<SkillId, number>();
	readonly #tries = new Map<SkillId, number>();
	/** Steps of each topic that were met before or in this run. */
	readonly #met = new Map<string, number>();
	/** Kinds whose steps are all known, and stay so; asked for every candidate at every place. */
	readonly #known = new Set<TaskKind>();
	/** Seconds of the shortest task there is. */
	readonly #shortest: number;

	constructor(input: PlanInput, map: PracticeMap, portion: Portion, policy: Policy) {
		this.input = input;
		this.map = map;
		this.portion = portion;
		this.policy = policy;
		for (const [skill, topic] of map.topicOf) if (isMet(this.memory(skill))) this.#meet(topic);
		this.#shortest = Math.min(input.pace.task, ...(input.pace.bySkill?.values() ?? []));
	}

	add(item: RunItem): void {
		for (const skill of item.kind.skills) {
			if (!this.isKnown(skill)) this.#meet(this.map.topicOf.get(skill) ?? '');
			this.#places.set(skill, this.items.length);
		}
		this.#tries.set(item.skill, this.tries(item.skill) + 1);
		this.items.push(item);
		this.seconds += item.seconds + item.reading;
	}

	/** Whether no task fits any more. */
	get isFull(): boolean {
		return this.seconds + this.#shortest > this.portion.seconds;
	}

	memory(skill: SkillId): Memory {
		return this.input.memories.get(skill) ?? emptyMemory;
	}

	/** How often the run aims at the skill. */
	tries(skill: SkillId): number {
		return this.#tries.get(skill) ?? 0;
	}

	/** Tasks since the run last exercised the skill, itself counted; undefined when it has not. */
	since(skill: SkillId): number | undefined {
		const place = this.#places.get(skill);
		return place === undefined ? undefined : this.items.length - place;
	}

	/** The first of the kind's steps that was met neither before nor in this run. */
	firstUnmet(kind: TaskKind): SkillId | undefined {
		if (this.#known.has(kind)) return undefined;
		const unmet = kind.skills.find((skill) => !this.isKnown(skill));
		if (unmet === undefined) this.#known.add(kind);
		return unmet;
	}

	/**
	 * How far the topic of a skill has come: the share of its steps met, 0 to 1, and whether any of its
	 * first steps is still to come.
	 */
	topicAt(skill: SkillId): { share: number; lacksFirst: boolean } {
		const topic = this.map.topicOf.get(skill) ?? '';
		const met = this.#met.get(topic) ?? 0;
		const all = this.map.stepsIn.get(topic) ?? 1;
		return { share: met / all, lacksFirst: met < Math.min(this.policy.firstSteps, all) };
	}

	#meet(topic: string): void {
		this.#met.set(topic, (this.#met.get(topic) ?? 0) + 1);
	}

	isKnown(skill: SkillId): boolean {
		return this.#places.has(skill) || isMet(this.memory(skill));
	}

	/**
	 * What an unmet step of the kind would stand on: `missing` when a need was never met, `shaky` when
	 * one is not in hand yet. A need inside the same task does not count, for its step comes first;
	 * nor does one outside the chosen skills.
	 */
	ground(kind: TaskKind): 'firm' | 'shaky' | 'missing' {
		let ground: 'firm' | 'shaky' = 'firm';
		if (this.#known.has(kind)) return ground;
		if (this.#isTooLong(kind)) return 'missing';
		for (const skill of kind.skills) {
			if (this.isKnown(skill)) continue;
			for (const need of this.map.needs.get(skill) ?? []) {
				if (kind.skills.includes(need) || this.input.chosen?.has(need) === false) continue;
				if (!this.isKnown(need)) return 'missing';
				if (this.memory(need).grasp < this.policy.inHand) ground = 'shaky';
			}
		}
		return ground;
	}

	/** Whether it is a long task, and what shorter ones have of it was not all met in them. */
	#isTooLong({ length = 1, aim, skills }: TaskKind): boolean {
		if (length === 1 || this.input.chosen) return false;
		const { inShort } = this.map;
		return skills.some((skill) => skill !== aim && inShort.has(skill) && !this.isKnown(skill));
	}

	/** Seconds the kind would take here: the task, and reading it worked when it is new. */
	timeFor(kind: TaskKind): { seconds: number; reading: number } {
		const { pace } = this.input;
		const { length = 1 } = kind;
		const reading = this.firstUnmet(kind) === undefined ? 0 : length * pace.worked;
		return { seconds: pace.bySkill?.get(kind.aim) ?? length * pace.task, reading };
	}
}
