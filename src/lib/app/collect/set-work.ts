import {
	type Collected,
	collect,
	type MarkedHandIn,
	markingOnce
} from '$lib/engine/sets/collect.ts';
import type { Aside, Choice, Found } from '$lib/engine/sets/choose-hand-ins.ts';
import { type ClassReport, classReport } from '$lib/engine/sets/class-report.ts';
import { missedSteps } from '$lib/engine/sets/missed-steps.ts';
import { type OpenSet, openSet } from '$lib/engine/sets/open-set.ts';
import { setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { type StudentPage, studentPage } from '$lib/engine/sets/student-page.ts';
import { writeCsv } from '$lib/exchange/csv.ts';
import { gather } from '$lib/exchange/gather.ts';
import { gradebook, slipTable } from '$lib/exchange/gradebook.ts';
import { printKey, printWorksheets, type Printed } from '$lib/exchange/print/sheets.ts';
import { writeHandInText } from '$lib/exchange/hand-in-file.ts';
import { qtiPackage, writeQti } from '$lib/exchange/qti/package.ts';
import type { Student } from '$lib/exchange/roster.ts';
import { setOfMost } from '$lib/exchange/which-set.ts';
import { writeXapi } from '$lib/exchange/xapi.ts';
import { type PaperSheet, paperSheet } from './paper-sheet.ts';

/*
 * What takes long with a set: run in a worker (see `work-desk.ts`), so that the page stays free.
 * All that goes in and comes out is plain data.
 */

export type Progress = (done: number, of: number) => void;

/** A text that was pasted or kept, under a name to tell it by. */
export interface Pasted {
	readonly name: string;
	readonly text: string;
}

/** A hand-in, and the text that it is kept as; null where it is too long for one. */
export interface FoundText extends Found {
	readonly text: string | null;
}

export interface GatheredTexts {
	readonly found: readonly FoundText[];
	readonly aside: readonly Aside[];
	/** The set that most of them are of; null where none tells. */
	readonly set: TaskSet | null;
}

/** What the pages show of a set without drawing its tasks themselves. */
export interface SetSummary {
	readonly title: string;
	readonly hash: string;
	readonly of: number;
	readonly tasks: readonly { readonly place: number; readonly name: string; readonly of: number }[];
}

export interface Marked extends Collected {
	readonly summary: SetSummary;
}

/** The set last worked on: drawn once, and what was marked in it is remembered. */
let last: { hash: string; open: OpenSet; marking: ReturnType<typeof markingOnce> } | null = null;

async function opened(set: TaskSet) {
	const hash = setHash(set);
	if (last?.hash !== hash) last = { hash, open: await openSet(set), marking: markingOnce() };
	return last;
}

export const work = {
	async gather(progress: Progress, sources: readonly (File | Pasted)[]): Promise<GatheredTexts> {
		const { found, aside } = await gather(sources.map(sourceOf), progress);
		const texts: FoundText[] = [];
		for (const one of found) texts.push({ ...one, text: await writeHandInText(one.handIn) });
		return { found: texts, aside, set: await setOfMost(found) };
	},

	async collect(
		progress: Progress,
		set: TaskSet,
		found: readonly Found[],
		choices: readonly Choice[]
	): Promise<Marked> {
		const { open, marking } = await opened(set);
		const collected = await collect(open, found, { choices, marking, progress });
		return { ...collected, summary: summaryOf(open) };
	},

	async report(_: Progress, set: TaskSet, handIns: readonly MarkedHandIn[]): Promise<ClassReport> {
		return classReport((await opened(set)).open, handIns);
	},

	async students(
		progress: Progress,
		set: TaskSet,
		handIns: readonly MarkedHandIn[]
	): Promise<StudentPage[]> {
		const { open } = await opened(set);
		return handIns.map((handIn, i) => {
			progress(i + 1, handIns.length);
			return studentPage(open, handIn);
		});
	},

	async paper(_: Progress, set: TaskSet, code: string): Promise<PaperSheet> {
		return paperSheet((await opened(set)).open, code);
	},

	async print(
		progress: Progress,
		set: TaskSet,
		students: readonly Student[],
		what: 'sheets' | 'key'
	): Promise<Printed> {
		const { open } = await opened(set);
		return (what === 'key' ? printKey : printWorksheets)(open, students, progress);
	},

	async gradebook(_: Progress, set: TaskSet, handIns: readonly MarkedHandIn[]): Promise<string> {
		return writeCsv(gradebook((await opened(set)).open, handIns));
	},

	async slips(_: Progress, set: TaskSet, handIns: readonly MarkedHandIn[]): Promise<string> {
		const missed = missedSteps((await opened(set)).open, handIns);
		return writeCsv(slipTable(missed, handIns.length));
	},

	async xapi(
		_: Progress,
		set: TaskSet,
		handIns: readonly MarkedHandIn[],
		now: string
	): Promise<string> {
		return writeXapi((await opened(set)).open, handIns, { now });
	},

	/** The package, and a sentence for each task that it cannot hold. */
	async qti(
		_: Progress,
		set: TaskSet
	): Promise<{ bytes: Uint8Array<ArrayBuffer>; left: readonly string[] }> {
		const { left, files } = qtiPackage((await opened(set)).open);
		return { bytes: new Uint8Array(writeQti({ files })), left };
	}
} as const;

function summaryOf({ set, hash, of, tasks }: OpenSet): SetSummary {
	return {
		title: set.title,
		hash,
		of,
		tasks: tasks.map(({ place, task, marks }) => ({
			place,
			name: task.family.name,
			of: marks.reduce((sum, one) => sum + one, 0)
		}))
	};
}

function sourceOf(source: File | Pasted) {
	if ('text' in source && typeof source.text === 'string') {
		const bytes = new TextEncoder().encode(source.text);
		return { name: source.name, size: bytes.length, read: () => Promise.resolve(bytes) };
	}
	const file = source as File;
	const name = file.webkitRelativePath || file.name;
	return { name, size: file.size, read: async () => new Uint8Array(await file.arrayBuffer()) };
}
