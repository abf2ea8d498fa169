import {
	type Memory,
	UNMET_RECALL,
	emptyMemory,
	recallLeft,
	remember
} from '../../../../src/lib/engine/schedule/memory.ts';
import { SKILLS, ground } from '../ground.ts';
import { type Rival, type Tutor, dealtBy } from '../rival.ts';
import type { Timetable } from '../timetable.ts';

/** Which skill goes first today, by FSRS state: low goes first. */
type Order = (memory: Memory | undefined, day: number) => number;

/** One skill at a time, never twice running, at most two tries a day while others are left. */
class Adaptive implements Tutor {
	readonly #memories: (Memory | undefined)[] = Array.from({ length: SKILLS });
	readonly #problems: number;
	readonly #days: readonly number[];
	readonly #order: Order;
	#tries: number[] = [];
	#given = 0;
	#until = 0;
	#day = 0;
	#last = -1;

	constructor(problems: number, { days }: Timetable, order: Order) {
		this.#problems = problems;
		this.#days = days;
		this.#order = order;
	}

	open(day: number): void {
		this.#until = dealtBy(this.#days.indexOf(day), this.#days.length, this.#problems);
		this.#tries = Array.from({ length: SKILLS }, () => 0);
		this.#day = day;
		this.#last = -1;
	}

	next(): number | undefined {
		if (this.#given >= this.#until) return undefined;
		this.#given++;
		let best = -1;
		let bestCost = Infinity;
		for (let skill = 0; skill < SKILLS; skill++) {
			const cost = this.#isOpen(skill) ? this.#cost(skill) : Infinity;
			if (cost < bestCost) [best, bestCost] = [skill, cost];
		}
		this.#tries[best] = (this.#tries[best] ?? 0) + 1;
		this.#last = best;
		return best;
	}

	#isOpen(skill: number): boolean {
		const needs = ground.needs[skill] ?? [];
		return skill !== this.#last && needs.every((need) => this.#memories[need] !== undefined);
	}

	#cost(skill: number): number {
		const rounds = Math.floor((this.#tries[skill] ?? 0) / 2);
		return this.#order(this.#memories[skill], this.#day) + 1e6 * rounds;
	}

	saw(skill: number, right: boolean, day: number): void {
		const before = this.#memories[skill] ?? emptyMemory;
		this.#memories[skill] = remember(before, right ? 'right' : 'wrong', day);
	}
}

const TARGET = 0.9;

// those due, longest overdue first; then new ones; then those due soonest
const dueOrder: Order = (memory, day) => {
	if (!memory) return 0;
	const age = (day - memory.lastDay) / memory.stability;
	return recallLeft(memory, day) <= TARGET ? -1 - age : 1 / (age + 1e-3);
};

const recallOrder: Order = (memory, day) => (memory ? recallLeft(memory, day) : UNMET_RECALL);

export const retentionTarget: Rival = {
	id: 'retention-target',
	label: 'fixed retention target 0.9',
	tutor: (problems, timetable) => new Adaptive(problems, timetable, dueOrder)
};

export const lowestRecall: Rival = {
	id: 'lowest-recall',
	label: 'lowest recall first',
	tutor: (problems, timetable) => new Adaptive(problems, timetable, recallOrder)
};
