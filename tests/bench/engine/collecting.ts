import { missedSteps } from '../../../src/lib/engine/sets/missed-steps.ts';
import { collect } from '../../../src/lib/engine/sets/collect.ts';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import type { HandIn } from '../../../src/lib/engine/sets/hand-in.ts';
import { type OpenSet, openSet, type SetTask } from '../../../src/lib/engine/sets/open-set.ts';
import { cards } from '../../../src/lib/engine/families/topics.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { writeCsv } from '../../../src/lib/exchange/csv.ts';
import { gather } from '../../../src/lib/exchange/gather.ts';
import { gradebook, slipTable } from '../../../src/lib/exchange/gradebook.ts';
import { writeHandInFile } from '../../../src/lib/exchange/hand-in-file.ts';
import { printWorksheets } from '../../../src/lib/exchange/print/sheets.ts';
import { writeSet } from '../../../src/lib/exchange/set-link.ts';

const targets = { collect: 2, print: 3 };

/** Hand-ins to a marked table, and sheets for a class, with every third answer a slip's. */
export async function collecting(): Promise<void> {
	console.log('\n## Sets\n\n| what | seconds | target |\n| --- | ---: | ---: |');
	for (const [students, count, numbers] of [
		[30, 20, 'same'],
		[30, 20, 'own'],
		[200, 50, 'same']
	] as const) {
		const wishes = Array.from({ length: count }, (_, i) => {
			const card = cards[i % cards.length];
			return readWish(`${card?.code ?? ''}${(i % 3) + 1}`);
		});
		const set = await composeSet({ ...plainTerms('Bench'), numbers }, wishes);
		const codes = Array.from({ length: students }, (_, i) => `S${i + 1}`);
		const marked = await seconds(() => toTable(set, codes));
		const target = students === 30 ? `${targets.collect}` : '';
		console.log(
			`| ${students} hand-ins of ${count} tasks, ${numbers} numbers, to a table | ${marked} | ${target} |`
		);
		if (numbers !== 'own') continue;
		const printed = await seconds(async () => {
			const open = await openSet(set);
			const list = codes.map((code) => ({ code, name: '' }));
			return () => Promise.resolve(printWorksheets(open, list));
		});
		console.log(`| sheets for ${students}, ${numbers} numbers | ${printed} | ${targets.print} |`);
	}
}

/** Seconds that the work takes, without what has to be there before it. */
async function seconds(prepared: () => Promise<() => Promise<unknown>>): Promise<string> {
	const work = await prepared();
	const start = performance.now();
	await work();
	return ((performance.now() - start) / 1000).toFixed(2);
}

async function toTable(set: OpenSet['set'], codes: readonly string[]) {
	const open = await openSet(set);
	const link = await writeSet(set);
	const sources = codes.map((code, i) => {
		const bytes = new TextEncoder().encode(writeHandInFile(handInOf(open, link, code, i)));
		return { name: code, size: bytes.length, read: () => Promise.resolve(bytes) };
	});
	return async () => {
		const { found } = await gather(sources);
		const again = await openSet(set);
		const { handIns } = await collect(again, found);
		const tables = [
			gradebook(again, handIns),
			slipTable(missedSteps(again, handIns), handIns.length)
		];
		return tables.map(writeCsv);
	};
}

function handInOf(open: OpenSet, set: string, code: string, student: number): HandIn {
	const answers = open.for(code).map((task, i) => ({
		place: i + 1,
		entries: entriesIn(task, student + i),
		picked: {},
		units: 'in' as const,
		opened: [],
		charts: [],
		seconds: 90
	}));
	const { hash } = open;
	return { set, hash, code, name: '', version: 1, promised: false, at: null, answers };
}

/** Right, or every third time what one of the slips leads to. */
function entriesIn({ task }: SetTask, turn: number): Record<string, string> {
	const slips = [...task.slips.values()];
	const values = turn % 3 === 0 ? (slips[turn % slips.length] ?? task.right) : task.right;
	return Object.fromEntries(
		task.drawn.asked.map((key) => {
			const value = values[key] ?? task.right[key] ?? '';
			return [key, textAt(task.method, key, value).replace(/ \(.*\)$/, '')];
		})
	);
}
