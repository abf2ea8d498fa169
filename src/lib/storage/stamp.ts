import {
	type Attempt,
	type LabCheck,
	maxSeconds,
	maxTyped,
	type Naming,
	type SettingChange
} from '$lib/engine/schedule/event.ts';
import { localDay } from './local-day.ts';
import { newId } from './new-id.ts';

type Stamp = 'id' | 'v' | 'learner' | 'at' | 'day';
type Facts<E> = Omit<E, Stamp>;

/** The event of something that a learner just did, ready for the log. */
export function stamped(learner: string, facts: Facts<Attempt>, now?: Date): Attempt;
export function stamped(learner: string, facts: Facts<SettingChange>, now?: Date): SettingChange;
export function stamped(learner: string, facts: Facts<Naming>, now?: Date): Naming;
export function stamped(learner: string, facts: Facts<LabCheck>, now?: Date): LabCheck;
export function stamped(
	learner: string,
	facts: Facts<Attempt> | Facts<SettingChange> | Facts<Naming> | Facts<LabCheck>,
	now = new Date()
): object {
	const kept = facts.type === 'attempt' ? withinLimits(facts) : facts;
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
