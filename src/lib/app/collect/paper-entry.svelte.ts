import * as v from 'valibot';
import { longestEntry } from '$lib/engine/sets/hand-in.ts';
import { readCode } from '$lib/engine/sets/student-code.ts';
import { setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { writeHandInText } from '$lib/exchange/hand-in-file.ts';
import { writeSet } from '$lib/exchange/set-link.ts';
import { keep, keptJson, readKept } from '../device/kept.ts';
import { unexpected } from '../unexpected.svelte.ts';
import { answersIn, entriesOn, type PaperLine, paperLines } from './paper-sheet.ts';
import { dropPaper, keepPaper, type PaperFacts, papersUnderWay } from './paper-queue.ts';
import { collecting, fromPaper } from './collecting.svelte.ts';

const draftSchema = v.object({
	code: v.string(),
	entries: v.record(v.string(), v.pipe(v.string(), v.maxLength(longestEntry)))
});

/**
 * Sheets of paper that are typed in, one after the other. Whoever types never waits: a sheet is kept
 * on this device when its last line is typed, and goes to the log and is marked behind.
 */
class PaperEntry {
	open = $state(false);
	code = $state('');
	entries = $state.raw<Readonly<Record<string, string>>>({});
	refused = $state<string | null>(null);
	/** Codes typed in since the page was opened, the last one first. */
	done = $state.raw<readonly string[]>([]);
	/** What was typed in before under the code; null where nothing was. */
	#before = $state.raw<Readonly<Record<string, string>> | null>(null);
	#putting: Promise<unknown> = Promise.resolve();

	/** What is to be typed; null until the code is known. */
	readonly lines: readonly PaperLine[] | null = $derived.by(() => {
		const { set, hash, summary } = collecting;
		if (this.code === '' || !set || hash === null || !summary) return null;
		return paperLines(set, hash, this.code, summary.paper);
	});
	readonly again = $derived(
		this.done.includes(this.code) || collecting.handIns.some(({ code }) => code === this.code)
	);

	/** Whether the code's sheet was typed in before, and is corrected. */
	readonly corrects = $derived(this.#before !== null);

	/** Opens the form, with what was typed before the page was left. */
	begin(): void {
		this.#clear();
		this.open = true;
		const draft = readDraft(readKept(this.#key));
		if (!draft) return;
		this.entries = draft.entries;
		this.take(draft.code);
	}

	/** Takes the code: what is on that student's sheet stands there at once. */
	take(typed: string): void {
		const reading = readCode(typed);
		this.refused = reading.ok ? null : reading.sentence;
		if (!reading.ok || reading.code === this.code) return;
		this.code = reading.code;
		this.#takeBefore();
		this.#keepDraft();
	}

	/** What was typed in for the code before stands there again, unless something else was typed. */
	#takeBefore(): void {
		const { set, hash } = collecting;
		const isTyped = Object.keys(this.entries).length > 0 && this.entries !== this.#before;
		const marked = collecting.handIns.find(({ code }) => code === this.code);
		this.#before = null;
		if (isTyped || !set || hash === null) return;
		if (marked?.files.includes(fromPaper)) {
			this.#before = entriesOn(set, hash, this.code, marked.tasks);
		}
		this.entries = this.#before ?? {};
	}

	enter(name: string, text: string): void {
		this.entries = { ...this.entries, [name]: text };
		this.#keepDraft();
	}

	/** Takes the sheet as it stands, and makes room for the next one. */
	save(): void {
		const { set, hash } = collecting;
		const { code, lines, entries } = this;
		if (!set || hash === null || lines === null) return;
		const paper = {
			hash,
			code,
			version: versionFor(hash, code),
			answers: answersIn(lines, entries)
		};
		keepPaper(paper);
		keep(this.#key, null);
		this.done = [code, ...this.done];
		this.#clear();
		this.#put(set, paper);
	}

	/** Puts in what was typed when the page was left before the log had it. */
	resume(set: TaskSet): void {
		for (const paper of papersUnderWay(setHash(set))) this.#put(set, paper);
	}

	close(): void {
		this.open = false;
	}

	/** One sheet after the other, as they were typed. */
	#put(set: TaskSet, paper: PaperFacts): void {
		this.#putting = this.#putting.then(async () => {
			try {
				await putIn(set, paper);
			} catch (error) {
				collecting.problem = `${paper.code} is not in the log yet, and kept here: ${unexpected.sentence(error)}`;
			}
			void collecting.markBehind();
		});
	}

	get #key(): string {
		return `bucktail.paper.${collecting.hash ?? ''}`;
	}

	#keepDraft(): void {
		keep(this.#key, JSON.stringify({ code: this.code, entries: this.entries }));
	}

	#clear(): void {
		this.code = '';
		this.entries = {};
		this.#before = null;
		this.refused = null;
	}
}

async function putIn(set: TaskSet, { hash, code, version, answers }: PaperFacts): Promise<void> {
	const facts = { hash, code, version, answers };
	const link = await writeSet(set);
	const text = await writeHandInText({ set: link, name: '', promised: false, at: null, ...facts });
	if (await collecting.takePaper({ file: fromPaper, text, hash, code, version })) dropPaper(facts);
}

/** The version of a code's next sheet, those that are on their way counted. */
function versionFor(hash: string, code: string): number {
	const waiting = papersUnderWay(hash).filter((one) => one.code === code);
	return Math.max(collecting.nextVersion(code), ...waiting.map(({ version }) => version + 1));
}

function readDraft(text: string | null): v.InferOutput<typeof draftSchema> | null {
	const read = v.safeParse(draftSchema, keptJson(text));
	return read.success ? read.output : null;
}

export const paperEntry = new PaperEntry();
