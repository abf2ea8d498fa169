import type { KnownEvent } from '../schedule/event.ts';
import type {
	SetAnswer,
	SetDrawn,
	SetEvent,
	SetHandedIn,
	SetTaken
} from '../schedule/set-events.ts';
import type { HandInAnswer } from './hand-in.ts';
import type { KeptSheet } from './kept-draws.ts';
import { readSet, type TaskSet } from './set.ts';

/** A set that an instructor made. */
export interface SavedSet {
	readonly hash: string;
	readonly set: TaskSet;
	/** When it was made, in milliseconds since 1970-01-01 UTC. */
	readonly at: number;
	readonly on: 'list' | 'archive' | 'bin';
}

/** A version that was handed in, with what was entered until then. */
export interface HandedIn extends Pick<SetHandedIn, 'version' | 'name' | 'promised' | 'at'> {
	/** By place on the student's own sheet. */
	readonly answers: readonly HandInAnswer[];
}

/** A set that a student was sent, and the work on it. */
export interface TakenSet {
	readonly hash: string;
	readonly code: string;
	/** The set as the fragment of its link. */
	readonly link: string;
	readonly at: number;
	/** What has been entered, by place on the student's own sheet. */
	readonly answers: readonly HandInAnswer[];
	/** Oldest first. */
	readonly handedIn: readonly HandedIn[];
}

/** What a log tells of sets, newest first. */
export interface Shelf {
	readonly saved: readonly SavedSet[];
	readonly taken: readonly TakenSet[];
	/** What tasks drew, by the hash of their set. */
	readonly drawn: ReadonlyMap<string, readonly KeptSheet[]>;
}

export function isSetEvent({ type }: { readonly type: string }): boolean {
	return type === 'set' || type.startsWith('set-');
}

/** @param events in the order of the log; those that are not about sets change nothing */
export function shelfOf(events: Iterable<KnownEvent>): Shelf {
	const saved = new Map<string, SavedSet>();
	const taken = new Map<string, TakenSet>();
	const drawn = new Map<string, KeptSheet[]>();
	for (const event of events) {
		if (event.type === 'set' || event.type === 'set-shelf') keepSaved(saved, event);
		else if (event.type === 'set-drawn') keepDrawn(drawn, event);
		else if (event.type === 'set-taken') take(taken, event);
		else if (event.type === 'set-answer' || event.type === 'set-handed-in') work(taken, event);
	}
	const newestFirst = (one: { at: number }, other: { at: number }) => other.at - one.at;
	return {
		saved: [...saved.values()].sort(newestFirst),
		taken: [...taken.values()].sort(newestFirst),
		drawn
	};
}

function keepDrawn(drawn: Map<string, KeptSheet[]>, { hash, code, draws }: SetDrawn): void {
	const own = drawn.get(hash) ?? [];
	own.push({ code, draws });
	drawn.set(hash, own);
}

function keepSaved(
	saved: Map<string, SavedSet>,
	event: Extract<SetEvent, { type: 'set' | 'set-shelf' }>
): void {
	const { hash } = event;
	const known = saved.get(hash);
	if (event.type === 'set-shelf') {
		if (known) saved.set(hash, { ...known, on: event.to });
		return;
	}
	// What this version cannot read stays in the log, for one that can.
	const reading = readSet(event.set);
	if (reading.ok) saved.set(hash, { hash, set: reading.set, at: event.at, on: 'list' });
}

function take(taken: Map<string, TakenSet>, { hash, code, link, at }: SetTaken): void {
	const known = taken.get(keyOf({ hash, code }));
	taken.set(keyOf({ hash, code }), { answers: [], handedIn: [], ...known, hash, code, link, at });
}

function work(taken: Map<string, TakenSet>, event: SetAnswer | SetHandedIn): void {
	const known = taken.get(keyOf(event));
	if (!known) return;
	if (event.type === 'set-answer') {
		const others = known.answers.filter(({ place }) => place !== event.place);
		const answers = [...others, answerIn(event)].sort((one, other) => one.place - other.place);
		taken.set(keyOf(event), { ...known, answers });
	} else {
		const { version, name, promised, at } = event;
		const handedIn = { version, name, promised, at, answers: known.answers };
		taken.set(keyOf(event), { ...known, handedIn: [...known.handedIn, handedIn] });
	}
}

function answerIn(event: SetAnswer): HandInAnswer {
	const { place, entries, picked, units, opened, told, charts, seconds } = event;
	return { place, entries, picked, units, opened, ...(told && { told }), charts, seconds };
}

function keyOf({ hash, code }: Pick<TakenSet, 'hash' | 'code'>): string {
	return `${hash} ${code}`;
}

/** The version that the next hand-in has. */
export function nextVersion({ handedIn }: Pick<TakenSet, 'handedIn'>): number {
	return Math.max(0, ...handedIn.map(({ version }) => version)) + 1;
}
