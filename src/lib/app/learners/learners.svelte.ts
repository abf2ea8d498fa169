import { late } from '$lib/ui/late.ts';
import { addLearner, removeLearner, renameLearner } from '$lib/storage/learners.ts';
import {
	askToPersist,
	type Persistence,
	persistence,
	persistenceSentences
} from '$lib/storage/persist.ts';
import type { Store } from '$lib/storage/store.ts';
import { sentenceFor } from '$lib/storage/trouble.ts';
import { type Adding, recordsIn } from '$lib/ui/learners/file-content.ts';
import type { Chosen } from './backup.ts';
import { device } from '../device/device.svelte.ts';
import { refresh, switchTo } from '../device/reading.ts';
import { askToKeep } from './keep.ts';
import { practice } from '../practice/practice.svelte.ts';

/** What can be done with the learners of this device and with their backups. */
class Learners {
	/** What was done last with the learners, in one sentence. */
	said = $state('');
	/** What was done last with a backup, in one sentence. */
	saidOfBackup = $state('');
	/** What the browser answered when it was asked to keep what is stored. */
	answer = $state('');
	/** What is wrong with a nickname just typed. */
	problem = $state('');
	/** Why a file was refused. */
	refusal = $state('');
	/** The backup that was chosen and is not added yet. */
	chosen = $state.raw<Chosen | null>(null);
	/** How far adding the chosen file is; null when it is not being added. */
	adding = $state.raw<Adding | null>(null);
	#off = new AbortController();
	#kept = $state<Persistence | null>(null);

	/** Everyone but the one at work, by nickname. */
	readonly others = $derived(
		device.learners
			.filter(({ id }) => id !== device.learner?.id)
			.toSorted((a, b) => a.nickname.localeCompare(b.nickname, 'en', { numeric: true }))
	);

	/** The browser's answer to whether it keeps what is stored. */
	readonly keptWords = $derived(this.#kept === null ? '' : persistenceSentences[this.#kept]);
	/** Whether asking the browser for it may still help. */
	readonly mayAsk = $derived(this.#kept === 'refused');

	async load(): Promise<void> {
		this.said = this.saidOfBackup = this.answer = this.problem = this.refusal = '';
		this.chosen = null;
		await refresh();
		await practice.load();
		this.#kept = await persistence();
	}

	/** @returns whether the learner was added, who is then at work */
	async add(typed: string): Promise<boolean> {
		return this.#change(async (store) => {
			const change = await addLearner(store, typed);
			this.problem = change.ok ? '' : change.sentence;
			if (!change.ok) return false;
			this.#kept = await askToKeep();
			await this.#sitDown(change.learner.id);
			this.said = `${change.learner.nickname} was added and is at work now.`;
			return true;
		});
	}

	/** @returns whether the learner at work has the new nickname */
	async rename(typed: string): Promise<boolean> {
		const id = device.learner?.id ?? '';
		return this.#change(async (store) => {
			const change = await renameLearner(store, id, typed);
			this.problem = change.ok ? '' : change.sentence;
			if (!change.ok) return false;
			await refresh();
			this.said = `The nickname is now ${change.learner.nickname}.`;
			return true;
		});
	}

	async workAs(id: string): Promise<void> {
		await this.#change(async () => {
			await this.#sitDown(id);
			this.said = `${device.learner?.nickname ?? 'Nobody'} is at work now.`;
			return true;
		});
	}

	/** Removes the learner at work; whoever was at work before comes next. */
	async remove(): Promise<void> {
		const { learner } = device;
		if (!learner) return;
		await this.#change(async (store) => {
			await removeLearner(store, learner.id);
			await refresh(null);
			await practice.load();
			const next = device.learner ? ` ${device.learner.nickname} is at work now.` : '';
			this.said = `${learner.nickname} was removed from this device.${next}`;
			return true;
		});
	}

	/** Saves a backup of the learner at work, or of all. @returns whether there is a file */
	async backUp(who: 'one' | 'all'): Promise<boolean> {
		const learners = device.learners.filter(({ id }) => who === 'all' || id === device.learner?.id);
		return this.#change(async (store) => {
			const { saveBackup } = await late(() => import('./backup.ts'));
			const saved = await saveBackup(store, learners, new Date());
			this.saidOfBackup = saved.sentence;
			await refresh();
			this.#kept = await askToKeep();
			return saved.ok;
		});
	}

	/** Reads a file that was chosen to be restored, and changes nothing else. */
	async choose(file: File): Promise<void> {
		const { chooseBackup } = await late(() => import('./backup.ts'));
		const choosing = await chooseBackup(file);
		this.chosen = choosing.ok ? choosing.chosen : null;
		this.refusal = choosing.ok ? '' : choosing.sentence;
		this.saidOfBackup = '';
	}

	/** Adds what the chosen file holds. */
	async merge(): Promise<void> {
		const { chosen } = this;
		if (!chosen || this.adding !== null) return;
		this.#off = new AbortController();
		this.adding = { done: 0, of: recordsIn(chosen.content) };
		this.saidOfBackup = '';
		const whole = await this.#change(async (store) => {
			this.saidOfBackup = await chosen.merge(store, {
				signal: this.#off.signal,
				onProgress: (done, of) => (this.adding = { done, of })
			});
			this.chosen = null;
			await refresh();
			await practice.load();
			return true;
		});
		this.adding = null;
		if (!whole && this.saidOfBackup === '') {
			this.saidOfBackup = 'Not all of it was added: add it again, and it goes on from there.';
		}
	}

	/** Ends adding the chosen file; what is in stays. */
	callOff(): void {
		this.#off.abort();
	}

	leave(): void {
		this.chosen = null;
	}

	/** Puts the question to the browser because the person wants it. */
	async askAgain(): Promise<void> {
		this.#kept = await askToPersist();
		this.answer = this.mayAsk ? 'It did not agree this time; a backup is the sure way.' : '';
	}

	async #sitDown(id: string): Promise<void> {
		await switchTo(id);
		await practice.load();
	}

	/** Does something with the store; what goes wrong is said in one sentence. */
	async #change(work: (store: Store) => Promise<boolean>): Promise<boolean> {
		const desk = await device.open();
		if (!desk) return false;
		try {
			return await work(desk.store);
		} catch (error) {
			device.trouble = sentenceFor(error);
			return false;
		}
	}
}

export const learners = new Learners();
