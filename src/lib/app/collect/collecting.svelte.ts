import type { HandInCollected } from '$lib/engine/schedule/collect-events.ts';
import type { Aside, Choice } from '$lib/engine/sets/choose-hand-ins.ts';
import { type Override, overridden } from '$lib/engine/sets/override.ts';
import { setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { SetError } from '$lib/engine/sets/set-error.ts';
import { hasHandInText } from '$lib/exchange/hand-in-file.ts';
import { hasLink, readSetLink } from '$lib/exchange/set-link.ts';
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
import { ClassMarking } from './class-marking.svelte.ts';
import { keepDrawn } from './keep-drawn.ts';
import {
	joinedFiles,
	noHandIn,
	nothingInText,
	ofAnother,
	saysTaken,
	tooLong
} from './collect-words.ts';
import type { ClassWork, GatheredTexts, KeptHandIn, KeptSet, Pasted } from './set-work.ts';
import { SetAside } from './set-aside.svelte.ts';
import { nameOf } from './source.ts';
import { CalledOff, WorkDesk } from './work-desk.ts';

/** What is being done, and how far it is. */
export interface Busy {
	readonly what: string;
	readonly done: number;
	readonly of: number;
}

/** The name that a hand-in typed in from paper goes by. */
export const fromPaper = 'Typed in from paper';

/** Files handed to the worker at once. */
const together = 10;

/** The hand-ins of one set, as the instructor's pages have them open. */
class Collecting {
	readonly desk = new WorkDesk();
	readonly #marking = new ClassMarking(this.desk);
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
	readonly #aside = new SetAside();
	#found: readonly KeptHandIn[] = [];
	#foreign: readonly KeptHandIn[] = [];
	#choices: readonly Choice[] = [];
	/** What could not be opened, by name, to be tried again. */
	#unread: Record<string, File | Pasted> = {};

	readonly hash = $derived(this.set ? setHash(this.set) : null);
	readonly summary = $derived(this.#marking.summary);
	readonly handIns = $derived(this.#marking.handIns.map((one) => overridden(one, this.overrides)));
	readonly aside: readonly Aside[] = $derived(
		this.#aside.withOthers([...this.#marking.aside, ...joinedFiles(this.handIns)])
	);

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
			if (!set || setHash(set) !== hash)
				throw new SetError(`No set ${hash} is on this device; paste its link here.`);
			this.#begin(set);
			this.overrides = before?.overrides ?? [];
			this.#choices = before?.choices ?? [];
			this.#found = gathered.found.filter((one) => one.hash === hash);
			this.#foreign = gathered.found.filter((one) => one.hash !== hash);
			await this.#aside.begin(hash, before?.aside);
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
		if (!hasLink(text)) {
			this.says = null;
			this.problem = nothingInText;
			return;
		}
		return this.openLink(text);
	}

	/** Takes in hand-ins, puts what is new into the log, and marks all again. */
	async take(sources: readonly (File | Pasted)[], by: HandInCollected['by']): Promise<void> {
		if (sources.length === 0) return;
		await this.#doing(async () => {
			const { found, aside, set } = await this.#gathered(sources);
			if (!this.set && set) await this.#takeUp(set);
			if (!(await this.#aside.add(aside))) this.problem = device.trouble;
			const again = aside.filter((one) => one.again).map(({ file }) => file);
			for (const source of sources) {
				if (again.includes(nameOf(source))) this.#unread[nameOf(source)] = source;
			}
			if (!this.set) throw new SetError(noHandIn);
			this.#aside.backOn(found.map(({ file }) => file));
			const own = found.filter(({ hash }) => hash === this.hash);
			const foreign = found.filter(({ hash }) => hash !== this.hash);
			await this.#keepForeign(foreign, by);
			const { fit, unfit, known } = await this.#keep(own, by);
			this.says = saysTaken(fit, known, [
				...aside,
				...unfit.map(tooLong),
				...foreign.map(ofAnother)
			]);
			// Pressed while nothing ran in the worker, it still holds.
			if (this.#isOff) throw new CalledOff();
			await this.#mark();
		});
	}

	async #gathered(sources: readonly (File | Pasted)[]): Promise<GatheredTexts> {
		const progress = this.#progress('Reading');
		for (let i = 0; i < sources.length; i += together) {
			await this.desk.run('hold', [sources.slice(i, i + together)]);
		}
		return this.desk.run('gather', [[]], progress);
	}

	/** A set met for the first time in a hand-in, with what was collected of it before. */
	async #takeUp(set: TaskSet): Promise<void> {
		const hash = setHash(set);
		if (!(await setShelf.find(hash))) await setShelf.save(set);
		await this.load(hash);
	}

	async #keep(own: readonly KeptHandIn[], by: HandInCollected['by']) {
		const hash = this.hash ?? '';
		const before = new Set(this.#found.map(keyOf));
		const fresh = own.filter((one) => !before.has(keyOf(one)));
		const fit = fresh.filter(canBeKept);
		const unfit = fresh.filter((one) => !canBeKept(one));
		await this.#aside.add(unfit.map(tooLong));
		this.#found = [...this.#found, ...fit];
		const saved = fit.length === 0 || (await keepHandIns(hash, by, fit));
		if (!saved) this.problem = device.trouble;
		return { fit, unfit, known: own.length - fresh.length, saved };
	}

	/** Hand-ins of other sets stay with this one, until they are collected there. */
	async #keepForeign(foreign: readonly KeptHandIn[], by: HandInCollected['by']): Promise<void> {
		const before = new Set(this.#foreign.map(keyOf));
		const fresh = foreign.filter((one) => !before.has(keyOf(one)));
		this.#foreign = [...this.#foreign, ...fresh];
		const saved = await keepHandIns(this.hash ?? '', by, fresh.filter(canBeKept));
		if (!saved) this.problem = device.trouble;
	}

	/** The version that a code's next hand-in has; 1 where there is none yet. */
	nextVersion(code: string): number {
		const own = this.#found.filter((one) => one.code === code);
		return Math.max(0, ...own.map(({ version }) => version)) + 1;
	}

	/**
	 * Puts a sheet that was typed in into the log; what is wrong is told beside what was told
	 * before. Resolves to whether the log has it.
	 */
	async takePaper(handIn: KeptHandIn): Promise<boolean> {
		// Another set may have been opened meanwhile.
		if (handIn.hash !== this.hash) return keepHandIns(handIn.hash, 'paper', [handIn]);
		const { unfit, saved } = await this.#keep([handIn], 'paper');
		const isIn = saved && unfit.length === 0;
		if (isIn) this.says = `${handIn.code} is typed in.`;
		return isIn;
	}

	/** Marks again behind what the instructor does. */
	markBehind(): Promise<void> {
		return this.#trying(() => this.#mark(() => {}));
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

	/** Looks again at what was set aside and may be read or marked by now. */
	async tryAgain({ file }: Aside): Promise<void> {
		await this.#aside.takeOffFile(file);
		const source = this.#unread[file];
		if (source) return this.take([source], 'file');
		await this.#doing(async () => {
			await setShelf.load();
			await this.#mark();
		});
	}

	/** Takes what was set aside off the list, for the instructor has seen to it. */
	async takeOff(one: Aside): Promise<void> {
		if (!(await this.#aside.takeOff([one]))) this.problem = device.trouble;
	}

	/** Opens another set, with the hand-ins of it that were set aside here. */
	async goTo(link: string): Promise<void> {
		const foreign = this.#foreign;
		await this.#aside.takeOff(this.aside.filter(({ elsewhere }) => elsewhere === link));
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
		this.#found = [];
		this.#foreign = [];
		this.#unread = {};
		this.#marking.clear();
	}

	/** The open set with what was kept of its tasks; null where none is open. */
	async keptSet(): Promise<KeptSet | null> {
		const { set } = this;
		return set && { set, drawn: await setShelf.keptFor(set) };
	}

	/** What came in for the open set, to be worked on; null where none is open. */
	async classWork(): Promise<ClassWork | null> {
		const kept = await this.keptSet();
		const { overrides } = this;
		return kept && { ...kept, handIns: this.#found, choices: this.#choices, overrides };
	}

	async #mark(progress = this.#progress('Marking')): Promise<void> {
		await this.#marking.mark(async () => {
			const of = await this.classWork();
			return of && { ...of, handIns: [...this.#found, ...this.#foreign], overrides: [] };
		}, progress);
		void keepDrawn(this);
	}

	#progress(what: string): (done: number, of: number) => void {
		this.busy = { what, done: 0, of: 1 };
		return (done, of) => (this.busy = { what, done, of });
	}

	/** Does something that may fail, and says so in one sentence. */
	async #doing(work: () => Promise<void>): Promise<void> {
		this.problem = null;
		this.says = null;
		this.#isOff = false;
		await this.#trying(work);
		this.busy = null;
	}

	async #trying(work: () => Promise<void>): Promise<void> {
		try {
			await work();
		} catch (error) {
			if (error instanceof CalledOff) this.says = 'Called off. What is kept is still here.';
			else this.problem = error instanceof SetError ? error.message : unexpected.sentence(error);
		}
	}
}

function keyOf({ file, text }: KeptHandIn): string {
	return `${file} ${text ?? ''}`;
}

export const collecting = new Collecting();
