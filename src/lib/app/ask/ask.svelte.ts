import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import type { Asked } from '$lib/ui/ask/asked.ts';
import type { TaskWork } from '$lib/ui/sheet/task-work.svelte.ts';
import { unexpected } from '../unexpected.svelte.ts';
import { type Asking, questionOf, replay } from './ask.ts';
import { longestNote, type Question, readQuestion, writeQuestion } from './ask-link.ts';

/** The question to an instructor that is open: one just made here, or one from a link. */
class Ask {
	asked = $state.raw<Asked | null>(null);
	/** Why a link could not be opened: one sentence. */
	problem = $state<string | null>(null);
	/** The fragment of the address that shows the question. */
	fragment = $state('');
	/** Whether the question was made here and may still get a note. */
	mine = $state(false);
	#question: Question | null = null;
	#made = '';

	/** Makes a question of the work on a task. Resolves to the fragment of its address. */
	async about(work: TaskWork, units: LengthUnit): Promise<string> {
		this.#made = await writeQuestion(await questionOf(work, units));
		return this.#made;
	}

	/** Opens the question that an address holds. */
	async open(fragment: string): Promise<void> {
		const plain = fragment.replace(/^#/, '');
		if (plain === this.fragment && this.asked) return;
		unexpected.clear();
		this.fragment = plain;
		this.asked = null;
		this.problem = null;
		if (plain === '') return;
		const reading = await readQuestion(plain);
		const asking = reading.ok ? await again(reading.question) : reading;
		// Another address may have been opened meanwhile.
		if (this.fragment !== plain) return;
		this.problem = asking.ok ? null : asking.sentence;
		this.asked = asking.ok ? asking.asked : null;
		this.#question = reading.ok ? reading.question : null;
		this.mine = plain === this.#made;
	}

	/** Puts the note into the question and its address. */
	async note(text: string): Promise<void> {
		const { asked } = this;
		if (!this.#question || !asked) return;
		const question = { ...this.#question, note: text.slice(0, longestNote) };
		this.#question = question;
		this.asked = { ...asked, note: question.note };
		const fragment = await writeQuestion(question);
		// A later letter of the note may have been typed meanwhile.
		if (this.#question !== question) return;
		this.#made = fragment;
		this.fragment = fragment;
	}
}

async function again(question: Question): Promise<Asking> {
	try {
		return await replay(question);
	} catch (error) {
		const todo = 'reload this page, or open the task by its number';
		return { ok: false, sentence: unexpected.sentence(error, question.task, todo) };
	}
}

export const ask = new Ask();
