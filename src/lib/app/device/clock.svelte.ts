import { dayOf } from '$lib/engine/schedule/day.ts';
import { localDay } from '$lib/storage/local-day.ts';

/** Milliseconds between two looks at the clock while nobody does anything. */
const pause = 20_000;

/**
 * The day where the person is, kept true for as long as a page is open: past midnight, after a week
 * asleep, with the clock set back, in another time zone. A timer alone would be late after a sleep,
 * and with the tab in front no event tells of one.
 */
class Clock {
	/** Today, as the scheduler counts days. */
	day = $state.raw(today());

	constructor() {
		// Pages are drawn when they are built, too.
		if (!('document' in globalThis)) return;
		const look = () => this.look();
		document.addEventListener('visibilitychange', look);
		addEventListener('pageshow', look);
		setInterval(look, pause);
	}

	look(): void {
		this.day = today();
	}
}

function today(): number {
	return dayOf(localDay(new Date()));
}

export const clock = new Clock();
