import type { Problem } from '$lib/engine/panel/job.ts';
import type { Check } from '$lib/engine/panel/checks.ts';
import type { Fix } from '$lib/engine/panel/fixes.ts';
import { type PanelPlan, planPanel } from '$lib/engine/panel/plan.ts';
import { PanelError } from '$lib/engine/panel/read-panel.ts';
import {
	isPanelEvent,
	nothingDone,
	panelsOf,
	type SavedPanel
} from '$lib/engine/schedule/panel-bench.ts';
import { longestPanel, type Stage } from '$lib/engine/schedule/panel-events.ts';
import { newId } from '$lib/storage/new-id.ts';
import { keep, readKept } from '../device/kept.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import { late } from '$lib/ui/late.ts';
import {
	type Draft,
	draftOf,
	fileOf,
	firstDraft,
	type ListKey,
	newPart,
	withText
} from './draft.ts';

/** Where what stands in the fields is kept until the log has it. */
const draftKey = () => `bucktail.panel.${device.learnerId ?? 'nobody'}`;
/** Milliseconds without a change after which the panel goes into the log. */
const rest = 1500;

/** The panel on the page: its fields, what comes of them, and what is ticked. */
class PanelBench {
	draft = $state.raw<Draft>(firstDraft());
	/** Null until there is one that can be worked. */
	plan = $state.raw<PanelPlan | null>(null);
	/** What is wrong, by field. */
	problems = $state.raw<readonly Problem[]>([]);
	/** One sentence where nothing can be worked, else null. */
	trouble = $state<string | null>(null);
	id = $state.raw(newId());
	/** Every panel in the log, newest first. */
	saved = $state.raw<readonly SavedPanel[]>([]);
	/** Whether all that is shown is in the log. */
	isSaved = $state(true);
	/** Whether it is the example that a page begins with, and nobody’s panel yet. */
	readonly isExample = $derived(textOf(this.draft) === textOf(firstDraft()));
	#ticks = $state.raw<SavedPanel['done']>(nothingDone());
	#timer: ReturnType<typeof setTimeout> | undefined;
	#turn = 0;
	/** Which panel the plan is of. */
	#planned = '';
	/** Whose panel is on the page. */
	#learner: string | null = null;

	/** Opens what was on the page last. */
	async load(): Promise<void> {
		const kept = readKept(draftKey());
		const [, id, text] = /^([\w-]{36}) ([^]*)$/.exec(kept ?? '') ?? [];
		const draft = draftOf(text ?? '');
		const isOther = this.#learner !== null && this.#learner !== device.learnerId;
		this.#learner = device.learnerId;
		if (draft && id !== undefined) [this.id, this.draft] = [id, draft];
		else if (isOther) [this.id, this.draft] = [newId(), firstDraft()];
		await this.#work();
		await this.#read();
		const [newest] = this.saved;
		if (this.isSaved && draft) {
			// The page may have been closed before what was typed was in the log.
			this.isSaved = this.saved.find((one) => one.id === this.id)?.file === this.#text;
		}
		// Ticks on the page are ahead of the log, so they are read once.
		this.#ticks = this.saved.find((one) => one.id === this.id)?.done ?? nothingDone();
		if (!draft && newest && this.isSaved) await this.open(newest.id);
	}

