import { collect, type MarkedHandIn, markingOnce, tasksOf } from '$lib/engine/sets/collect.ts';
import type { Aside, Choice, Found } from '$lib/engine/sets/choose-hand-ins.ts';
import { type ClassReport, classReport } from '$lib/engine/sets/class-report.ts';
import type { HandIn } from '$lib/engine/sets/hand-in.ts';
import type { KeptSheet } from '$lib/engine/sets/kept-draws.ts';
import { missedSteps } from '$lib/engine/sets/missed-steps.ts';
import type { Override } from '$lib/engine/sets/override.ts';
import { type OpenSet, openSet } from '$lib/engine/sets/open-set.ts';
import { setHash, type TaskSet } from '$lib/engine/sets/set.ts';
import { type StudentPage, studentPage } from '$lib/engine/sets/student-page.ts';
import { writeCsv } from '$lib/exchange/csv.ts';
import { gather } from '$lib/exchange/gather.ts';
import { gradebook, slipTable } from '$lib/exchange/gradebook.ts';
import { unpackSheets } from '$lib/exchange/kept-sheets.ts';
import { printKey, printWorksheets, type Printed } from '$lib/exchange/print/sheets.ts';
import { readHandInTexts, writeHandInText } from '$lib/exchange/hand-in-file.ts';
import { qtiPackage, writeQti } from '$lib/exchange/qti/package.ts';
import type { Student } from '$lib/exchange/roster.ts';
import { setOfMost } from '$lib/exchange/which-set.ts';
import { writeXapi } from '$lib/exchange/xapi.ts';
import { packSheets } from '../sets/pack-sheets.ts';
import { type PaperTask, paperTasks } from './paper-sheet.ts';
import { isPasted, nameOf } from './source.ts';

/*
 * What takes long with a set: run in a worker (see `work-desk.ts`), so that the page stays free.
 * All that goes in and comes out is plain data.
 */

/** Told how far it is, and of a long result each part: what is handed over whole stops the page. */
export type Progress<Part = never> = (done: number, of: number, part?: Part) => void;

/** A text that was pasted or kept, under a name to tell it by. */
export interface Pasted {
	readonly name: string;
	readonly text: string;
}

/** A hand-in as the pages hold it. */
export interface KeptHandIn extends Pick<HandIn, 'hash' | 'code' | 'version'> {
	readonly file: string;
	/** As it is pasted into a message; null where it is too long for that. */
	readonly text: string | null;
}

/** A set, with what was kept of its tasks where a later revision draws others. */
export interface KeptSet {
	readonly set: TaskSet;
	readonly drawn: readonly KeptSheet[];
}

/** What came in for a set, and what an instructor settled about it. */
export interface ClassWork extends KeptSet {
	readonly handIns: readonly KeptHandIn[];
	readonly choices: readonly Choice[];
	readonly overrides: readonly Override[];
}

export interface GatheredTexts {
	readonly found: readonly KeptHandIn[];
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
	/** What is typed in from a sheet of paper, in the order of the set. */
	readonly paper: readonly PaperTask[];
}

/** What came of marking, without the hand-ins, which come one by one. */
export interface Marked {
	readonly aside: readonly Aside[];
	readonly summary: SetSummary;
}

/** The set last worked on: drawn once, and what was marked in it is remembered. */
let last: { key: string; open: OpenSet; marking: ReturnType<typeof markingOnce> } | null = null;

async function opened({ set, drawn }: KeptSet) {
	const key = `${setHash(set)} ${drawn.length}`;
	if (last?.key !== key) {
		const open = await openSet(set, await unpackSheets(drawn));
		last = { key, open, marking: markingOnce() };
	}
	return last;
}

/** Hand-ins by their text, so that none is unpacked twice. */
const known = new Map<string, HandIn>();

async function foundIn({ file, text }: KeptHandIn): Promise<Found[]> {
	if (text === null) return [];
	const before = known.get(text);
	if (before) return [{ file, handIn: before }];
	const [reading] = await readHandInTexts(text);
	return reading?.ok ? [{ file, handIn: remembered(text, reading.handIn) }] : [];
}

function remembered(text: string, handIn: HandIn): HandIn {
	known.set(text, handIn);
	return handIn;
}

