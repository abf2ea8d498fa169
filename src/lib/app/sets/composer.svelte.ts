import type { Level } from '$lib/engine/families/level.ts';
import type { TopicId } from '$lib/engine/families/topics.ts';
import { wholeSyllabus } from '$lib/engine/schedule/whole-syllabus.ts';
import {
	plainTerms,
	readWish,
	spreadMarks,
	type Terms,
	termsOf
} from '$lib/engine/sets/compose.ts';
import {
	countOf,
	dealtDraft,
	type Draft,
	draftOf,
	marked,
	moved,
	redrawn,
	setOf,
	swapped,
	tasksNow,
	wishedDraft,
	withCount
} from '$lib/engine/sets/draft.ts';
import { termsAgain, wishesFor } from '$lib/engine/sets/follow-up.ts';
import { questionFor } from '$lib/engine/sets/open-set.ts';
import { heldTo } from '$lib/engine/sets/own-tolerance.ts';
import { marksOf, setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { SetError } from '$lib/engine/sets/set-error.ts';
import { writeSet } from '$lib/exchange/set-link.ts';
import { TaskNumberError } from '$lib/engine/tasks/task-number.ts';
import { listed } from '$lib/ui/listed.ts';
import { newId } from '$lib/storage/new-id.ts';
import { device } from '../device/device.svelte.ts';
import { type Dealt, keepDraft, readDraft } from './kept-draft.ts';
import { setShelf } from './shelf.svelte.ts';

/** Tasks of a first deal, and their level. */
const usual = 12;

/** The set that the learner at work is composing; it is kept on this device at every change. */
class Composer {
	terms = $state.raw<Terms>(plainTerms(''));
	draft = $state.raw<Draft>([]);
	/** What its tasks were last dealt from; null where they were chosen one by one. */
	dealt = $state.raw<Dealt | null>(null);
	/** The fragment of the link to the set as it is now; null where it is no set yet. */
	fragment = $state<string | null>(null);
	/** One sentence on what went wrong last, or null. */
	problem = $state<string | null>(null);
	/** Whether tasks are being drawn. */
	busy = $state(false);
	ready = $state(false);

	/** The set, or what it lacks. */
	readonly reading = $derived(setOf(this.terms, this.draft));
	readonly set: TaskSet | null = $derived(this.reading.ok ? this.reading.set : null);
	readonly hash = $derived(this.set && setHash(this.set));
	readonly marks = $derived(this.set ? marksOf(this.set) : 0);
	/** The tasks, held to the tolerances of the set. */
	readonly tasks = $derived(this.draft.map(({ task }) => heldTo(task, this.terms.within)));
	/** How many of the tasks have options enough to choose from. */
	readonly chosen = $derived(this.draft.filter(({ task }) => questionFor(task) !== null).length);
	readonly saved = $derived(
		setShelf.sets?.saved.some(({ hash, on }) => hash === this.hash && on !== 'bin') ?? false
	);
	#changing: Promise<unknown> = Promise.resolve();

	/** Takes up the set that was being composed, or what the address asks for. */
	async load(asked: URLSearchParams): Promise<void> {
		this.ready = false;
		await setShelf.load();
		const from = asked.get('from');
		const missed = asked.get('missed');
		if (missed !== null) await this.#takeMissed(missed, from);
		else if (from !== null) await this.#takeSaved(from);
		else if (asked.has('fresh')) await this.#takeUnsaved();
		else await this.#takeKept();
		this.ready = true;
	}

	async #takeSaved(hash: string): Promise<void> {
		const saved = await setShelf.find(hash);
		if (saved) await this.#take(saved.set);
		else {
			this.clear();
			this.problem = `No set ${hash} is saved for you on this device; compose it anew.`;
		}
	}

	/**
	 * Tasks for what a class missed, on the terms of the set that it was missed in.
	 *
	 * @param list skills, or kinds of task such as `RL2*2`, with commas between
	 */
	async #takeMissed(list: string, from: string | null): Promise<void> {
		this.clear();
		const before = from === null ? null : await setShelf.find(from);
		this.terms = termsAgain(before?.set ?? null);
		const parts = list.split(',').filter((part) => part !== '');
		const skills = parts.filter((part) => part.includes('/'));
		await this.#change(async () => {
			const wishes = parts.filter((part) => !part.includes('/')).map(readWish);
			const missed = skills.length > 0 ? wishesFor(await wholeSyllabus(), skills) : [];
			return wishedDraft([...wishes, ...missed], this.#seed);
		});
		if (this.draft.length === 0) this.problem ??= 'No kind of task practises that; choose some.';
	}

	async #takeKept(): Promise<void> {
		const { title, set, dealt } = readDraft();
		if (set) await this.#take(set, dealt);
		else this.clear();
		this.terms = { ...this.terms, title };
	}

	/** What was being composed and is saved nowhere; what is saved makes room for another set. */
	async #takeUnsaved(): Promise<void> {
		await this.#takeKept();
		if (this.saved) this.begin();
	}

	async #take(set: TaskSet, dealt: Dealt | null = null): Promise<void> {
		this.clear();
		this.dealt = dealt;
		await this.#change(async () => {
			const { drawn, anew } = await tasksNow(set);
			this.terms = termsOf(set);
			if (anew.length > 0) this.problem = saysAnew(anew);
			return draftOf(set, drawn);
		});
	}

	/** Begins with nothing. */
	clear(): void {
		this.terms = plainTerms('');
		this.draft = [];
		this.dealt = null;
		this.problem = null;
		this.fragment = null;
	}

	/** Begins another set, and forgets this one. */
	begin(): void {
		this.clear();
		void this.keep();
	}

	/** The text that tasks are dealt from; one is made where nobody has written any. */
	get #seed(): string {
		const seed = this.terms.seed.trim() || this.terms.title.trim() || newId().slice(0, 8);
		this.terms = { ...this.terms, seed };
		return seed;
	}

	count(code: string, level: Level): number {
		return countOf(this.draft, { code, level });
	}

	setCount(code: string, level: Level, count: number): Promise<void> {
		return this.#change(() => withCount(this.draft, this.#seed, { code, level, count }));
	}

	deal(topics: readonly TopicId[], levels: readonly Level[], count = usual): Promise<void> {
		if (topics.length === 0 || levels.length === 0) {
			this.problem = 'Choose at least one topic and one level.';
			return Promise.resolve();
		}
		this.dealt = { topics, levels };
		return this.#change(() => dealtDraft(this.#seed, topics, levels, count));
	}

	/** Draws all tasks from another seed text. */
	reseed(seed: string): Promise<void> {
		this.terms = { ...this.terms, seed };
		return this.#change(() => redrawn(this.draft, this.#seed));
	}

	swap(at: number): Promise<void> {
		return this.#change(() => swapped(this.draft, this.#seed, at));
	}

	move(from: number, to: number): void {
		this.draft = moved(this.draft, from, to);
		void this.keep();
	}

	remove(at: number): void {
		this.draft = this.draft.filter((_, i) => i !== at);
		void this.keep();
	}

	/** Gives one step of a task other marks. */
	mark(at: number, step: number, marks: number): void {
		this.draft = marked(this.draft, at, (own) => own.map((one, i) => (i === step ? marks : one)));
		void this.keep();
	}

	/** Gives a whole task other marks, spread over its steps. */
	markWhole(at: number, marks: number): void {
		this.draft = marked(this.draft, at, (own) => spreadMarks(marks, own.length));
		void this.keep();
	}

	/** Carries out one change after the other, so that quick presses lose none. */
	#change(change: () => Promise<Draft>): Promise<void> {
		const done = this.#changing.then(async () => {
			this.busy = true;
			this.problem = null;
			try {
				this.draft = await change();
			} catch (error) {
				this.problem = sentenceOf(error);
			} finally {
				this.busy = false;
			}
			await this.keep();
		});
		this.#changing = done.catch(() => {});
		return done;
	}

	/** Keeps the set as it is now, and writes its link. */
	async keep(): Promise<void> {
		const { set, terms, draft, dealt } = this;
		keepDraft(terms, draft, dealt);
		const fragment = set ? await writeSet(set) : null;
		if (this.set === set) this.fragment = fragment;
	}

	/**
	 * Puts the set into the log; false, with a problem told, where some students could not be
	 * given it.
	 */
	async save(): Promise<boolean> {
		const { set } = this;
		if (!set) return false;
		let saved = this.saved;
		try {
			saved ||= await setShelf.save(set);
		} catch (error) {
			this.problem = sentenceOf(error);
			return false;
		}
		this.problem = saved ? null : (device.trouble ?? 'This browser cannot keep the set.');
		return true;
	}
}

function saysAnew(places: readonly number[]): string {
	const tasks = places.length === 1 ? 'Task' : 'Tasks';
	return `${tasks} ${listed(places)}: drawn anew, since an update draws other numbers. This is another set now.`;
}

function sentenceOf(error: unknown): string {
	if (error instanceof SetError || error instanceof TaskNumberError) return error.message;
	throw error;
}

export const composer = new Composer();
