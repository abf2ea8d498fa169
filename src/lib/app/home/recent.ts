import type { Attempt, KnownEvent } from '$lib/engine/schedule/event.ts';
import { dayOf } from '$lib/engine/schedule/day.ts';
import { type Sitting, sittingsOf } from '$lib/engine/schedule/sitting.ts';
import { events } from '$lib/storage/log.ts';
import { device } from '../device/device.svelte.ts';

/** Days looked back for what is told of the time just past. */
const daysBack = 14;

/**
 * The attempts of the learner at work since `daysBack` days before `day`, oldest first; empty where
 * there is no log.
 *
 * @param runId a run that may be older: the attempts then begin as many days before it
 */
export async function recentAttempts(day: number, runId?: string): Promise<Attempt[]> {
	const desk = await device.open();
	const learner = device.learner?.id;
	if (!desk || learner === undefined) return [];
	return attemptsIn(events(desk.store, learner, { newestFirst: true }), day, runId);
}

/** The same of a log that is read newest first, and only as far as it is wanted. */
export async function attemptsIn(
	newestFirst: AsyncIterable<KnownEvent>,
	day: number,
	runId?: string
): Promise<Attempt[]> {
	const found: Attempt[] = [];
	let from = day - daysBack;
	let isWanting = runId !== undefined;
	for await (const event of newestFirst) {
		if (event.type !== 'attempt') continue;
		const at = dayOf(event.day);
		if (event.runId === runId) {
			isWanting = false;
			from = Math.min(from, at - daysBack);
		}
		if (at < from && !isWanting) break;
		found.push(event);
	}
	return found.reverse();
}

/** The newest sitting before a day, of attempts that are oldest first. */
export async function lastBefore(
	attempts: readonly Attempt[],
	today: number
): Promise<Sitting | null> {
	const before = attempts.filter(({ day }) => dayOf(day) < today).reverse();
	return firstOf(before);
}

/** What was done of a run on a day; null where nothing was. */
export async function doneOf(
	attempts: readonly Attempt[],
	today: number,
	runId: string | undefined
): Promise<Sitting | null> {
	return firstOf(
		attempts.filter((one) => dayOf(one.day) === today && one.runId === runId).reverse()
	);
}

/** The newest rehearsal among attempts that are oldest first. */
export function lastRehearsal(attempts: readonly Attempt[]): Promise<Sitting | null> {
	return firstOf(attempts.filter(({ source }) => source === 'rehearsal').reverse());
}

/** The newest sitting in which a task was gone through with. */
async function firstOf(newestFirst: readonly Attempt[]): Promise<Sitting | null> {
	for await (const sitting of sittingsOf(each(newestFirst))) {
		if (sitting.standings.length > 0) return sitting;
	}
	return null;
}

async function* each<T>(list: readonly T[]): AsyncGenerator<T> {
	yield* list;
}
