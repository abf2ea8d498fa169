import type { Attempt } from '$lib/engine/schedule/event.ts';
import { dayOf } from '$lib/engine/schedule/day.ts';
import { type Sitting, sittingsOf } from '$lib/engine/schedule/sitting.ts';
import { events } from '$lib/storage/log.ts';
import { device } from '../device/device.svelte.ts';

/** Days looked back for what is told of the time just past. */
export const daysBack = 14;

/** The attempts of the learner at work since `from`, oldest first; empty where there is no log. */
export async function attemptsSince(from: number): Promise<Attempt[]> {
	const desk = await device.open();
	const learner = device.learner?.id;
	if (!desk || learner === undefined) return [];
	const found: Attempt[] = [];
	for await (const event of events(desk.store, learner, { newestFirst: true })) {
		if (event.type !== 'attempt') continue;
		if (dayOf(event.day) < from) break;
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
	const { value } = await sittingsOf(each(before)).next();
	return value ?? null;
}

async function* each<T>(list: readonly T[]): AsyncGenerator<T> {
	yield* list;
}
