import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayOf, isoOf } from '../../../src/lib/engine/schedule/day.ts';
import type { Attempt, KnownEvent } from '../../../src/lib/engine/schedule/event.ts';
import { type History, Replay } from '../../../src/lib/engine/schedule/history.ts';
import { emptyLearning, learningFold } from '../../../src/lib/engine/schedule/learning.ts';
import { emptyMemory, recall, remember } from '../../../src/lib/engine/schedule/memory.ts';
import { attempt } from '../../storage/event-arbitrary.ts';

const monday = dayOf('2026-03-09');
const topics = new Map([
	['rivet-length/shank', 'rivets'],
	['setback/K', 'bends'],
	['rivet-row/run', 'layout']
]);

function replay(events: readonly KnownEvent[], today: number, from = 0): History {
	const one = new Replay({ topics, from, today });
	for (const event of events) one.add(event);
	return one.end();
}

let tasks = 0;

/** An attempt at a task of its own. */
function answered(day: number, skills: Attempt['skills'], facts: Partial<Attempt> = {}): Attempt {
	return attempt({ day: isoOf(day), skills, task: `task ${++tasks}`, ...facts });
}

const shank = (result: 'right' | 'helped' | 'wrong', slip?: string) => ({
	skill: 'rivet-length/shank',
	result,
	...(slip === undefined ? {} : { slip })
});

const someLog = fc
	.array(
		fc.record({
			gap: fc.nat(4),
			again: fc.boolean(),
			skills: fc.uniqueArray(
				fc.record({
					skill: fc.constantFrom(...topics.keys(), 'gone/step'),
					result: fc.constantFrom('right' as const, 'helped' as const, 'wrong' as const),
					slip: fc.constantFrom('one', 'two')
				}),
				{ selector: ({ skill }) => skill, minLength: 1, maxLength: 3 }
			)
		}),
		{ minLength: 1, maxLength: 25 }
	)
	.map((drawn) => {
		let day = monday;
		return drawn.map(({ gap, again, skills }, i) => {
			day += gap;
			return answered(
				day,
				skills.map(({ slip, ...one }) => (one.result === 'wrong' ? { ...one, slip } : one)),
				again && i > 0 ? { task: `task ${tasks}` } : {}
			);
		});
	});

test('recall falls from day to day and starts again with an answer', () => {
	const { days } = replay(
		[answered(monday, [shank('right')]), answered(monday + 3, [shank('right')])],
		monday + 5
	);
	const first = remember(emptyMemory, 'right', monday);
	const second = remember(first, 'right', monday + 3);
	expect(days.map(({ day }) => day - monday)).toEqual([0, 1, 2, 3, 4, 5]);
	for (const [i, { all, topics: byTopic }] of days.entries()) {
		const expected = recall(i < 3 ? first : second, monday + i);
		expect(all).toEqual({ recall: expected, met: 1 });
		expect(byTopic).toEqual(new Map([['rivets', all]]));
	}
});

test('every day of the replay is what the plan would have known on that day', () => {
	fc.assert(
		fc.property(someLog, fc.integer({ min: 0, max: 60 }), (log, after) => {
			const today = monday + after;
			for (const { day, topics: byTopic, all } of replay(log, today).days) {
				const learning = emptyLearning();
				for (const event of log) {
					if (day === today || dayOf(event.day) <= day) learningFold.apply(learning, event);
				}
				const known = Object.entries(learning.memories).filter(([skill]) => topics.has(skill));
				expect(all.met).toBe(known.length);
				for (const [topic, { recall: mean, met }] of byTopic) {
					const own = known.filter(([skill]) => topics.get(skill) === topic);
					expect(met).toBe(own.length);
					const sum = own.reduce((s, [, memory]) => s + recall(memory, day), 0);
					expect(mean).toBeCloseTo(sum / met, 12);
				}
			}
		}),
		{ numRuns: 50 }
	);
});

test('the days run without a gap from the first answer to today', () => {
	fc.assert(
		fc.property(someLog, fc.integer({ min: 0, max: 60 }), (log, after) => {
			const { days } = replay(log, monday + after);
			const first = Math.min(dayOf(log[0]?.day ?? ''), monday + after);
			expect(days.map(({ day }) => day)).toEqual(
				Array.from({ length: monday + after - first + 1 }, (_, i) => first + i)
			);
		}),
		{ numRuns: 50 }
	);
});

test('days before the scope are left out, what was learnt in them is not', () => {
	const log = [answered(monday, [shank('right')]), answered(monday + 9, [shank('right')])];
	const whole = replay(log, monday + 12);
	const part = replay(log, monday + 12, monday + 10);
	expect(part.days).toEqual(whole.days.slice(10));
	expect(part.answers).toEqual(whole.answers);
});

test('a clock that was set wrong makes no endless list', () => {
	const log = [answered(0, [shank('right')]), answered(dayOf('9999-01-01'), [shank('right')])];
	expect(replay(log, monday, monday - 1).days.map(({ day }) => day)).toEqual([monday - 1, monday]);
	const ahead = replay([answered(monday + 40, [shank('right')])], monday);
	expect(ahead.days.map(({ day, all }) => [day, all.met])).toEqual([[monday, 1]]);
});

test('first answers on met skills are scored against what was expected before them', () => {
	const again = { task: 'the same task' };
	const { answers } = replay(
		[
			answered(monday, [shank('right')]),
			answered(monday + 4, [shank('wrong'), { skill: 'setback/K', result: 'right' }], again),
			answered(monday + 4, [shank('helped')], again),
			answered(monday + 5, [shank('helped')])
		],
		monday + 5
	);
	const first = remember(emptyMemory, 'right', monday);
	const second = remember(first, 'wrong', monday + 4);
	const third = remember(second, 'helped', monday + 4);
	expect(answers).toEqual([
		{ expected: recall(first, monday + 4), right: false, check: 2 },
		{ expected: recall(third, monday + 5), right: false, check: 3 }
	]);
});

test('slips are counted by step, with what came after the last of each', () => {
	const { slips } = replay(
		[
			answered(monday, [shank('wrong', 'noShank')]),
			answered(monday + 1, [shank('right')]),
			answered(monday + 2, [shank('wrong', 'noShank')]),
			answered(monday + 3, [shank('wrong', 'halfD')]),
			answered(monday + 4, [shank('right'), { skill: 'setback/K', result: 'right' }]),
			answered(monday + 5, [shank('helped')])
		],
		monday + 9
	);
	const skill = 'rivet-length/shank';
	expect(slips).toEqual([
		{ skill, slip: 'noShank', times: 2, lastDay: monday + 2, rightSince: 1 },
		{ skill, slip: 'halfD', times: 1, lastDay: monday + 3, rightSince: 1 }
	]);
});

test('the slips of a log are as many as its events tell, most frequent first', () => {
	fc.assert(
		fc.property(someLog, (log) => {
			const { slips } = replay(log, monday);
			const all = log.flatMap(({ skills }) => skills.filter(({ slip }) => slip !== undefined));
			for (const { skill, slip, times } of slips) {
				expect(all.filter((one) => one.skill === skill && one.slip === slip).length).toBe(times);
			}
			expect(slips.reduce((sum, { times }) => sum + times, 0)).toBe(all.length);
			const order = slips.map(({ times }) => times);
			expect(order).toEqual([...order].sort((a, b) => b - a));
		})
	);
});

test('a log without attempts has no history', () => {
	const setting = { ...attempt(), type: 'setting', key: 'course', value: null } as const;
	expect(replay([setting], monday)).toEqual({ days: [], answers: [], slips: [] });
});
