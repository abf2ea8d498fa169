import { type Attempt, type KnownEvent, maxSeconds, maxTyped } from '$lib/engine/schedule/event.ts';
import { localDay } from './local-day.ts';
import { newId } from './new-id.ts';

type Stamp = 'id' | 'v' | 'learner' | 'at' | 'day';
type Facts<E> = Omit<E, Stamp>;
type Type = KnownEvent['type'];
type Typed<T extends Type> = Extract<KnownEvent, { type: T }>;

/** What an event of a type tells besides who did it and when. */
export type FactsOf<T extends Type> = Facts<Typed<T>> & { readonly type: T };

/** The event of something that a learner just did, ready for the log. */
export function stamped<T extends Type>(learner: string, facts: FactsOf<T>, now?: Date): Typed<T>;
export function stamped(
	learner: string,
	facts: Facts<KnownEvent> | Facts<Attempt>,
	now = new Date()
): object {
	const kept = 'typed' in facts ? withinLimits(facts) : facts;
	const stamp = { id: newId(), v: 1, learner, at: now.getTime(), day: localDay(now) };
	// As it would read in a backup: without fields that are undefined.
	return JSON.parse(JSON.stringify({ ...kept, ...stamp }));
}

// A very long entry or a tab left open for days must not keep an answer out of the log.
function withinLimits(attempt: Facts<Attempt>): Facts<Attempt> {
	const typed = Object.fromEntries(
		Object.entries(attempt.typed).map(([key, text]) => [key, text.slice(0, maxTyped)])
	);
	const seconds = Math.min(Math.max(0, attempt.seconds), maxSeconds);
	return { ...attempt, typed, seconds };
}
