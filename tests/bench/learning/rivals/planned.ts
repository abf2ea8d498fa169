import { type Course, portions } from '../../../../src/lib/engine/schedule/calendar.ts';
import { type Memory, emptyMemory, remember } from '../../../../src/lib/engine/schedule/memory.ts';
import { planRun } from '../../../../src/lib/engine/schedule/plan.ts';
import { type Policy, SHIPPED } from '../../../../src/lib/engine/schedule/policy.ts';
import { mapPractice, type PracticeMap } from '../../../../src/lib/engine/schedule/practice.ts';
import { type Run, afterMiss } from '../../../../src/lib/engine/schedule/run.ts';
import type { Syllabus } from '../../../../src/lib/engine/schedule/skill.ts';
import { syllabus } from '../ground.ts';
import type { Rival, Tutor } from '../rival.ts';
import type { Timetable } from '../timetable.ts';

/** Every task counts alike in the bench, first meetings included. */
export const pace = { task: 60, worked: 0 };

const wholeMap = mapPractice(syllabus);

/** The functions the app calls, with the shipped numbers or a candidate's. */
export function planned(id: string, label: string, policy: Policy = SHIPPED): Rival {
	return { id, label, tutor: (problems, timetable) => new Planned(problems, timetable, policy) };
}

/** The app, as far as planning goes. */
export class Planned implements Tutor {
	readonly memories = new Map<string, Memory>();
	readonly #course: Course;
	readonly #policy: Policy;
	readonly #syllabus: Syllabus;
	readonly #map: PracticeMap;
	#run: Run = { day: 0, items: [], budget: 0 };
	#at = 0;
	#left: number;

	constructor(problems: number, timetable: Timetable, policy: Policy, ordered = syllabus) {
		this.#syllabus = ordered;
		this.#map = ordered === syllabus ? wholeMap : mapPractice(ordered);
		this.#course = courseFor(problems, timetable, policy);
		this.#policy = policy;
		this.#left = problems;
	}

	open(day: number): void {
		const { memories } = this;
		const [course, policy] = [this.#course, this.#policy];
		const input = { syllabus: this.#syllabus, memories, course, pace, day, policy };
		this.#run = planRun(input, this.#map);
		this.#at = 0;
	}

	next(): number | undefined {
		const item = this.#left > 0 ? this.#run.items[this.#at++] : undefined;
		if (!item) return undefined;
		this.#left--;
		return Number(item.skill);
	}

	saw(skill: number, right: boolean, day: number): void {
		const id = String(skill);
		const evidence = right ? 'right' : 'wrong';
		this.memories.set(id, remember(this.memories.get(id) ?? emptyMemory, evidence, day));
		if (!right) this.#run = afterMiss(this.#run, this.#at - 1, id, this.#policy);
	}
}

/**
 * The fewest minutes a day that bring the problems on the days turned up on. The plan does not know
 * which days those are: it deals its time over all study days, and the missed ones are lost.
 */
export function courseFor(problems: number, timetable: Timetable, policy = SHIPPED): Course {
	const { exam, off, days } = timetable;
	const course: Course = { start: 0, exam, minutes: 1, off };
	const studied = portions(course, pace.task, policy).length;
	for (let total = problems; ; total++) {
		const candidate = { ...course, minutes: (total * pace.task) / 60 / studied };
		const done = portions(candidate, pace.task, policy)
			.filter((portion) => days.includes(portion.day))
			.reduce((sum, portion) => sum + portion.seconds / pace.task, 0);
		if (done >= problems) return candidate;
	}
}
