import { decapital } from '$lib/engine/quantity/capital.ts';
import type { Checkup } from '$lib/engine/check/check.ts';
import { checkPart } from '$lib/engine/check/check.ts';
import { checkCard, type LoadedCheck, loadCheck } from '$lib/engine/check/catalogue.ts';
import { compared } from '$lib/engine/check/compare.ts';
import { instrumentById } from '$lib/engine/check/instruments.ts';
import { markOwn, type Owned } from '$lib/engine/check/own.ts';
import { dayOf } from '$lib/engine/schedule/day.ts';
import type { LabCheck } from '$lib/engine/schedule/event.ts';
import type { Checked } from '$lib/engine/solver/checked.ts';
import { GivenError } from '$lib/engine/solver/read-givens.ts';
import { TradeError } from '$lib/engine/solver/trade-function.ts';
import { seedCount } from '$lib/engine/tasks/task-number.ts';
import { shortDate } from '$lib/ui/dates.ts';
import { below } from '../device/chance.ts';
import { keepOwn, readOwn } from '../device/own-kept.ts';
import { settings } from '../device/settings.svelte.ts';
import { numberOf } from '../practice/run.ts';
import { unexpected } from '../unexpected.svelte.ts';
import { type CheckEntry, readCheckLink, readEntry, writeCheckLink } from './check-entry.ts';
import { checksBefore, saveCheck } from './check-log.ts';

const none: Owned = { results: [], marked: [] };

/** A part being checked: what was entered, and what comes of it. */
class Lab {
	entry = $state.raw<CheckEntry | null>(null);
	loaded = $state.raw<LoadedCheck | null>(null);
	/** Null until enough has been entered, and while something in it cannot be used. */
	checkup = $state.raw<Checkup | null>(null);
	owned = $state.raw<Owned>(none);
	/** Why it cannot be worked; one sentence. */
	problem = $state<string | null>(null);
	/** The same of the own results. */
	ownProblem = $state<string | null>(null);
	/** Checks of this learner, newest first. */
	before = $state.raw<readonly LabCheck[]>([]);
	/** How this try stands to the one before. */
	changes = $state.raw<readonly string[]>([]);
	saved = $state<'not' | 'saving' | 'yes' | 'failed'>('not');
	/** Whether it came with a link from somebody else: it is then not kept in place of one's own. */
	foreign = $state(false);
	/** Why a link could not be opened. */
	linkProblem = $state<string | null>(null);
	/** The fragment of the address that shows this check, once it is asked for. */
	fragment = $state('');
	#turn = 0;

	/** Takes up what an address holds, or what was entered here before. */
	async open(fragment: string): Promise<void> {
		void this.#readBefore();
		this.linkProblem = null;
		if (fragment.length > 1) {
			const read = await readCheckLink(fragment);
			if (typeof read === 'string') this.linkProblem = read;
			else return this.#take(read, true);
		}
		const kept = readEntry(readOwn('check'));
		if (kept) await this.#take(kept, false);
	}

	/** Begins a check of something. */
	async begin(method: string): Promise<void> {
		const { student = '', tool = 'caliper' } = this.entry ?? {};
		const units = settings.units;
		const entry = { method, part: '', student, tool, units, values: {}, own: {}, note: '' };
		await this.#take(entry, false);
		this.#keep();
	}

	/** Takes up a check that is in the log, to look at it or to measure again. */
	async again({ method, part, tool, units, values, own }: LabCheck): Promise<void> {
		const { student = '' } = this.entry ?? {};
		const entry = { method, part, student, tool: tool ?? '', units, values, own, note: '' };
		await this.#take(entry, false);
		this.saved = 'yes';
		this.#keep();
	}

	/** Goes on with the check that was put away. */
	async resume(): Promise<void> {
		if (this.entry) await this.#take(this.entry, this.foreign);
	}

	/** Puts the check away; what was entered stays here until another is begun. */
	leave(): void {
		this.loaded = null;
		this.checkup = null;
	}

	async change(change: Partial<CheckEntry>): Promise<void> {
		if (!this.entry) return;
		this.entry = { ...this.entry, ...change };
		if (!('note' in change)) this.saved = 'not';
		this.#keep();
		await this.#work();
	}

	setValue(key: string, text: string): Promise<void> {
		return this.change({ values: filled(this.entry?.values ?? {}, key, text) });
	}

	setOwn(key: string, text: string): Promise<void> {
		return this.change({ own: filled(this.entry?.own ?? {}, key, text) });
	}