/** Marks a class; what was marked before is not marked again. */
async function markedClass(of: ClassWork, progress?: (done: number, of: number) => void) {
	const { open, marking } = await opened(of);
	const found: Found[] = [];
	for (const one of of.handIns) found.push(...(await foundIn(one)));
	const { choices, overrides } = of;
	return { open, ...(await collect(open, found, { choices, overrides, marking, progress })) };
}

/** What was handed over to be gathered. */
const held: (File | Pasted)[] = [];

export const work = {
	/** Takes some of what is to be gathered: handing many files over at once stops the page. */
	hold(_: Progress, sources: readonly (File | Pasted)[]): Promise<void> {
		held.push(...sources);
		return Promise.resolve();
	},

	/** Reads what is held, and what comes with it. */
	async gather(progress: Progress, sources: readonly (File | Pasted)[]): Promise<GatheredTexts> {
		const all = [...held.splice(0), ...sources];
		const { found, aside } = await gather(all.map(sourceOf), progress);
		const texts: KeptHandIn[] = [];
		for (const { file, handIn } of found) {
			const text = await writeHandInText(handIn);
			if (text !== null) remembered(text, handIn);
			const { hash, code, version } = handIn;
			texts.push({ file, text, hash, code, version });
		}
		return { found: texts, aside, set: await setOfMost(found) };
	},

	async collect(progress: Progress<MarkedHandIn>, of: ClassWork): Promise<Marked> {
		const { open, handIns, aside } = await markedClass(of, progress);
		for (const [i, one] of handIns.entries()) progress(i + 1, handIns.length, one);
		return { aside, summary: summaryOf(open) };
	},

	/** What the tasks of sheets drew: of codes, or with null of everybody. */
	async sheets(
		_: Progress,
		set: KeptSet,
		codes: readonly (string | null)[]
	): Promise<readonly KeptSheet[]> {
		const { open } = await opened(set);
		return packSheets(codes, (code) => (code === null ? open.tasks : tasksOf(open, code)));
	},

	async report(_: Progress, of: ClassWork): Promise<ClassReport> {
		const { open, handIns } = await markedClass(of);
		return classReport(open, handIns);
	},

	/** Gives a page for each student, one by one; in the end, how many. */
	async students(progress: Progress<StudentPage>, of: ClassWork): Promise<number> {
		const { open, handIns } = await markedClass(of);
		for (const [i, handIn] of handIns.entries()) {
			progress(i + 1, handIns.length, studentPage(open, handIn));
		}
		return handIns.length;
	},

	async print(
		progress: Progress,
		set: KeptSet,
		students: readonly Student[],
		what: 'sheets' | 'key'
	): Promise<Printed> {
		const { open } = await opened(set);
		return (what === 'key' ? printKey : printWorksheets)(open, students, progress);
	},

	async gradebook(_: Progress, of: ClassWork): Promise<string> {
		const { open, handIns } = await markedClass(of);
		return writeCsv(gradebook(open, handIns));
	},

	async slips(_: Progress, of: ClassWork): Promise<string> {
		const { open, handIns } = await markedClass(of);
		return writeCsv(slipTable(missedSteps(open, handIns), handIns.length));
	},

	async xapi(_: Progress, of: ClassWork, now: string): Promise<string> {
		const { open, handIns } = await markedClass(of);
		return writeXapi(open, handIns, { now });
	},

	/** The package, and a sentence for each task that it cannot hold. */
	async qti(
		_: Progress,
		set: KeptSet
	): Promise<{ bytes: Uint8Array<ArrayBuffer>; left: readonly string[] }> {
		const { left, files } = qtiPackage((await opened(set)).open);
		return { bytes: new Uint8Array(writeQti({ files })), left };
	}
} as const;

function summaryOf(open: OpenSet): SetSummary {
	const { set, hash, of, tasks } = open;
	return {
		paper: paperTasks(open),
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
	const name = nameOf(source);
	if (isPasted(source)) {
		const bytes = new TextEncoder().encode(source.text);
		return { name, size: bytes.length, read: () => Promise.resolve(bytes) };
	}
	return { name, size: source.size, read: async () => new Uint8Array(await source.arrayBuffer()) };
}
