import { type HandIn, noAnswer } from '$lib/engine/sets/hand-in.ts';
import { hashOf } from '$lib/engine/sets/hash.ts';
import type { OpenSet, SetTask } from '$lib/engine/sets/open-set.ts';
import { type AnswerMark, markAnswer } from '$lib/engine/sets/mark-answer.ts';
import type { Question } from '$lib/engine/sets/rehearsal.ts';
import { optionChosen, optionEntry } from '$lib/engine/sets/chosen-option.ts';
import { type ReviewRow, reviewOf } from '$lib/engine/sets/review.ts';
import { SetError } from '$lib/engine/sets/set-error.ts';
import { type HandedIn, nextVersion, type TakenSet } from '$lib/engine/sets/shelf.ts';
import { readCode } from '$lib/engine/sets/student-code.ts';
import { handInName, writeHandInFile, writeHandInText } from '$lib/exchange/hand-in-file.ts';
import { readSetLink, writeSet } from '$lib/exchange/set-link.ts';
import { stepsOf } from '$lib/engine/tasks/task.ts';
import { loadReader } from '$lib/engine/quantity/reader.ts';
import { newId } from '$lib/storage/new-id.ts';
import { type Check, TaskWork } from '$lib/ui/sheet/task-work.svelte.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import { settings } from '../device/settings.svelte.ts';
import { AnswerSheet } from './answer-sheet.svelte.ts';
import { afterCheck, afterMarks, answerIn, chartsIn, takeUp } from './kept-answers.ts';
import { checkedAttempt, handedInAttempt } from './set-attempts.ts';
import { setShelf } from './shelf.svelte.ts';
import { keepTab, readTab } from './tab-code.ts';

/** Longest time counted at one look: a page left open is no work. */
const longestLook = 600;

type Stage =
	| 'loading'
	| 'none'
	| 'refused'
	| 'sent'
	| 'working'
	| 'review'
	| 'handed-in'
	| 'looking';

/** A set that was sent to somebody, from the first look to handing it in. */
class SetWorkshop {
	stage = $state<Stage>('loading');
	/** Why the link cannot be used: one sentence. */
	problem = $state('');
	open = $state.raw<OpenSet | null>(null);
	/** What the log knows of the work on this set, under every code; newest first. */
	begun = $state.raw<readonly TakenSet[]>([]);
	taken = $state.raw<TakenSet | null>(null);
	sheet = $state.raw<AnswerSheet | null>(null);
	/** Place of the open task, from 1. */
	place = $state(1);
	work = $state.raw<TaskWork | null>(null);
	/** What bare lengths of the open task are in. */
	units = $state.raw(settings.units);
	rows = $state.raw<readonly ReviewRow[]>([]);
	/** How each task came out, once it was handed in and looked at. */
	cameOut = $state.raw<readonly (readonly AnswerMark[])[]>([]);
	/** How the open task did. */
	readonly marks: readonly AnswerMark[] = $derived(this.cameOut[this.place - 1] ?? []);
	#since = 0;
	/** The set as the fragment of its link. */
	#fragment = '';

	readonly tasks: readonly SetTask[] = $derived(
		this.open && this.taken ? this.open.for(this.taken.code) : []
	);
	readonly current: SetTask | null = $derived(this.tasks[this.place - 1] ?? null);
	readonly last: HandedIn | null = $derived(this.taken?.handedIn.at(-1) ?? null);
	/** Places that have an entry. */
	readonly entered = $derived(
		(this.sheet?.answers ?? []).map(({ entries }) => Object.keys(entries).length > 0)
	);

