import { loadFamilies } from '$lib/engine/families/catalogue.ts';
import type { Family } from '$lib/engine/families/family.ts';
import { seedCount } from '$lib/engine/tasks/task-number.ts';
import { givensOf, numbersIn } from '$lib/engine/tasks/givens.ts';
import { resultOf } from '$lib/engine/sets/rehearsal-marks.ts';
import { kept } from '$lib/engine/sets/kept-question.ts';
import { composeRehearsal, type Question } from '$lib/engine/sets/rehearsal.ts';
import { newId } from '$lib/storage/new-id.ts';
import { below } from '../device/chance.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import { keep, readKept } from '../device/kept.ts';
import { attemptsOf } from './rehearsal-attempts.ts';
import { type OpenPaper, openPaper } from './open-paper.ts';
import { handedIn, newPaper, type Paper, secondsLeft } from './rehearsal-paper.ts';
import { numberOf } from '../practice/run.ts';
import { settings } from '../device/settings.svelte.ts';

/** What the page shows: `offer` is a rehearsal begun earlier that may be gone on with. */
export type Stage = 'loading' | 'set-up' | 'offer' | 'running' | 'report';

/** The rehearsal of the learner at work, kept on this device at every change. */
export class Rehearsal {
	stage = $state<Stage>('loading');
	paper = $state.raw<Paper | null>(null);
	questions = $state.raw<readonly Question[]>([]);
	/** Whether a kept rehearsal can no longer be asked as it was, because the app has changed. */
	outdated = $state(false);
	/** How the answers stand with the log. */
	saved = $state<'none' | 'saving' | 'saved' | 'failed'>('none');
	#now = $state(0);
	/** When the open question was last looked at. */
	#since = 0;
	/** Whose rehearsal it is; null before there is a learner. */
	#owner: string | null = null;

