import { describe, expect, test } from 'vitest';
import { answersIn, entriesOn, paperLines } from '../../../src/lib/app/collect/paper-sheet.ts';
import { runJob } from '../../../src/lib/app/collect/run-job.ts';
import { type ClassWork, type KeptHandIn, work } from '../../../src/lib/app/collect/set-work.ts';
import type { MarkedHandIn } from '../../../src/lib/engine/sets/collect.ts';
import { SetError } from '../../../src/lib/engine/sets/set-error.ts';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import { openSet } from '../../../src/lib/engine/sets/open-set.ts';
import { readQti } from '../../../src/lib/exchange/qti/package.ts';
import { writeSet } from '../../../src/lib/exchange/set-link.ts';
import { writeHandInText } from '../../../src/lib/exchange/hand-in-file.ts';
import { handInOf, rightEntries } from '../../engine/sets/hand-ins.ts';

const terms = { ...plainTerms('Own numbers'), numbers: 'own', order: 'mixed' } as const;
const set = await composeSet(terms, ['RL2', 'LR2', 'BS1'].map(readWish));
const open = await openSet(set);
const still = () => {};

function classOf(handIns: readonly KeptHandIn[]): ClassWork {
	return { set, drawn: [], handIns, choices: [], overrides: [] };
}

/** Hand-ins as they come from the worker, one by one. */
async function markedIn(handIns: readonly KeptHandIn[]): Promise<MarkedHandIn[]> {
	const marked: MarkedHandIn[] = [];
	const { summary } = await work.collect((_done, _of, one) => {
		if (one) marked.push(one);
	}, classOf(handIns));
	expect(summary).toMatchObject({ title: 'Own numbers', of: open.of });
	return marked;
}

test('a sheet of paper, typed in its own order, is marked as the student’s own', async () => {
	const { summary } = await work.collect(still, classOf([]));
	const lines = paperLines(set, open.hash, 'B05', summary.paper);
	const right = open.for('B05').map(rightEntries);
	const entries = Object.fromEntries(
		lines.map(({ place, key }) => [`${place} ${key}`, ` ${right[place - 1]?.[key] ?? ''} `])
	);
	const handIn = {
		...(await handInOf(open, 'B05', () => ({}))),
		answers: answersIn(lines, entries)
	};
	const text = await writeHandInText(handIn);
	const [marked] = await markedIn([{ ...handIn, file: 'paper', text }]);
	expect(marked).toMatchObject({ code: 'B05', marks: open.of });
	const typed = Object.entries(entries).map(([name, entry]) => [name, entry.trim()]);
	expect(entriesOn(set, open.hash, 'B05', marked?.tasks ?? [])).toEqual(Object.fromEntries(typed));
	expect(answersIn(lines, {})).toEqual([]);
});

describe('the worker', () => {
	test('goes from texts to every file, and says how far it is', async () => {
		const texts = await Promise.all(
			['B05', 'B07'].map(async (code) => ({
				name: code,
				text: (await writeHandInText(await handInOf(open, code))) ?? ''
			}))
		);
		const told: string[] = [];
		const progress = (done: number, of: number) => void told.push(`${done}/${of}`);
		const gathered = await work.gather(progress, [...texts, { name: 'x', text: 'no hand-in' }]);
		expect(told).toEqual(['1/3', '2/3', '3/3']);
		expect(gathered.aside).toMatchObject([{ file: 'x' }]);
		expect(gathered.found.map(({ text }) => text)).toEqual(texts.map(({ text }) => text));
		expect(gathered.set).toEqual(set);
		const handIns = await markedIn(gathered.found);
		const of = classOf(gathered.found);
		expect(await work.gradebook(still, of)).toContain('B07,,');
		expect(JSON.parse(await work.xapi(still, of, '2026-12-04T16:00:00.000Z'))).toHaveLength(
			handIns.flatMap(({ tasks }) => tasks.flatMap(({ answers }) => answers)).length + 2
		);
		expect(readQti((await work.qti(still, { set, drawn: [] })).bytes)).toEqual({ ok: true, set });
		const printed = await work.print(still, { set, drawn: [] }, [{ code: 'B05', name: '' }], 'key');
		expect(printed.pages.join('')).toContain('For B05');
	});

	test('reads what was handed over in parts before, in its order, and once', async () => {
		const names = ['a', 'b', 'c'].map((name) => ({ name, text: 'no hand-in' }));
		await work.hold(still, names.slice(0, 1));
		await work.hold(still, names.slice(1, 2));
		const { aside } = await work.gather(still, names.slice(2));
		expect(aside.map(({ file }) => file)).toEqual(['a', 'b', 'c']);
		expect((await work.gather(still, [])).aside).toEqual([]);
	});

	test('hands a refusal on as one sentence', async () => {
		const gone = { ...set, tasks: [{ number: 'RL2-00G0-8B', marks: [1] }] };
		await expect(runJob('qti', [{ set: gone, drawn: [] }], still)).rejects.toThrow(SetError);
		expect(await writeSet(set)).toMatch(/^2\.z\./);
	});
});