	async save(): Promise<boolean> {
		const { entry, checkup, owned } = this;
		if (!entry || !checkup || this.saved === 'yes') return this.saved === 'yes';
		this.saved = 'saving';
		const done = await saveCheck(entry, checkup, owned);
		this.saved = done ? 'yes' : 'failed';
		if (done) {
			this.#keep();
			await this.#readBefore();
		}
		return done;
	}

	/** The number of a task on the skill behind this check. */
	practiceNumber(): string {
		const { family } = this.loaded ?? {};
		return family ? numberOf(family, 1, below(seedCount)) : '';
	}

	/** The address of this check is made anew, with the note in it. */
	async ask(note: string): Promise<void> {
		await this.change({ note });
		if (this.entry) this.fragment = await writeCheckLink(this.entry);
	}

	async #take(entry: CheckEntry, foreign: boolean): Promise<void> {
		this.entry = entry;
		this.foreign = foreign;
		this.saved = 'not';
		this.fragment = '';
		this.problem = null;
		this.checkup = null;
		try {
			this.loaded = await loadCheck(entry.method);
		} catch (error) {
			this.loaded = null;
			this.linkProblem = sentenceOf(error);
			return;
		}
		await this.#work();
	}

	async #work(): Promise<void> {
		const { entry, loaded } = this;
		if (!entry || !loaded) return;
		const turn = ++this.#turn;
		const { units } = entry;
		const instrument = instrumentById(entry.tool) ?? null;
		try {
			const checkup = await checkPart(loaded.check, { values: entry.values, instrument, units });
			if (turn !== this.#turn) return;
			this.checkup = checkup;
			this.problem = null;
			await this.#compare(checkup);
		} catch (error) {
			if (turn !== this.#turn) return;
			this.checkup = null;
			this.problem = inLabels(sentenceOf(error), loaded.check);
		}
		await this.#markOwn(turn);
	}

	async #markOwn(turn: number): Promise<void> {
		const { entry, loaded, checkup } = this;
		if (!entry || !loaded || !checkup) return;
		try {
			const owned = await markOwn(loaded.family, checkup, entry.own, entry.units);
			if (turn !== this.#turn) return;
			this.owned = owned;
			this.ownProblem = null;
		} catch (error) {
			if (turn !== this.#turn) return;
			this.owned = none;
			this.ownProblem = inLabels(sentenceOf(error), loaded.check);
		}
	}

	async #compare(checkup: Checkup): Promise<void> {
		const { entry } = this;
		const older = this.before.find((one) => one.method === entry?.method && !isSame(one, entry));
		this.changes = [];
		if (!older) return;
		try {
			const instrument = instrumentById(older.tool ?? '') ?? null;
			const { values, units } = older;
			const other = await checkPart(checkup.check, { values, instrument, units });
			const when = shortDate(dayOf(older.day));
			this.changes = compared(checkup, { checkup: other, when });
		} catch (error) {
			// An older version may have taken what is refused now.
			sentenceOf(error);
		}
	}

	async #readBefore(): Promise<void> {
		this.before = await checksBefore();
		if (this.checkup) await this.#compare(this.checkup);
	}

	#keep(): void {
		if (this.entry && !this.foreign) keepOwn('check', JSON.stringify(this.entry));
	}
}

function isSame(one: LabCheck, { values, tool, own }: CheckEntry): boolean {
	const text = (...parts: unknown[]) => JSON.stringify(parts);
	return text(one.values, one.own, one.tool ?? '') === text(values, own, tool);
}

function filled(
	values: Readonly<Record<string, string>>,
	key: string,
	text: string
): Record<string, string> {
	const others = Object.fromEntries(Object.entries(values).filter(([one]) => one !== key));
	return text.trim() === '' ? others : { ...others, [key]: text };
}

function sentenceOf(error: unknown): string {
	const forPeople = error instanceof GivenError || error instanceof TradeError;
	return forPeople ? error.message : unexpected.sentence(error);
}

/** The sentence with the keys of the command line in the words that stand at the fields. */
function inLabels(sentence: string, check: Checked): string {
	const named = { ...check.given, ...check.of.steps };
	const [, key = '', rest = ''] = /^(\w+)([,: ].*)$/s.exec(sentence) ?? [];
	const own = Object.hasOwn(named, key) ? named[key] : undefined;
	if (own) return `${own.label}${rest}`;
	const [, missing = ''] = /^[\w-]+ also needs (\w+)/.exec(sentence) ?? [];
	const label = check.given[missing]?.label;
	return label ? `Give this too: ${decapital(label)}.` : sentence;
}

export { checkCard };

export const lab = new Lab();