	/** Seconds left. */
	readonly left = $derived(this.paper ? secondsLeft(this.paper, this.#now) : 0);
	readonly result = $derived(this.paper ? resultOf(this.questions, this.paper.choices) : null);
	/** A task of the same kind as each question, with new numbers. */
	readonly alike: readonly string[] = $derived(
		this.questions.map(({ task }) => numberOf(task.family, task.id.level, below(seedCount)))
	);

	/** Takes up what the learner at work left on this device. */
	async load(): Promise<void> {
		this.stage = 'loading';
		this.outdated = false;
		await device.open();
		this.#owner = device.learnerId;
		await this.#take(await openPaper(stored(device.learnerId)));
	}

	async #take(opened: OpenPaper | 'outdated' | null): Promise<void> {
		this.outdated = opened === 'outdated';
		const { paper, questions } = opened === 'outdated' || !opened ? nothing : opened;
		this.paper = paper;
		this.questions = questions;
		this.#look();
		if (!this.paper) {
			this.stage = 'set-up';
			// So that the start does not wait for them.
			void loadFamilies();
		} else if (this.paper.end === null) this.stage = 'offer';
		else if (this.paper.logged) this.stage = 'set-up';
		else await this.#report();
		await this.tick();
	}

	async start(count: number, minutes: number): Promise<void> {
		const families = await loadFamilies();
		const { id, questions } = freshest(families, count, device.learning?.givens ?? []);
		this.questions = questions;
		this.outdated = false;
		this.saved = 'none';
		this.#look();
		const asked = questions.map(kept);
		this.#keep(newPaper({ id, questions: asked, start: this.#now, length: minutes * 60 }));
		this.stage = 'running';
	}

	/** Goes on with the rehearsal that was begun earlier. */
	resume(): void {
		this.#look();
		this.stage = 'running';
	}

	choose(option: number): void {
		this.#change(({ choices, at }) => ({ choices: choices.with(at, option) }));
	}

	/** Marks the open question for later, or takes the mark off. */
	mark(): void {
		this.#change(({ later, at }) => ({ later: later.with(at, !later[at]) }));
	}

	go(index: number): void {
		this.#change(({ count }) => ({ at: Math.min(Math.max(0, index), count - 1) }));
	}

	/** Keeps the time that the open question has had; called when the page is left. */
	leave(): void {
		this.#change(() => ({}));
	}

	/** The page is looked at again: the time away counts for the clock, not for a question. */
	look(): void {
		this.#look();
		void this.tick();
	}

	/** Lets the clock go on; hands in when the time is over. */
	async tick(): Promise<void> {
		this.#now = Date.now();
		const open = this.stage === 'running' || this.stage === 'offer';
		if (open && this.left === 0) await this.handIn();
	}

	async handIn(): Promise<void> {
		const { paper } = this;
		if (!paper || paper.end !== null) return;
		this.#keep(handedIn(this.stage === 'running' ? this.#timed(paper) : paper, Date.now()));
		await this.#report();
	}

	/** Shows the rehearsal that was handed in last. */
	showReport(): void {
		if (this.paper && this.paper.end !== null) this.stage = 'report';
	}

	setUp(): void {
		this.stage = 'set-up';
	}

	/** Another tab changed the kept rehearsal. */
	async heard(event: Pick<StorageEvent, 'key' | 'newValue'>): Promise<void> {
		if (event.key !== keyOf(this.#owner)) return;
		const opened = await openPaper(event.newValue);
		if (!opened) return;
		const { stage } = this;
		await this.#take(opened);
		if (stage === 'running' && this.stage === 'offer') this.resume();
		else if (stage !== 'set-up' && this.stage === 'set-up') {
			if (this.paper?.logged) this.saved = 'saved';
			this.showReport();
		}
	}

	/** Writes the answers to the log, again where that failed before. */
	async log(): Promise<void> {
		const { paper, questions } = this;
		if (!paper || paper.end === null || paper.logged || !this.#isOwn()) return;
		this.saved = 'saving';
		const saved = await logbook.recordAll(attemptsOf(paper, questions, settings.units));
		this.saved = saved ? 'saved' : 'failed';
		if (saved) this.#keep({ ...paper, logged: true });
	}

	#report(): Promise<void> {
		this.stage = 'report';
		return this.log();
	}

	#change(change: (paper: Paper) => Partial<Paper>): void {
		const { paper } = this;
		if (!paper || this.stage !== 'running') return;
		this.#keep({ ...this.#timed(paper), ...change(paper) });
	}

	/** The paper with the time since the last look added to the open question. */
	#timed(paper: Paper): Paper {
		const since = this.#since;
		this.#look();
		const spent = Math.max(0, this.#now - since) / 1000;
		const { seconds, at } = paper;
		return { ...paper, seconds: seconds.with(at, (seconds[at] ?? 0) + spent) };
	}

	#look(): void {
		this.#now = this.#since = Date.now();
	}

	/** Whether the learner at work is still the one whose rehearsal this is. */
	#isOwn(): boolean {
		return this.#owner === null || this.#owner === device.learnerId;
	}

	#keep(paper: Paper): void {
		this.paper = paper;
		if (!this.#isOwn()) return;
		this.#owner = device.learnerId;
		const safe = keep(keyOf(this.#owner), JSON.stringify(paper));
		// The rehearsal begun before there was a learner is now the learner's.
		if (safe && this.#owner !== null) keep(keyOf(null), null);
	}
}

const nothing = { paper: null, questions: [] };

const seedsTried = 20;

/** Questions with as few as can be of the numbers that the learner had in the newest tasks. */
function freshest(
	families: readonly Family[],
	count: number,
	givens: readonly string[]
): { id: string; questions: Question[] } {
	const stale = new Set(givens.map(numbersIn));
	const staleIn = (questions: readonly Question[]) =>
		questions.filter(({ task }) => stale.has(numbersIn(givensOf(task)))).length;
	const draw = () => {
		const id = newId();
		const questions = composeRehearsal(id, families, count);
		return { id, questions, stale: staleIn(questions) };
	};
	let best = draw();
	for (let n = 1; n < seedsTried && best.stale > 0; n++) {
		const other = draw();
		if (other.stale < best.stale) best = other;
	}
	return best;
}

function keyOf(learner: string | null): string {
	return `bucktail.rehearsal.${learner ?? 'first'}`;
}

/** The learner's own, or the one begun before there was a learner. */
function stored(learner: string | null): string | null {
	return readKept(keyOf(learner)) ?? readKept(keyOf(null));
}

export const rehearsal = new Rehearsal();
