import { late } from '$lib/ui/late.ts';
import type { CourseSettings } from '$lib/engine/schedule/course-settings.ts';
import type { KnownEvent } from '$lib/engine/schedule/event.ts';
import type { Learner } from '$lib/storage/database.ts';
import type { FactsOf } from '$lib/storage/stamp.ts';
import type { Desk } from './desk.ts';
import { type AttemptFacts, device, type SettledAttempt } from './device.svelte.ts';
import { readDesk } from './reading.ts';

/** Tasks after which there is something worth keeping. */
const tasksWorthKeeping = 10;

/** Writes to the log of the learner at work. */
class Logbook {
	#writing: Promise<unknown> = Promise.resolve();
	/** How many writes are not done yet. */
	#waiting = 0;

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
		if (device.learning?.tasks !== tasksWorthKeeping) return;
		const { askToKeep } = await late(() => import('../learners/keep.ts'));
		await askToKeep();
	}

	/** The same for several at once, all or none; what the log has by its id already stays. */
	async recordAll(attempts: readonly SettledAttempt[]): Promise<boolean> {
		return this.#write((desk, id) => desk.attempts(id, attempts));
	}

	async setCourse(course: CourseSettings): Promise<boolean> {
		device.course = course;
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

	/** The same for very many, so many at once: more would hold the page up. False if any is not saved. */
	async noteInParts<T extends KnownEvent['type']>(
		facts: readonly FactsOf<T>[],
		atOnce: number
	): Promise<boolean> {
		let saved = true;
		for (let at = 0; at < facts.length; at += atOnce) {
			saved = (await this.noteAll(facts.slice(at, at + atOnce))) && saved;
		}
		return saved;
	}

	/** One write after the other, so that a first learner is added once and answers keep order. */
	#write(write: (desk: Desk, learner: string) => Promise<void>): Promise<boolean> {
		const { learner } = device;
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
		const desk = await device.open();
		if (!desk) return false;
		try {
			if (!device.learner) await readDesk(device, desk, await desk.firstLearner(), true);
			const learner = atWork ?? device.learner;
			if (!learner) return false;
			await write(desk, learner.id);
			if (learner.id === device.learner?.id) {
				device.learning = renewed(device.learning, await desk.learning(learner.id));
				const course = await desk.course(learner.id);
				// With more to write, the log is behind what was settled here.
				if (this.#waiting === 1) device.course = renewed(device.course, course);
			}
			device.trouble = null;
			return true;
		} catch (error) {
			const { sentenceFor } = await late(() => import('./desk.ts'));
			device.trouble = sentenceFor(error);
			return false;
		}
	}
}

/** What is here already where the log says the same, so that no plan is made again for it. */
function renewed<T>(here: T, read: T): T {
	return JSON.stringify(here) === JSON.stringify(read) ? here : read;
}

export const logbook = new Logbook();
