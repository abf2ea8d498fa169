import fc from 'fast-check';
import type { Attempt, LogEvent } from '../../src/lib/engine/schedule/event.ts';

export const sam = '5a000000-0000-4000-8000-000000000001';
export const kit = '5a000000-0000-4000-8000-000000000002';

const short = fc.string({ minLength: 1, maxLength: 20, unit: 'binary' });

const verdict = fc.oneof(
	fc.record({ kind: fc.constant('accept' as const), carried: fc.boolean() }),
	fc.record({
		kind: fc.constant('rework' as const),
		cause: fc.constantFrom('slip', 'unit', 'unknown', 'a cause added later'),
		slips: fc.array(short, { maxLength: 2 })
	})
);

const attemptFacts = fc.record({
	type: fc.constant('attempt' as const),
	task: fc.constantFrom('RL2-7Q4K-21', 'EM1-0000-1A'),
	runId: short,
	source: fc.constantFrom(
		'practice' as const,
		'plan' as const,
		'rehearsal' as const,
		'lab' as const
	),
	typed: fc.dictionary(short, fc.string({ maxLength: 30, unit: 'binary' }), { maxKeys: 3 }),
	verdicts: fc.dictionary(short, verdict, { maxKeys: 3 }),
	opened: fc.array(short, { maxLength: 3 }),
	byStep: fc.boolean(),
	worked: fc.boolean(),
	seconds: fc.double({ min: 0, max: 86_400, noNaN: true }),
	skills: fc.array(
		fc.record({
			skill: fc.constantFrom('piece/shank', 'piece/setback-k', 'rivet-row/run'),
			result: fc.constantFrom('right' as const, 'helped' as const, 'wrong' as const)
		}),
		{ maxLength: 3 }
	),
	givens: fc.string({ maxLength: 40 })
});

const facts = fc.oneof(
	{ weight: 4, arbitrary: attemptFacts },
	fc.record({ type: fc.constant('setting'), key: short, value: fc.jsonValue({ maxDepth: 3 }) }),
	fc.record({ type: fc.constant('learner'), nickname: fc.string({ minLength: 1, maxLength: 9 }) }),
	fc.record({ type: fc.constant('hand-in-of-later'), anything: fc.jsonValue({ maxDepth: 3 }) })
);

/** Events that can be kept, as they read in a file. Times are few, so that ties happen. */
export function events(learner: fc.Arbitrary<string>, at = fc.nat({ max: 40 })) {
	const stamp = { id: fc.uuid(), learner, at, day: fc.constant('2026-03-09') };
	const event = fc
		.tuple(fc.record(stamp), facts)
		// Through text, because a file has no -0.
		.map(([stamp, facts]): LogEvent => JSON.parse(JSON.stringify({ ...facts, ...stamp, v: 1 })));
	return fc.uniqueArray(event, { selector: ({ id }) => id, maxLength: 30 });
}

let count = 0;

/** An attempt of Sam's with the fields that a test cares about. */
export function attempt(facts: Partial<Attempt> = {}): Attempt {
	count++;
	return {
		id: `a0000000-0000-4000-8000-${String(count).padStart(12, '0')}`,
		type: 'attempt',
		v: 1,
		learner: sam,
		at: count,
		day: '2026-03-09',
		task: 'RL2-7Q4K-21',
		level: 2,
		runId: 'run-1',
		source: 'practice',
		typed: { length: '5/16' },
		verdicts: { length: { kind: 'rework', cause: 'slip', slips: ['noShank'] } },
		opened: [],
		byStep: false,
		worked: false,
		seconds: 42.5,
		skills: [{ skill: 'piece/shank', result: 'wrong', slip: 'noShank' }],
		givens: '0.04,0.04;0.125',
		...facts
	};
}
