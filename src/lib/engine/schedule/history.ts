import type { ScoredAnswer } from './calibration.ts';
import { dayOf } from './day.ts';
import type { Attempt, KnownEvent } from './event.ts';
import { emptyLearning, isRepeat, isTold, type Learning, learningFold } from './learning.ts';
import { isMet, type Memory, recall } from './memory.ts';
import type { SkillId } from './skill.ts';

/** What a replay of the log is to look at. */
export interface Scope {
	/** Topic of every skill that can be practised; other skills are left out. */
	readonly topics: ReadonlyMap<SkillId, string>;
	/** First day that recall is worked out for. */
	readonly from: number;
	/** The last one. */
	readonly today: number;
}

/** What is expected of the skills met so far. */
export interface MeanRecall {
	/** Mean chance, 0 to 1, that a fresh task on one of them is right at the first try. */
	readonly recall: number;
	/** How many skills have been met. */
	readonly met: number;
}

/** Recall at the end of a day. */
export interface DayRecall {
	readonly day: number;
	readonly all: MeanRecall;
	/** By topic; one without a met skill is not there. */
	readonly topics: ReadonlyMap<string, MeanRecall>;
}

/** How often a slip was made, and what came after. */
export interface SlipHistory {
	readonly skill: SkillId;
	readonly slip: string;
	readonly times: number;
	readonly lastDay: number;
	/** How often the step has been right at once since. */
	readonly rightSince: number;
}

export interface History {
	/** Every day from the first attempt, or from the scope's start, to today. */
	readonly days: readonly DayRecall[];
	/** First answers on skills met before, each with what was expected of it. */
	readonly answers: readonly ScoredAnswer[];
	/** Most frequent first, then newest first. */
	readonly slips: readonly SlipHistory[];
}

/** Plays a learner's log through again, event by event, with the memory that the plan uses. */
export class Replay {
	readonly #scope: Scope;
	readonly #learning: Learning = emptyLearning();
	readonly #days: DayRecall[] = [];
	readonly #answers: ScoredAnswer[] = [];
	readonly #slips = new Map<string, SlipHistory>();
	/** The day that is not finished yet. */
	#open: number | null = null;
	#checks = 0;

	constructor(scope: Scope) {
		this.#scope = scope;
	}

	/** The next event of the log, oldest first. */
	add(event: KnownEvent): void {
		if (event.type === 'lab-check') learningFold.apply(this.#learning, event);
		if (event.type !== 'attempt') return;
		const day = dayOf(event.day);
		// A clock that was ahead: what it dated later counts to today.
		this.#finishUntil(Math.min(day, this.#scope.today));
		if (!isRepeat(this.#learning, event)) this.#score(event, day);
		for (const evidence of event.skills) {
			if (!isTold(event, evidence.skill)) this.#noteSlip(evidence, day);
		}
		for (const told of event.told ?? []) this.#noteSlip({ ...told, result: 'wrong' }, day);
		learningFold.apply(this.#learning, event);
	}

	end(): History {
		if (this.#open !== null) this.#finishUntil(this.#scope.today + 1);
		const slips = [...this.#slips.values()].sort(
			(a, b) => b.times - a.times || b.lastDay - a.lastDay
		);
		return { days: this.#days, answers: this.#answers, slips };
	}

	#finishUntil(day: number): void {
		const { from, today } = this.#scope;
		this.#open ??= Math.min(Math.max(day, from), today);
		for (; this.#open < day; this.#open++) {
			this.#days.push(recallOn(this.#open, this.#learning.memories, this.#scope.topics));
		}
	}

	#score({ skills }: Attempt, day: number): void {
		this.#checks += 1;
		for (const { skill, result } of skills) {
			const memory = this.#learning.memories[skill];
			if (!memory || !isMet(memory)) continue;
			const expected = recall(memory, day);
			this.#answers.push({ expected, right: result === 'right', check: this.#checks });
		}
	}

	#noteSlip({ skill, result, slip }: Attempt['skills'][number], day: number): void {
		if (slip !== undefined) {
			const key = `${skill} ${slip}`;
			const times = (this.#slips.get(key)?.times ?? 0) + 1;
			this.#slips.set(key, { skill, slip, times, lastDay: day, rightSince: 0 });
		} else if (result === 'right') {
			for (const [key, one] of this.#slips) {
				if (one.skill === skill) this.#slips.set(key, { ...one, rightSince: one.rightSince + 1 });
			}
		}
	}
}

function recallOn(
	day: number,
	memories: Readonly<Record<SkillId, Memory>>,
	topicOf: ReadonlyMap<SkillId, string>
): DayRecall {
	const all = { sum: 0, met: 0 };
	const byTopic = new Map<string, { sum: number; met: number }>();
	for (const [skill, memory] of Object.entries(memories)) {
		const topic = topicOf.get(skill);
		if (topic === undefined || !isMet(memory)) continue;
		const own = byTopic.get(topic) ?? { sum: 0, met: 0 };
		byTopic.set(topic, own);
		for (const total of [all, own]) {
			total.sum += recall(memory, day);
			total.met += 1;
		}
	}
	const topics = new Map([...byTopic].map(([topic, total]) => [topic, mean(total)]));
	return { day, all: mean(all), topics };
}

function mean({ sum, met }: { sum: number; met: number }): MeanRecall {
	return { recall: met === 0 ? 0 : sum / met, met };
}