	async #read(): Promise<void> {
		const desk = await device.open();
		const { learner } = device;
		const wanted = (type: string) => isPanelEvent({ type });
		const events = desk && learner ? await desk.eventsOf(learner.id, wanted) : [];
		this.saved = panelsOf(events);
	}

	async open(id: string): Promise<void> {
		await this.save();
		const found = this.saved.find((one) => one.id === id);
		const draft = draftOf(found?.file ?? '');
		if (!found || !draft) return;
		[this.id, this.draft] = [id, draft];
		this.#ticks = found.done;
		this.#keep();
		await this.#work();
	}

	/** Begins another panel: a fresh one, or one from a file. */
	async begin(draft: Draft = firstDraft()): Promise<void> {
		await this.save();
		this.id = newId();
		this.#ticks = nothingDone();
		await this.#change(draft);
	}

	/** @returns one sentence where the file is no panel, else null */
	async openFile(text: string): Promise<string | null> {
		const draft = draftOf(text);
		if (!draft) return 'That file holds no panel; choose a panel file, ending in .json.';
		await this.begin(draft);
		return null;
	}

	async add(key: ListKey): Promise<void> {
		const parts = this.draft[key];
		await this.#change({ ...this.draft, [key]: [...parts, newPart(key, parts.length)] });
	}

	async remove(key: ListKey, place: number): Promise<void> {
		await this.#change({ ...this.draft, [key]: this.draft[key].toSpliced(place, 1) });
	}

	/** Puts a text into the field at a path of the panel file: `members.0.at`. */
	async type(path: string, text: string): Promise<void> {
		await this.#change(withText(this.draft, path, text));
	}

	async #change(draft: Draft): Promise<void> {
		this.draft = draft;
		this.isSaved = false;
		this.#keep();
		clearTimeout(this.#timer);
		this.#timer = setTimeout(() => void this.save(), rest);
		await this.#work();
	}

	/** Changes that make a limit hold; `goOn` is asked before every try. */
	async fixesFor(check: Check, goOn: () => Promise<boolean>): Promise<readonly Fix[]> {
		const { plan } = this;
		if (!plan) return [];
		const { fixesFor } = await late(() => import('$lib/engine/panel/fixes.ts'));
		return fixesFor(fileOf(this.draft), plan, check, goOn);
	}

	async fix({ field, text }: Fix): Promise<void> {
		await this.type(field, text);
	}

	async #work(): Promise<void> {
		const turn = ++this.#turn;
		try {
			const plan = await planPanel(fileOf(this.draft));
			if (turn !== this.#turn) return;
			[this.plan, this.problems, this.trouble] = [plan, plan.problems, null];
			this.#planned = this.id;
		} catch (error) {
			if (!(error instanceof PanelError)) throw error;
			if (turn !== this.#turn) return;
			[this.problems, this.trouble] = [error.problems, error.message];
			// The last plan of this panel stays to be looked at, that of another would mislead.
			if (this.#planned !== this.id) this.plan = null;
		}
	}

	/** The panel file as text, to take away. */
	get file(): string {
		return JSON.stringify(fileOf(this.draft), null, '\t');
	}

	get #text(): string {
		return textOf(this.draft);
	}

	#keep(): void {
		keep(draftKey(), `${this.id} ${this.#text}`);
	}

	/** Puts the panel into the log, if it is not there as it stands. */
	async save(): Promise<void> {
		clearTimeout(this.#timer);
		if (this.isSaved) return;
		const file = this.#text;
		if (file.length > longestPanel) return;
		this.isSaved = await logbook.note({ type: 'panel', panel: this.id, file });
		await this.#read();
	}

	/** Puts the panel into the log, also one that nobody has changed: something is to hang on it. */
	async settle(): Promise<void> {
		this.isSaved = this.isSaved && this.saved.some(({ id }) => id === this.id);
		await this.save();
	}

	isDone(stage: Stage, place: string): boolean {
		return this.#ticks[stage].has(place);
	}

	/** Ticks a hole, or takes the tick back. */
	async tick(stage: Stage, place: string, done: boolean): Promise<void> {
		const others = [...this.#ticks[stage]].filter((one) => one !== place);
		const own: ReadonlySet<string> = new Set(done ? [...others, place] : others);
		this.#ticks = { ...this.#ticks, [stage]: own };
		await this.settle();
		await logbook.note({ type: 'panel-tick', panel: this.id, stage, holes: [place], done });
	}
}

function textOf(draft: Draft): string {
	return JSON.stringify(fileOf(draft));
}

export const panelBench = new PanelBench();
