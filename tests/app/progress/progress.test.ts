import { expect, test } from 'vitest';
import { loadPlanner } from '../../../src/lib/app/plan/planner.ts';
import {
	doneByDay,
	type Reader,
	readLog,
	taskFor
} from '../../../src/lib/app/progress/progress.ts';
import { readTaskNumber } from '../../../src/lib/engine/tasks/task-number.ts';
import { dayOf, isoOf } from '../../../src/lib/engine/schedule/day.ts';
import type { Attempt, KnownEvent } from '../../../src/lib/engine/schedule/event.ts';
import { emptyLearning } from '../../../src/lib/engine/schedule/learning.ts';
import { attempt } from '../../storage/event-arbitrary.ts';
import { belowFrom } from '../seeded-chance.ts';

const planner = await loadPlanner();
const monday = dayOf('2026-03-09');
const shank = 'piece/shank';

async function* inOrder(log: readonly KnownEvent[]): AsyncGenerator<KnownEvent> {
	yield* log;
}

function reader(facts: Partial<Reader> = {}): Reader {
	const { signal } = new AbortController();
	return { planner, today: monday + 9, signal, onRead: () => {}, ...facts };
}

let tasks = 0;

function answered(day: number, ...skills: Attempt['skills']): Attempt {
	return attempt({ day: isoOf(day), skills, task: `task ${++tasks}` });
}

test('slips are told in the words of their method, most frequent first', async () => {
	const down = { skill: 'piece/stocked-length', result: 'wrong', slip: 'down' } as const;
	const noShank = { skill: shank, result: 'wrong', slip: 'oneD' } as const;
	const log = [
		answered(monday, down),
		answered(monday + 1, noShank),
		answered(monday + 2, noShank)
	];
	const reading = await readLog(inOrder(log), reader());
	expect(reading?.slips.map(({ times, label, topic }) => [times, label, topic])).toEqual([
		[2, planner.label(shank), 'rivets'],
		[1, planner.label(down.skill), 'rivets']
	]);
	expect(reading?.slips[0]?.says).toBe(planner.slipSays(shank, 'oneD'));
	expect(reading?.slips[0]?.says).not.toBe('');
});

test('slips of steps that are no more are left out', async () => {
	const gone = { skill: 'gone/step', result: 'wrong', slip: 'gone' } as const;
	const unknown = { skill: shank, result: 'wrong', slip: 'gone' } as const;
	const reading = await readLog(inOrder([answered(monday, gone, unknown)]), reader());
	expect(reading?.slips).toEqual([]);
});

test('the same slip in methods that share a step is one line', async () => {
	const alike = { ...planner, label: () => 'Step', slipSays: () => 'A slip.' };
	const [one, other] = planner.syllabus.skills.filter(({ topic }) => topic === 'rivets');
	const log = [
		answered(monday, { skill: one?.id ?? '', result: 'wrong', slip: 'x' }),
		answered(monday + 3, { skill: other?.id ?? '', result: 'wrong', slip: 'y' }),
		answered(monday + 4, { skill: other?.id ?? '', result: 'right' })
	];
	const reading = await readLog(inOrder(log), reader({ planner: alike }));
	expect(reading?.slips).toMatchObject([
		{ times: 2, lastDay: monday + 3, rightSince: 1, skill: other?.id }
	]);
});

test('every skill is counted in a topic', async () => {
	const reading = await readLog(inOrder([]), reader());
	const steps = [...(reading?.steps.values() ?? [])].reduce((sum, count) => sum + count, 0);
	expect(steps).toBe(planner.syllabus.skills.length);
});

test('expectations are judged from sixty answers on', async () => {
	const log = Array.from({ length: 61 }, (_, i) =>
		answered(monday, { skill: shank, result: i % 3 === 0 ? 'wrong' : 'right' })
	);
	const few = await readLog(inOrder(log.slice(0, 60)), reader());
	expect(few).toMatchObject({ scored: 59, calibration: null });
	const enough = await readLog(inOrder(log), reader());
	expect(enough).toMatchObject({ scored: 60, calibration: { count: 60 } });
});

test('a log that takes long is read with pauses, and can be stopped in one', async () => {
	const stop = new AbortController();
	let heard = 0;
	async function* slow() {
		for (let n = 0; n < 2000; n++) {
			const until = performance.now() + 1;
			while (performance.now() < until);
			yield answered(monday, { skill: shank, result: 'right' });
		}
	}
	const reading = await readLog(
		slow(),
		reader({
			signal: stop.signal,
			onRead: (read) => {
				heard = read;
				// What another learner at the device does from outside.
				setTimeout(() => stop.abort());
			}
		})
	);
	expect(reading).toBeNull();
	expect(heard).toBeGreaterThan(0);
	expect(heard).toBeLessThan(2000);
});

test('for every skill there is a task that asks for it, with numbers not seen lately', () => {
	const { kinds, skills } = planner.syllabus;
	for (const { id } of skills) {
		const number = taskFor(id, planner, [], belowFrom(1)) ?? '';
		const { code, level } = readTaskNumber(number);
		expect(kinds.find((kind) => kind.id === `${code}${level}`)?.skills, id).toContain(id);
	}
	expect(taskFor('gone/step', planner, [], belowFrom(1))).toBeUndefined();
});

test('a day holds the tasks done on it, however they came out', () => {
	const note = { right: 3, helped: 2, wrong: 1, seconds: 600 };
	expect(doneByDay({ ...emptyLearning(), days: { 20521: note } })).toEqual(
		new Map([[20_521, { tasks: 6, seconds: 600 }]])
	);
});
