import * as v from 'valibot';
import { longestEntry, type HandIn } from '$lib/engine/sets/hand-in.ts';
import { readCode } from '$lib/engine/sets/student-code.ts';
import { writeSet } from '$lib/exchange/set-link.ts';
import { keep, keptJson, readKept } from '../device/kept.ts';
import { answersIn, type PaperLine } from './paper-sheet.ts';
import { collecting } from './collecting.svelte.ts';

const draftSchema = v.object({
	code: v.string(),
	entries: v.record(v.string(), v.pipe(v.string(), v.maxLength(longestEntry)))
});

/** A sheet of paper that is being typed in; kept on this device until it is saved. */
class PaperEntry {
	open = $state(false);
	code = $state('');
	lines = $state.raw<readonly PaperLine[] | null>(null);
	entries = $state.raw<Readonly<Record<string, string>>>({});
	refused = $state<string | null>(null);
	readonly again = $derived(
		this.code !== '' && collecting.handIns.some(({ code }) => code === this.code)
	);

	/** Opens the form, with what was typed before the page was left. */
	async begin(): Promise<void> {
		this.#clear();
		this.open = true;
		const draft = readDraft(readKept(this.#key));
		if (!draft) return;
		this.entries = draft.entries;
		await this.take(draft.code);
	}

	/** Takes the code, and looks up what is on that student's sheet. */
	async take(typed: string): Promise<void> {
		const reading = readCode(typed);
		this.refused = reading.ok ? null : reading.sentence;
		const { set } = collecting;
		if (!reading.ok || !set || (reading.code === this.code && this.lines)) return;
		this.code = reading.code;
		this.lines = (await collecting.desk.run('paper', [set, reading.code])).lines;
		this.#keepDraft();
	}

	enter(name: string, text: string): void {
		this.entries = { ...this.entries, [name]: text };
		this.#keepDraft();
	}

	async save(): Promise<void> {
		const { set, hash } = collecting;
		if (!set || hash === null || this.lines === null) return;
		const handIn: HandIn = {
			set: await writeSet(set),
			hash,
			code: this.code,
			name: '',
			version: collecting.nextVersion(this.code),
			promised: false,
			at: null,
			answers: answersIn(this.lines, this.entries)
		};
		await collecting.takePaper(handIn);
		keep(this.#key, null);
		this.#clear();
	}

	close(): void {
		this.open = false;
	}

	get #key(): string {
		return `bucktail.paper.${collecting.hash ?? ''}`;
	}

	#keepDraft(): void {
		keep(this.#key, JSON.stringify({ code: this.code, entries: this.entries }));
	}

	#clear(): void {
		this.code = '';
		this.lines = null;
		this.entries = {};
		this.refused = null;
	}
}

function readDraft(text: string | null): v.InferOutput<typeof draftSchema> | null {
	const read = v.safeParse(draftSchema, keptJson(text));
	return read.success ? read.output : null;
}

export const paperEntry = new PaperEntry();
