import type { HandInCollected } from '$lib/engine/schedule/collect-events.ts';
import type { Aside, Choice } from '$lib/engine/sets/choose-hand-ins.ts';
import type { MarkedHandIn } from '$lib/engine/sets/collect.ts';
import type { HandIn } from '$lib/engine/sets/hand-in.ts';
import { type Override, overridden } from '$lib/engine/sets/override.ts';
import { setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { SetError } from '$lib/engine/sets/set-error.ts';
import { hasHandInText, writeHandInText } from '$lib/exchange/hand-in-file.ts';
import { readSetLink } from '$lib/exchange/set-link.ts';
import { device } from '../device/device.svelte.ts';
import { setShelf } from '../sets/shelf.svelte.ts';
import { unexpected } from '../unexpected.svelte.ts';
import {
	canBeKept,
	collectedBefore,
	keepChoice,
	keepHandIns,
	keepOverride
} from './collect-log.ts';
import { joinedFiles, noHandIn, saysTaken } from './collect-words.ts';
import type { ClassWork, KeptHandIn, Marked, Pasted } from './set-work.ts';
import { CalledOff, WorkDesk } from './work-desk.ts';

/** What is being done, and how far it is. */
export interface Busy {
	readonly what: string;
	readonly done: number;
	readonly of: number;
}

/** The name that a hand-in typed in from paper goes by. */
export const fromPaper = 'Typed in from paper';

/** The hand-ins of one set, as the instructor's pages have them open. */
class Collecting {
	readonly desk = new WorkDesk();
	set = $state.raw<TaskSet | null>(null);
	/** Whether the log was looked at, be it in vain. */
	ready = $state(false);
	busy = $state.raw<Busy | null>(null);
	/** Whether what is being done was called off. */
	#isOff = false;
	/** One sentence on what came of the last thing done. */
	says = $state<string | null>(null);
	/** One sentence on what went wrong. */
	problem = $state<string | null>(null);
	overrides = $state.raw<readonly Override[]>([]);
	#marked = $state.raw<Marked | null>(null);
	#handIns = $state.raw<readonly MarkedHandIn[]>([]);
	/** What was set aside since the page was opened. */
	#aside = $state.raw<readonly Aside[]>([]);
	#found: readonly KeptHandIn[] = [];
	#foreign: readonly KeptHandIn[] = [];
	#choices: readonly Choice[] = [];

	readonly hash = $derived(this.set ? setHash(this.set) : null);
	readonly summary = $derived(this.#marked?.summary ?? null);
	readonly handIns = $derived(this.#handIns.map((one) => overridden(one, this.overrides)));
	readonly aside: readonly Aside[] = $derived([
		...new Map(this.#aside.map((one) => [`${one.file} ${one.why}`, one])).values(),
		...(this.#marked?.aside ?? []),
		...joinedFiles(this.handIns)
	]);

	/** Opens a set by its hash; what is open already stays as it is. */
	async load(hash: string | null): Promise<void> {
		this.problem = null;
		if (hash === null || hash === this.hash) {
			await device.open();
			this.ready = true;
			return;
		}
		await this.#doing(async () => {
			const before = (await collectedBefore()).get(hash);
			const sources = (before?.handIns ?? []).map(({ file, text }) => ({ name: file, text }));
			const gathered = await this.desk.run('gather', [sources]);
			const set = (await setShelf.find(hash))?.set ?? gathered.set;
			if (!set) throw new SetError(`No set ${hash} is on this device; paste its link here.`);
			this.#begin(set);
			this.overrides = before?.overrides ?? [];
			this.#choices = before?.choices ?? [];
			this.#found = gathered.found;
			await this.#mark();
		});
		this.ready = true;
	}

	/** Opens the set of a link. */
	async openLink(link: string): Promise<void> {
		await this.#doing(async () => {
			const reading = await readSetLink(link);
			if (!reading.ok) throw new SetError(reading.sentence);
			await setShelf.save(reading.set);
			await this.load(setHash(reading.set));
		});
	}

	/** Takes in a text that was pasted: hand-ins, or the link of a set. */
	async takeText(text: string): Promise<void> {
		if (hasHandInText(text)) return this.take([{ name: 'Pasted text', text }], 'text');
		return this.openLink(text);
	}

	/** Takes in hand-ins, puts what is new into the log, and marks all again. */
	async take(sources: readonly (File | Pasted)[], by: HandInCollected['by']): Promise<void> {
		if (sources.length === 0) return;
		await this.#doing(async () => {
			const { found, aside, set } = await this.desk.run(
				'gather',
				[sources],
				this.#progress('Reading')
			);
			if (!this.set && set) await this.#takeUp(set);
			this.#aside = [...this.#aside, ...aside];
			if (!this.set) throw new SetError(noHandIn);
			const own = found.filter(({ hash }) => hash === this.hash);
			this.#foreign = [...this.#foreign, ...found.filter(({ hash }) => hash !== this.hash)];
			await this.#keep(own, by);
			// Pressed while nothing ran in the worker, it still holds.
			if (this.#isOff) throw new CalledOff();
			await this.#mark();
		});
	}

	/** A set met for the first time in a hand-in, with what was collected of it before. */
	async #takeUp(set: TaskSet): Promise<void> {
		const hash = setHash(set);
		if (!(await setShelf.find(hash))) await setShelf.save(set);
		await this.load(hash);
	}

	async #keep(own: readonly KeptHandIn[], by: HandInCollected['by']): Promise<void> {
		const hash = this.hash ?? '';
		const known = new Set(this.#found.map(keyOf));
		const fresh = own.filter((one) => !known.has(keyOf(one)));
		const fit = fresh.filter(canBeKept);
		const unfit = fresh.filter((one) => !canBeKept(one));
		const tooLong = 'Too long to be kept with the set; ask for it with shorter entries.';
		this.#aside = [...this.#aside, ...unfit.map(({ file }) => ({ file, why: tooLong }))];
		if (fit.length > 0 && !(await keepHandIns(hash, by, fit))) this.problem = device.trouble;
		this.#found = [...this.#found, ...fit];
		this.says = saysTaken(fit, own.length - fresh.length);
	}

	/** The version that a code's next hand-in has; 1 where there is none yet. */
	nextVersion(code: string): number {
		const own = this.#found.filter((one) => one.code === code);
		return Math.max(0, ...own.map(({ version }) => version)) + 1;
	}

	/** Takes in what was typed from paper. */
	async takePaper(handIn: HandIn): Promise<void> {
		await this.#doing(async () => {
			const text = await writeHandInText(handIn);
			const { hash, code, version } = handIn;
			await this.#keep([{ file: fromPaper, text, hash, code, version }], 'paper');
			this.says = `${handIn.code} is typed in.`;
			await this.#mark();
		});
	}

	/** Changes the marks of a task, with the reason. */
	async override(override: Override): Promise<void> {
		if (!(await keepOverride(this.hash ?? '', override))) this.problem = device.trouble;
		this.overrides = [...this.overrides, override];
		this.says = `${override.code}, task ${override.task}: ${override.marks}, with your note.`;
	}

	/** Has another hand-in of a code marked. */
	async choose(choice: Choice): Promise<void> {
		await this.#doing(async () => {
			if (!(await keepChoice(this.hash ?? '', choice))) this.problem = device.trouble;
			this.#choices = [...this.#choices, choice];
			await this.#mark();
			this.says = `${choice.code}: the other hand-in is marked.`;
		});
	}

	/** Opens another set, with the hand-ins of it that were set aside here. */
	async goTo(link: string): Promise<void> {
		const foreign = this.#foreign;
		await this.openLink(link);
		await this.#doing(async () => {
			await this.#keep(
				foreign.filter(({ hash }) => hash === this.hash),
				'file'
			);
			await this.#mark();
		});
	}

	/** Calls off the reading or marking that is going on. */
	stop(): void {
		this.#isOff = true;
		this.desk.stop();
	}

	#begin(set: TaskSet): void {
		this.set = set;
		this.overrides = [];
		this.#choices = [];
		this.#aside = [];
		this.#found = [];
		this.#foreign = [];
		this.#marked = null;
		this.#handIns = [];
	}

	/** What came in for the open set, to be worked on; null where none is open. */
	get classWork(): ClassWork | null {
		const { set, overrides } = this;
		return set && { set, handIns: this.#found, choices: this.#choices, overrides };
	}

	async #mark(): Promise<void> {
		const of = this.classWork;
		if (!of) return;
		const handIns: MarkedHandIn[] = [];
		const progress = this.#progress('Marking');
		const all = { ...of, handIns: [...this.#found, ...this.#foreign], overrides: [] };
		this.#marked = await this.desk.run('collect', [all], (done, count, part) => {
			if (part) handIns.push(part);
			else progress(done, count);
		});
		this.#handIns = handIns;
	}

	#progress(what: string): (done: number, of: number) => void {
		this.busy = { what, done: 0, of: 1 };
		return (done, of) => (this.busy = { what, done, of });
	}

	/** Does something that may fail, and says so in one sentence. */
	async #doing(work: () => Promise<void>): Promise<void> {
		this.problem = null;
		this.#isOff = false;
		try {
			await work();
		} catch (error) {
			if (error instanceof CalledOff) this.says = 'Called off. What is kept is still here.';
			else this.problem = error instanceof SetError ? error.message : unexpected.sentence(error);
		} finally {
			this.busy = null;
		}
	}
}

function keyOf({ file, text }: KeptHandIn): string {
	return `${file} ${text ?? ''}`;
}

export const collecting = new Collecting();