	/** Opens the set of an address. */
	async load(address: string): Promise<void> {
		this.leave();
		if (!address.includes('#') || address.endsWith('#')) return this.#stand('none');
		const reading = await readSetLink(address);
		if (!reading.ok) return this.#refuse(reading.sentence);
		try {
			this.open = await setShelf.open(reading.set);
		} catch (error) {
			if (error instanceof SetError) return this.#refuse(error.message);
			throw error;
		}
		this.#fragment = await writeSet(reading.set);
		const { hash } = this.open;
		const { taken } = await setShelf.load();
		this.begun = taken.filter((one) => one.hash === hash);
		// Where this browser keeps no log, what was begun on this page is still at hand.
		if (this.begun.length === 0 && this.taken?.hash === hash) this.begun = [this.taken];
		const atWork = this.begun.find(({ code }) => code === readTab());
		if (atWork) await this.start(atWork.code);
		else this.#stand('sent');
	}

	#stand(stage: Stage): void {
		this.stage = stage;
	}

	#refuse(sentence: string): void {
		this.problem = sentence;
		this.open = null;
		this.#stand('refused');
	}

	/** Begins under a code, or goes on; null, or one sentence on the code. */
	async start(typed: string): Promise<string | null> {
		const { open } = this;
		const reading = readCode(typed);
		if (!open) return null;
		if (!reading.ok) return reading.sentence;
		const { code } = reading;
		try {
			open.for(code);
		} catch (error) {
			if (error instanceof SetError) return error.message;
			throw error;
		}
		const { hash } = open;
		const link = this.#fragment;
		const known = this.begun.find((one) => one.code === code);
		if (!known) await logbook.note({ type: 'set-taken', hash, code, link });
		void setShelf.keepDrawn(open, code);
		this.taken = known ?? { hash, code, link, at: Date.now(), answers: [], handedIn: [] };
		this.sheet = new AnswerSheet(this.taken, open.set.tasks.length);
		keepTab(code);
		await loadReader();
		const first = this.sheet.answers.findIndex(({ entries }) => Object.keys(entries).length === 0);
		if (this.last) this.#stand('handed-in');
		else this.go(first + 1 || 1);
		return null;
	}

	/** Opens the task at a place. */
	go(place: number): void {
		const { sheet } = this;
		this.leave();
		this.place = Math.min(Math.max(1, place), this.tasks.length);
		const { current } = this;
		if (!sheet || !current) return;
		const answer = sheet.at(this.place);
		const isEmpty = Object.keys(answer.entries).length === 0;
		this.units = isEmpty ? settings.units : answer.units;
		const work = new TaskWork(current.task, () => this.units);
		takeUp(work, answer);
		this.work = work;
		this.#since = Date.now();
		this.#stand('working');
	}

	/**
	 * Shows how a task that was handed in came out. From then on a version handed in again tells
	 * that its working was open.
	 */
	async lookAt(place: number): Promise<void> {
		const { sheet, last } = this;
		this.place = Math.min(Math.max(1, place), this.tasks.length);
		const { current } = this;
		const answer = last?.answers.find((one) => one.place === this.place);
		if (!sheet || !current || !last || !answer) return;
		this.units = answer.units;
		const marks: AnswerMark[][] = [];
		for (const [i, own] of this.tasks.entries()) {
			const given = last.answers.find((one) => one.place === i + 1) ?? noAnswer(i + 1, 'in');
			marks.push(await markAnswer(own, given));
		}
		this.cameOut = marks;
		// The marks of every task are seen beside this one.
		for (const [i, own] of marks.entries()) sheet.put(afterMarks(sheet.at(i + 1), own));
		const opened = [...new Set([...sheet.at(this.place).opened, ...stepsOf(current.task)])];
		sheet.put({ ...sheet.at(this.place), opened });
		this.#stand('looking');
	}

	/** Back to what was handed in. */
	showHandedIn(): void {
		this.leave();
		this.#stand('handed-in');
	}

	/** Another student takes the device, or another code is wanted. */
	stop(): void {
		this.leave();
		keepTab(null);
		this.taken = null;
		this.sheet = null;
		this.#stand('sent');
	}

	/** Keeps what stands in the fields of the open task. */
	keep(): void {
		const { sheet, work, current } = this;
		if (!sheet || !work || this.stage !== 'working') return;
		const before = sheet.at(this.place);
		const now = Date.now();
		const look = Math.min(Math.max(0, now - this.#since) / 1000, longestLook);
		this.#since = now;
		const seconds = (before.seconds ?? 0) + look;
		const timed = { ...before, charts: chartsIn(work, before), seconds };
		sheet.put(current?.question ? timed : answerIn(work, timed, this.units));
	}

	/** An answer was checked on the sheet, where that is allowed: it goes to the log as practice. */
	async checked(check: Check): Promise<void> {
		this.keep();
		const { work, current, sheet, taken } = this;
		if (!work || !current || !sheet || !taken) return;
		sheet.put(afterCheck(sheet.at(this.place), check));
		const before = work.checks.slice(0, -1);
		await logbook.record(checkedAttempt(work, check, before, sheet.at(this.place), taken.hash));
	}

	/** Takes one of the options of the open task. */
	choose(question: Question, option: number): void {
		const { sheet } = this;
		if (!sheet) return;
		this.keep();
		const entries = { [question.key]: optionEntry(question, option) };
		sheet.put({ ...sheet.at(this.place), entries });
	}

	/** The option that is chosen in the open task. */
	chosen(question: Question): number | null {
		return optionChosen(question, this.sheet?.at(this.place).entries[question.key] ?? '');
	}

	/** The units were switched while a task is open: what stands there is read in the new ones. */
	switchUnits(): void {
		if (this.stage !== 'working') return;
		this.units = settings.units;
		this.keep();
	}

	/** The page is left, or another task opened. */
	leave(): void {
		this.keep();
		void this.sheet?.flush();
	}

	/** The page is looked at again: the time away does not count. */
	look(): void {
		this.#since = Date.now();
	}

	async review(): Promise<void> {
		this.leave();
		this.rows = await reviewOf(this.tasks, this.sheet?.answers ?? []);
		this.#stand('review');
	}

	async handIn(name: string, promised: boolean): Promise<void> {
		const { taken, sheet } = this;
		if (!taken || !sheet) return;
		await sheet.flush();
		const { hash, code } = taken;
		const version = nextVersion(taken);
		await logbook.note({ type: 'set-handed-in', hash, code, version, name, promised });
		// Later versions may be made with the working open, and show nothing new.
		if (version === 1) void this.#practised();
		const handedIn = { version, name, promised, at: Date.now(), answers: sheet.answers };
		this.taken = { ...taken, handedIn: [...taken.handedIn, handedIn] };
		this.#stand('handed-in');
	}

	/** What was answered without a check goes to the log as practice too, once it is handed in. */
	async #practised(): Promise<void> {
		const { tasks, sheet, open, taken } = this;
		for (const [i, own] of tasks.entries()) {
			if (!sheet || !taken || (open?.set.help && !own.question)) continue;
			const attempt = await handedInAttempt(own, sheet.at(i + 1), taken.hash);
			if (attempt) await logbook.record(attempt);
		}
	}

	/** The newest version as a file, and as a text to paste where it fits one. */
	async packed(): Promise<{ name: string; file: string; text: string | null } | null> {
		const { taken, last, open } = this;
		if (!taken || !last || !open) return null;
		const handIn: HandIn = {
			set: taken.link,
			hash: taken.hash,
			code: taken.code,
			device: hashOf(`learner ${device.learnerId ?? unkept}`, 10),
			name: last.name,
			version: last.version,
			promised: last.promised,
			at: new Date(last.at).toISOString(),
			answers: last.answers.map((answer) => ({
				...answer,
				seconds: Math.round(answer.seconds ?? 0)
			}))
		};
		const text = await writeHandInText(handIn);
		return { name: handInName(handIn), file: writeHandInFile(handIn), text };
	}
}

/** Stands for the learner where this browser keeps none. */
const unkept = newId();

export const setWork = new SetWorkshop();
