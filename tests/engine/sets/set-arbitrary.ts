import fc from 'fast-check';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { ownTolerances } from '../../../src/lib/engine/sets/own-tolerance.ts';
import { longest, mostMarks, type TaskSet } from '../../../src/lib/engine/sets/set.ts';
import { seedCount, writeTaskNumber } from '../../../src/lib/engine/tasks/task-number.ts';

const line = (most: number) =>
	fc.string({ unit: 'grapheme', maxLength: most }).map((text) =>
		text
			.replace(/[\p{Cc}\p{Cs}\u2028\u2029]/gu, '')
			.slice(0, most)
			.replace(/\p{Cs}/gu, '')
	);

const task = fc.record({
	number: fc
		.record({
			code: fc.constantFrom(...cards.map(({ code }) => code)),
			level: fc.constantFrom(1 as const, 2 as const, 3 as const),
			seed: fc.nat(seedCount - 1),
			rev: fc.nat(31)
		})
		.map(writeTaskNumber),
	marks: fc.oneof(
		fc.integer({ min: 1, max: 12 }).map((count) => Array.from({ length: count }, () => 1)),
		fc.array(fc.nat(mostMarks), { minLength: 1, maxLength: 12 })
	)
});

/** Any set that may be, whether or not its tasks are still drawn so. */
export const anySet: fc.Arbitrary<TaskSet> = fc.record({
	title: line(longest.title).map((text) => text.trim() || 'Week 6'),
	seed: line(longest.seed),
	tasks: fc.array(task, { minLength: 1, maxLength: 30 }),
	order: fc.constantFrom('fixed', 'mixed'),
	numbers: fc.constantFrom('same', 'own'),
	answers: fc.constantFrom('typed', 'options'),
	help: fc.boolean(),
	due: fc.constantFrom(null, '2026-12-04', '2028-02-29T16:00'),
	within: fc.option(
		fc.record(
			{
				rule: fc.constantFrom(...ownTolerances.rule),
				micrometer: fc.constantFrom(...ownTolerances.micrometer)
			},
			{ requiredKeys: [] }
		),
		{ nil: undefined }
	),
	tolerance: line(longest.tolerance),
	note: line(longest.note)
});
