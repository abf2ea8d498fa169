import { type HandInAnswer, noAnswer } from '$lib/engine/sets/hand-in.ts';
import type { TakenSet } from '$lib/engine/sets/shelf.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import { keep, readKept } from '../device/kept.ts';
import { readKeptAnswer } from './kept-answers.ts';

/** How long an entry may rest before it goes to the log, in milliseconds. */
const rest = 1500;

/**
 * What a student has entered in a set. Every change is kept on this device at once, so that no key
 * press is lost, and goes to the log a little later; once it is there, the quick copy is dropped.
 */
export class AnswerSheet {
	answers = $state.raw<readonly HandInAnswer[]>([]);
	/** How the newest entries stand with the log. */
	saved = $state<'none' | 'saving' | 'saved' | 'failed'>('none');
	readonly #of: Pick<TakenSet, 'hash' | 'code'>;
	/** Places that wait to be written. */
	#waiting: readonly number[] = [];
	#timer: ReturnType<typeof setTimeout> | undefined;

	/** @param places how many tasks there are */
	constructor(taken: Pick<TakenSet, 'hash' | 'code' | 'answers'>, places: number) {
		this.#of = taken;
		this.answers = Array.from({ length: places }, (_, i) => {
			const logged = taken.answers.find(({ place }) => place === i + 1);
			const kept = readKeptAnswer(readKept(this.#keyOf(i + 1)));
			if (kept) void this.#write(i + 1);
			return kept ?? logged ?? noAnswer(i + 1, 'in');
		});
	}

	at(place: number): HandInAnswer {
		return this.answers[place - 1] ?? noAnswer(place, 'in');
	}

	put(answer: HandInAnswer): void {
		const { place } = answer;
		if (JSON.stringify(answer) === JSON.stringify(this.at(place))) return;
		this.answers = this.answers.map((one) => (one.place === place ? answer : one));
		keep(this.#keyOf(place), JSON.stringify(answer));
		this.#waiting = [...this.#waiting.filter((one) => one !== place), place];
		clearTimeout(this.#timer);
		this.#timer = setTimeout(() => void this.flush(), rest);
	}

	/** Writes to the log what waits; resolves to whether all of it is there. */
	async flush(): Promise<boolean> {
		clearTimeout(this.#timer);
		const places = this.#waiting;
		this.#waiting = [];
		const written = await Promise.all(places.map((place) => this.#write(place)));
		return written.every(Boolean);
	}

	async #write(place: number): Promise<boolean> {
		const key = this.#keyOf(place);
		const text = readKept(key);
		const answer = readKeptAnswer(text) ?? this.at(place);
		this.saved = 'saving';
		const { hash, code } = this.#of;
		const seconds = Math.round(answer.seconds ?? 0);
		const written = await logbook.note({ type: 'set-answer', hash, code, ...answer, seconds });
		// What was entered meanwhile is still to be written.
		if (written && readKept(key) === text) keep(key, null);
		this.saved = written ? 'saved' : 'failed';
		return written;
	}

	#keyOf(place: number): string {
		const { hash, code } = this.#of;
		return `bucktail.set.${device.learnerId ?? 'first'}.${hash}.${code}.${place}`;
	}
}
