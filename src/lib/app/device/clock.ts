import { dayOf } from '$lib/engine/schedule/day.ts';
import { localDay } from '$lib/storage/local-day.ts';

/** The day where the person is, as YYYY-MM-DD. */
export function today(): string {
	return localDay(new Date());
}

/** The same as the scheduler counts days. */
export function todayNumber(): number {
	return dayOf(today());
}
