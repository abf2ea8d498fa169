import { late } from '$lib/ui/late.ts';
import type { CourseSettings } from '$lib/engine/schedule/course-settings.ts';
import type { Attempt, KnownEvent } from '$lib/engine/schedule/event.ts';
import type { Learning } from '$lib/engine/schedule/learning.ts';
import type { Learner } from '$lib/storage/database.ts';
import type { FactsOf } from '$lib/storage/stamp.ts';
import { unexpected } from '../unexpected.svelte.ts';
import type { Desk } from './desk.ts';
import { keep, readKept } from './kept.ts';

export type AttemptFacts = Omit<Attempt, 'id' | 'v' | 'learner' | 'at' | 'day' | 'type'>;

/** An attempt whose id and time are settled before it is written. */
export interface SettledAttempt {
	readonly id: string;
	/** Milliseconds since 1970-01-01 UTC. */
	readonly at: number;
	readonly facts: AttemptFacts;
}

const learnerKey = 'bucktail.learner';

/** Tasks after which there is something worth keeping. */
const tasksWorthKeeping = 10;

/**
 * The learners on this device and the log of the one at work. Everything heavy is loaded when it
 * is first asked for, so that the first task does not wait for it.
 */
class Device {
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
	#writing: Promise<unknown> = Promise.resolve();
	/** How many writes are not done yet. */
	#waiting = 0;

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
			return await this.#opened(await late(() => import('./desk.ts')));
		} catch (error) {
			this.trouble = unexpected.sentence(error);
			// What could not be loaded is asked for again next time.
			this.#desk = null;
			return null;
		} finally {
			this.ready = true;
		}
	}

	async #opened({ openDesk, sentenceFor }: typeof import('./desk.ts')): Promise<Desk | null> {
		try {
			const desk = await openDesk({
				onTrouble: (sentence) => {
					this.trouble = sentence;
					// Pages go on without it while it stands still.
					this.ready = true;
				},
				onChange: (ids) => void this.#changedElsewhere(ids)
			});
			await this.#read(desk, readKept(learnerKey));
			this.trouble = null;
			return desk;
		} catch (error) {
			this.trouble = sentenceFor(error);
			return null;
		}
	}

	/**
	 * Reads the learners, and the log of the one at work or of the one last at work. What was
	 * settled before there was a learner is the first one's, and about to be written.
	 */
	async #read(desk: Desk, wanted: string | null, isFirst = false): Promise<void> {
		this.learners = await desk.learners();
		this.learner = this.learners.find(({ id }) => id === wanted) ?? this.learners[0] ?? null;
		keep(learnerKey, this.learner?.id ?? null);
		const { learner } = this;
		this.learning = await desk.learning(learner?.id);
		const course = learner ? await desk.course(learner.id) : null;
		this.course = course ?? (isFirst ? this.course : null);
	}

	async #changedElsewhere(ids: readonly string[]): Promise<void> {
		const desk = await this.open();
		if (!desk || ids.length === 0) return;
		const before = this.learner?.id ?? null;
		await this.#read(desk, before);
		if (before !== null && this.learner?.id !== before) this.removed = desk.removedSentence;
	}

	/** Reads everything again, after a restore or a change of learners. */
	async refresh(wanted: string | null = this.learner?.id ?? null): Promise<void> {
		const desk = await this.open();
		if (desk) await this.#read(desk, wanted);
	}

	/**
	 * Writes an attempt to the log of the learner at work; a first learner is added when there is
	 * none. Resolves to whether it is safely on this device.
	 */
	async record(facts: AttemptFacts): Promise<boolean> {
		const saved = await this.#write((desk, id) => desk.attempt(id, facts));
		if (saved) void this.#askToKeep();
		return saved;
	}

	/** Asks the browser to keep what is stored, once there is something worth keeping. */
	async #askToKeep(): Promise<void> {
		if (this.learning?.tasks !== tasksWorthKeeping) return;
		const { askToKeep } = await late(() => import('../learners/keep.ts'));
		await askToKeep();
	}

	/** The same for several at once, all or none; what the log has by its id already stays. */
	async recordAll(attempts: readonly SettledAttempt[]): Promise<boolean> {
		return this.#write((desk, id) => desk.attempts(id, attempts));
	}

	async setCourse(course: CourseSettings): Promise<boolean> {
		this.course = course;
		return this.#write((desk, id) => desk.setCourse(id, course));
	}

	/**
	 * Adds an event of any type to the log of the learner at work, as `record` does an attempt.
	 */
	note<T extends KnownEvent['type']>(facts: FactsOf<T>): Promise<boolean> {
		return this.#write((desk, id) => desk.note(id, facts));
	}

	/** The same for several events of a type at once, all or none. */
	noteAll<T extends KnownEvent['type']>(facts: readonly FactsOf<T>[]): Promise<boolean> {
		return this.#write((desk, id) => desk.noteAll(id, facts));
	}

	/** One write after the other, so that a first learner is added once and answers keep order. */
	#write(write: (desk: Desk, learner: string) => Promise<void>): Promise<boolean> {
		const { learner } = this;
		this.#waiting++;
		const written = this.#writing
			.then(() => this.#writeFor(learner, write))
			.finally(() => this.#waiting--);
		this.#writing = written.catch(() => {});
		return written;
	}

	async #writeFor(
		atWork: Learner | null,
		write: (desk: Desk, learner: string) => Promise<void>
	): Promise<boolean> {
		const desk = await this.open();
		if (!desk) return false;
		try {
			if (!this.learner) await this.#read(desk, await desk.firstLearner(), true);
			const learner = atWork ?? this.learner;
			if (!learner) return false;
			await write(desk, learner.id);
			if (learner.id === this.learner?.id) {
				this.learning = renewed(this.learning, await desk.learning(learner.id));
				const course = await desk.course(learner.id);
				// With more to write, the log is behind what was settled here.
				if (this.#waiting === 1) this.course = renewed(this.course, course);
			}
			this.trouble = null;
			return true;
		} catch (error) {
			const { sentenceFor } = await late(() => import('./desk.ts'));
			this.trouble = sentenceFor(error);
			return false;
		}
	}

	/** Another learner sits down at this device. */
	async switchTo(id: string): Promise<void> {
		const desk = await this.open();
		if (!desk) return;
		await desk.use(id);
		await this.#read(desk, id);
	}
}

/** What is here already where the log says the same, so that no plan is made again for it. */
function renewed<T>(here: T, read: T): T {
	return JSON.stringify(here) === JSON.stringify(read) ? here : read;
}

export const device = new Device();
