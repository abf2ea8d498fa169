import { late } from '$lib/ui/late.ts';
import type { CourseSettings } from '$lib/engine/schedule/course-settings.ts';
import type { Attempt } from '$lib/engine/schedule/event.ts';
import type { Learning } from '$lib/engine/schedule/learning.ts';
import type { Learner } from '$lib/storage/database.ts';
import { unexpected } from '../unexpected.svelte.ts';
import type { Desk } from './desk.ts';
import { readKept } from './kept.ts';

export type AttemptFacts = Omit<Attempt, 'id' | 'v' | 'learner' | 'at' | 'day' | 'type'>;

/** An attempt whose id and time are settled before it is written. */
export interface SettledAttempt {
	readonly id: string;
	/** Milliseconds since 1970-01-01 UTC. */
	readonly at: number;
	readonly facts: AttemptFacts;
}

/** Where the learner at work is kept, for pages whose store is not open yet. */
export const learnerKey = 'bucktail.learner';

/**
 * The learners on this device and what the log of the one at work comes to. All that opens the store
 * or writes to it (opening.ts, logbook.ts) is loaded when it is first asked for, so that the first task
 * does not wait for it.
 */
export class Device {
	/** The learners here, the one last at work first. */
	learners = $state.raw<readonly Learner[]>([]);
	learner = $state.raw<Learner | null>(null);
	/** What the log of the learner at work comes to; null until it has been read. */
	learning = $state.raw<Learning | null>(null);
	course = $state.raw<CourseSettings | null>(null);
	/** One sentence when something is wrong with the store, else null. */
	trouble = $state<string | null>(null);
	/** One sentence when another tab removed the learner at work here, until the next page. */
	removed = $state<string | null>(null);
	/** Whether the store has been opened, or has failed to. */
	ready = $state(false);
	#desk: Promise<Desk | null> | null = null;

	/** Id of the learner at work, known before the store is open. */
	get learnerId(): string | null {
		return this.learner?.id ?? readKept(learnerKey);
	}

	/** Opens the store, once; resolves to null when this browser cannot. */
	open(): Promise<Desk | null> {
		this.#desk ??= this.#open();
		return this.#desk;
	}

	async #open(): Promise<Desk | null> {
		try {
			return await (await late(() => import('./opening.ts'))).openFor(this);
		} catch (error) {
			this.trouble = unexpected.sentence(error);
			// What could not be loaded is asked for again next time.
			this.#desk = null;
			return null;
		} finally {
			this.ready = true;
		}
	}
}

export const device = new Device();
