import fc from 'fast-check';
import type { Course } from '../../../src/lib/engine/schedule/calendar.ts';
import {
	type Evidence,
	type Memory,
	emptyMemory,
	remember
} from '../../../src/lib/engine/schedule/memory.ts';
import type { PlanInput } from '../../../src/lib/engine/schedule/plan.ts';
import type { SkillId, Syllabus } from '../../../src/lib/engine/schedule/skill.ts';

/** A Monday. */
export const monday = 20_521;

export const someEvidence: fc.Arbitrary<Evidence> = fc.constantFrom('right', 'helped', 'wrong');

/** Answers on one skill in the order of time: days since the one before, and what each showed. */
export const someHistory = fc.array(
	fc.tuple(fc.double({ min: 0, max: 40, noNaN: true }), someEvidence),
	{ maxLength: 12 }
);

/** Memory after a history that starts on `start`, and the time of its last answer. */
export function memoryAfter(
	history: readonly (readonly [number, Evidence])[],
	start: number
): { memory: Memory; at: number } {
	let [memory, at] = [emptyMemory, start];
	for (const [gap, evidence] of history) {
		at += gap;
		memory = remember(memory, evidence, at);
	}
	return { memory, at };
}

/** Skills in order; each may need earlier ones. Kinds exercise one to three neighbouring skills. */
export const someSyllabus: fc.Arbitrary<Syllabus> = fc
	.array(
		fc.record({
			needs: fc.array(fc.nat(), { maxLength: 2 }),
			topic: fc.nat(3),
			family: fc.nat(5),
			width: fc.integer({ min: 1, max: 3 }),
			levels: fc.integer({ min: 0, max: 3 })
		}),
		{ minLength: 2, maxLength: 14 }
	)
	.map((drawn) => {
		const id = (i: number): SkillId => `method/${i}`;
		return {
			skills: drawn.map(({ needs, topic }, i) => ({
				id: id(i),
				topic: `topic ${topic}`,
				needs: i === 0 ? [] : [...new Set(needs.map((n) => id(n % i)))]
			})),
			kinds: drawn.flatMap(({ family, width, levels }, i) => {
				const steps = drawn.slice(i, i + width).map((_, j) => id(i + j));
				return Array.from({ length: levels }, (_, level) => ({
					id: `${family}-${i}-${level}`,
					family: `family ${family}`,
					aim: id(i),
					skills: steps
				}));
			})
		};
	});

export const someCourse: fc.Arbitrary<Course> = fc.record({
	start: fc.integer({ min: monday - 30, max: monday }),
	exam: fc.option(fc.integer({ min: monday - 5, max: monday + 70 }), { nil: null }),
	minutes: fc.integer({ min: 1, max: 60 }),
	off: fc.record({
		weekdays: fc.uniqueArray(fc.nat(6), { maxLength: 5 }),
		dates: fc.array(fc.integer({ min: monday, max: monday + 40 }), { maxLength: 10 })
	})
});

/** A whole situation: what can be practised, what was, and the learner's settings. */
export const someInput: fc.Arbitrary<PlanInput> = someSyllabus.chain((syllabus) =>
	fc.record({
		syllabus: fc.constant(syllabus),
		memories: fc
			.array(fc.option(someHistory, { nil: [] }), {
				minLength: syllabus.skills.length,
				maxLength: syllabus.skills.length
			})
			.map((histories) => memoriesOf(syllabus, histories)),
		course: someCourse,
		pace: fc.record({
			task: fc.integer({ min: 20, max: 300 }),
			worked: fc.integer({ min: 0, max: 200 })
		}),
		day: fc.integer({ min: monday, max: monday + 40 })
	})
);

function memoriesOf(
	syllabus: Syllabus,
	histories: readonly (readonly (readonly [number, Evidence])[])[]
): Map<SkillId, Memory> {
	const memories = new Map<SkillId, Memory>();
	syllabus.skills.forEach((skill, i) => {
		const history = histories[i] ?? [];
		// told from far enough back that the last answer lies before the day
		if (history.length > 0) memories.set(skill.id, memoryAfter(history, monday - 500).memory);
	});
	return memories;
}
