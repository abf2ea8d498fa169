import { loadFamily } from '$lib/engine/families/catalogue.ts';
import { cards } from '$lib/engine/families/topics.ts';
import { type Way, waysOf } from '$lib/engine/lessons/lesson.ts';
import { type Task, taskFromNumber } from '$lib/engine/tasks/task.ts';
import { newId } from '$lib/storage/new-id.ts';
import type { LastSteps, StepsCheck } from '$lib/ui/lessons/last-steps.svelte.ts';
import { below } from '../device/chance.ts';
import { logbook } from '../device/logbook.ts';
import { newTask } from '../practice/run.ts';
import { lessonAttempt, lessonEvidence } from './lesson-evidence.ts';

/** The lesson that is open, and what its reader answers. */
export class LessonPage {
	ways = $state.raw<readonly Way[]>([]);
	/** Id of a family that has no lesson; null while all is well. */
	unknown = $state<string | null>(null);
	/** One lesson is one sitting in the log. */
	#runId = newId();
	#since = Date.now();
	#charged: string[] = [];
	#about: Task | null = null;

	get id(): string | null {
		return this.ways[0]?.family.id ?? null;
	}

	/** Opens the lesson of a family; an empty id closes it. */
	async open(id: string): Promise<void> {
		this.unknown = null;
		if (id === this.id) return;
		const card = cards.find((one) => one.id === id);
		this.unknown = card || id === '' ? null : id;
		this.ways = card ? waysOf(await loadFamily(card)) : [];
		this.#runId = newId();
	}

	/** A task of the family with fresh numbers: the easiest level, which asks one thing. */
	async newTask(): Promise<Task> {
		const card = cards.find(({ id }) => id === this.id);
		if (!card) throw new Error('no lesson is open');
		this.#since = Date.now();
		return taskFromNumber(newTask(card, 2, below).number);
	}

	async checked(work: LastSteps, check: StepsCheck): Promise<void> {
		if (this.#about !== work.task) this.#charged = [];
		this.#about = work.task;
		const skills = lessonEvidence(work, check, this.#charged);
		const wrong = skills.filter(({ result }) => result === 'wrong').map(({ skill }) => skill);
		this.#charged.push(...wrong);
		const now = Date.now();
		const seconds = (now - this.#since) / 1000;
		this.#since = now;
		await logbook.record(lessonAttempt(work, check, { runId: this.#runId, seconds, skills }));
	}
}

export const lessonPage = new LessonPage();
