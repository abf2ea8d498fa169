import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Attempt, KnownEvent } from '../../../src/lib/engine/schedule/event.ts';
import { type Sitting, sittingsOf } from '../../../src/lib/engine/schedule/sitting.ts';
import { attempt } from '../../storage/event-arbitrary.ts';

const accepted: Partial<Attempt> = { verdicts: { length: { kind: 'accept', carried: false } } };
const rework: Partial<Attempt> = {
	verdicts: { length: { kind: 'rework', cause: 'unknown', slips: [] } }
};
const shown: Partial<Attempt> = { verdicts: {}, worked: true };

async function* newestFirst(log: readonly KnownEvent[]): AsyncGenerator<KnownEvent> {
	yield* log.toReversed();
}

async function sittings(log: readonly KnownEvent[]): Promise<Sitting[]> {
	const list: Sitting[] = [];
	for await (const one of sittingsOf(newestFirst(log))) list.push(one);
	return list;
}

const outcomes: [name: string, attempts: Partial<Attempt>[], right: string][] = [
	['right at once', [accepted], 'right'],
	['right with an opened step', [{ ...accepted, opened: ['grip'] }], 'helped'],
	['right step by step', [{ ...accepted, byStep: true }], 'helped'],
	[
		'right in every step that was laid out',
		[
			{ ...accepted, byStep: true, guided: true },
			{ ...accepted, byStep: true, guided: true }
		],
		'right'
	],
	[
		'wrong in a later step that was laid out, and then right',
		[
			{ ...accepted, byStep: true, guided: true },
			{ ...rework, byStep: true, guided: true },
			{ ...accepted, byStep: true, guided: true }
		],
		'helped'
	],
	['right on the second try', [rework, accepted], 'helped'],
	['wrong', [rework], 'wrong'],
	['wrong twice', [rework, rework], 'wrong'],
	['the working asked for', [shown], 'wrong'],
	['right after the working was shown', [shown, { ...accepted, worked: true }], 'wrong'],
	['right at once, then tried otherwise', [accepted, rework], 'right'],
	[
		'stopped at a wrong step',
		[
			{ ...accepted, byStep: true },
			{ ...rework, byStep: true }
		],
		'wrong'
	]
];

test.each(outcomes)('a task that was %s', async (_, attempts, standing) => {
	const [sitting] = await sittings(attempts.map((facts) => attempt(facts)));
	expect(sitting).toMatchObject({ right: 0, helped: 0, wrong: 0, [standing]: 1 });
});

test('a task that was left after a right step is not counted; one with a wrong step before is not put right', async () => {
	const part = { ...accepted, byStep: true, part: true };
	const [sitting] = await sittings([
		attempt({ task: 'RL1-0000-1A', ...part, guided: true }),
		attempt({ task: 'BW1-0000-1A', ...rework, byStep: true }),
		attempt({ task: 'BW1-0000-1A', ...part }),
		attempt({ task: 'EM1-0000-1A', ...part, guided: true }),
		attempt({ task: 'EM1-0000-1A', ...accepted, byStep: true, guided: true })
	]);
	expect(sitting).toMatchObject({ right: 1, helped: 0, wrong: 1 });
});

test('tasks stand in the order in which they were begun', async () => {
	const [sitting] = await sittings([
		attempt({ task: 'RL1-0000-1A', ...rework }),
		attempt({ task: 'BW1-0000-1A', ...accepted }),
		attempt({ task: 'EM1-0000-1A', ...rework }),
		attempt({ task: 'RL1-0000-1A', ...accepted })
	]);
	expect(sitting?.standings).toEqual(['helped', 'right', 'wrong']);
});

test('a run on two days is two sittings; two runs on a day are two', async () => {
	const list = await sittings([
		attempt({ runId: 'one', day: '2026-03-09', task: 'RL2-7Q4K-21', seconds: 60, ...accepted }),
		attempt({ runId: 'two', day: '2026-03-10', task: 'EM1-0000-1A', source: 'plan', ...rework }),
		attempt({ runId: 'one', day: '2026-03-10', task: 'RL1-0000-1A', seconds: 10, ...accepted }),
		attempt({ runId: 'one', day: '2026-03-10', task: 'BW1-0000-1A', seconds: 5, ...rework })
	]);
	expect(list).toMatchObject([
		{ day: 20_522, source: 'practice', families: ['BW', 'RL'], right: 1, wrong: 1, seconds: 15 },
		{ day: 20_522, source: 'plan', families: ['EM'], right: 0, wrong: 1 },
		{ day: 20_521, source: 'practice', families: ['RL'], right: 1, wrong: 0, seconds: 60 }
	]);
});

test('every task and every second is in one sitting, newest first', async () => {
	const someLog = fc.array(
		fc.record({
			runId: fc.constantFrom('one', 'two', 'three'),
			day: fc.constantFrom('2026-03-09', '2026-03-10', '2026-03-11'),
			task: fc.constantFrom('RL2-7Q4K-21', 'EM1-0000-1A'),
			seconds: fc.nat(100)
		}),
		{ maxLength: 30 }
	);
	await fc.assert(
		fc.asyncProperty(someLog, async (drawn) => {
			const log = drawn.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0)).map(attempt);
			const list = await sittings(log);
			const days = list.map(({ day }) => day);
			expect(days).toEqual([...days].sort((a, b) => b - a));
			expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
			const tasks = new Set(log.map(({ runId, day, task }) => `${runId} ${day} ${task}`));
			const sum = (one: (sitting: Sitting) => number) => list.reduce((s, x) => s + one(x), 0);
			expect(sum(({ standings }) => standings.length)).toBe(
				sum(({ right, helped, wrong }) => right + helped + wrong)
			);
			expect(sum(({ right, helped, wrong }) => right + helped + wrong)).toBe(tasks.size);
			expect(sum(({ seconds }) => seconds)).toBe(log.reduce((s, { seconds }) => s + seconds, 0));
		})
	);
});

test('the log is read no further than the day before the sittings that are wanted', async () => {
	let read = 0;
	async function* endless() {
		for (let day = 28; day > 0; day--) {
			read++;
			yield attempt({ day: `2026-02-${String(day).padStart(2, '0')}`, runId: `run ${day}` });
		}
	}
	const list = sittingsOf(endless());
	await list.next();
	await list.next();
	expect(read).toBe(3);
});

test('settings and names make no sitting', async () => {
	const setting = { ...attempt(), type: 'setting', key: 'course', value: null } as const;
	expect(await sittings([setting])).toEqual([]);
});
