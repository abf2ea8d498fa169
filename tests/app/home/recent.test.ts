import { expect, test } from 'vitest';
import { attemptsIn } from '../../../src/lib/app/home/recent.ts';
import { isoOf } from '../../../src/lib/engine/schedule/day.ts';
import { attempt } from '../../storage/event-arbitrary.ts';

/** One attempt a day from day 100 to day 200, newest first; those of days 130 to 132 are of `old`. */
const runOf = (day: number) => (day >= 130 && day <= 132 ? 'old' : `run of ${day}`);
const newestFirst = Array.from({ length: 101 }, (_, i) => 200 - i).map((day) =>
	attempt({ id: String(day), day: isoOf(day), runId: runOf(day) })
);

async function* readFrom<T>(list: readonly T[], onRead = () => {}): AsyncGenerator<T> {
	for (const one of list) {
		onRead();
		yield one;
	}
}

async function daysFound(runId?: string): Promise<[number | undefined, number | undefined]> {
	const ids = (await attemptsIn(readFrom(newestFirst), 200, runId)).map(({ id }) => Number(id));
	expect(ids).toEqual(ids.toSorted((one, other) => one - other));
	return [ids.at(0), ids.at(-1)];
}

test('two weeks are looked back on, and no more of the log is read', async () => {
	let read = 0;
	await attemptsIn(
		readFrom(newestFirst, () => read++),
		200
	);
	expect(read).toBe(16);
	expect(await daysFound()).toEqual([186, 200]);
});

test('of a run that is older all is found, and what went before it', async () => {
	expect(await daysFound('old')).toEqual([116, 200]);
	expect(await daysFound('run of 195')).toEqual([181, 200]);
});
