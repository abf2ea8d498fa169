import { afterAll, describe, expect, test, vi } from 'vitest';
import type { Collected } from '../../../src/lib/engine/sets/collect.ts';
import type { KeptSheet } from '../../../src/lib/engine/sets/kept-draws.ts';
import type { SetTask } from '../../../src/lib/engine/sets/open-set.ts';

const topics = '../../../src/lib/engine/families/topics.ts';

/** The program, as it stands now or with every family raised by a revision. */
async function program(raised: boolean) {
	vi.resetModules();
	vi.doUnmock(topics);
	if (raised) {
		vi.doMock(topics, async (original) => {
			const real = await original<typeof import('../../../src/lib/engine/families/topics.ts')>();
			return { ...real, cards: real.cards.map((card) => ({ ...card, rev: card.rev + 1 })) };
		});
	}
	const { composeSet, plainTerms, readWish } =
		await import('../../../src/lib/engine/sets/compose.ts');
	const { openSet, drawsAsMade } = await import('../../../src/lib/engine/sets/open-set.ts');
	const { collect } = await import('../../../src/lib/engine/sets/collect.ts');
	const { draftOf, tasksNow } = await import('../../../src/lib/engine/sets/draft.ts');
	const { packSheet, unpackSheets } = await import('../../../src/lib/exchange/kept-sheets.ts');
	const { printWorksheets, printKey } = await import('../../../src/lib/exchange/print/sheets.ts');
	const { handInOf, rightEntries } = await import('../../engine/sets/hand-ins.ts');
	const compose = (terms: object, wishes: string) =>
		composeSet(
			{ ...plainTerms('Section B'), ...terms },
			wishes.split(' ').map((one) => readWish(one))
		);
	return {
		...{ compose, openSet, drawsAsMade, collect, packSheet, unpackSheets },
		...{ printWorksheets, printKey, handInOf, rightEntries, draftOf, tasksNow }
	};
}

const codes = ['B05', 'B07'];
const students = codes.map((code) => ({ code, name: '' }));
const today = await program(false);

/** What marking says, without the files. */
function said({ handIns }: Collected) {
	return handIns.map(({ code, marks, tasks }) => ({ code, marks, tasks }));
}

/** A set as it was made, handed out and marked before anything was raised. */
async function handedOut(name: string, terms: object) {
	const set = await today.compose(terms, 'RL1 RL3 RD2 LR2 LR3 ED2 BS1 BS3 PN1');
	const open = await today.openSet(set);
	// One answer wrong, so that slips are named too.
	const entriesOf = (code: string) => (own: SetTask, place: number) => {
		const right = today.rightEntries(own);
		const [key = ''] = Object.keys(right);
		return place === 2 && code === 'B05' ? { ...right, [key]: '7/64' } : right;
	};
	const found = [];
	const sheets: KeptSheet[] = await today.packSheet(null, open.tasks);
	for (const code of codes) {
		const handIn = await today.handInOf(open, code, entriesOf(code));
		found.push({ file: `${code}.json`, handIn });
		if (set.numbers === 'own') sheets.push(...(await today.packSheet(code, open.for(code))));
	}
	const marked = said(await today.collect(open, found));
	const worksheets = await today.printWorksheets(open, students);
	const key = await today.printKey(open, students);
	const before = { hash: open.hash, marked, worksheets, key };
	return { name, set, found, sheets, before, isNow: today.drawsAsMade(set) };
}

const sets = [
	await handedOut('the same numbers, typed', {}),
	await handedOut('the same numbers, from options', { answers: 'options' }),
	await handedOut('own numbers in an order of their own', { numbers: 'own', order: 'mixed' }),
	await handedOut('own numbers, from options', { numbers: 'own', answers: 'options' }),
	await handedOut('tolerances of its own', { within: { rule: '1/16' } })
];

test('what a long set drew fits the log in parts', async () => {
	const { compose, openSet, packSheet, unpackSheets } = today;
	const open = await openSet(await compose({}, 'PN3*12 LR3*20 BS3*20'));
	const sheets = await packSheet(null, open.tasks);
	expect(sheets.length).toBeGreaterThan(1);
	for (const { draws } of sheets) expect(draws.length).toBeLessThan(12_000);
	const kept = await unpackSheets(sheets);
	expect(open.tasks.map(({ place }) => kept.at(null, place)?.number)).toEqual(
		open.tasks.map(({ task }) => task.number)
	);
});

describe('after every family was raised by a revision', async () => {
	const later = await program(true);
	afterAll(() => vi.doUnmock(topics));

	test('a set can be edited: its tasks are drawn anew, with their marks, and it says so', async () => {
		const set = await today.compose({}, 'RL2 LR2');
		expect((await today.tasksNow(set)).anew).toEqual([]);
		const { drawn, anew } = await later.tasksNow(set);
		expect(anew).toEqual([1, 2]);
		const marks = [[2, 2, 2, 2], set.tasks[1]?.marks ?? []];
		const worth = { tasks: set.tasks.map((task, i) => ({ ...task, marks: marks[i] ?? [] })) };
		const draft = later.draftOf(worth, drawn);
		expect(draft.map((one) => one.marks)).toEqual(marks);
		for (const [i, { task }] of draft.entries()) {
			expect(task.number.slice(0, 3)).toBe(set.tasks[i]?.number.slice(0, 3));
			expect(task.number).not.toBe(set.tasks[i]?.number);
		}
	});

	describe.each(sets)('a set with $name', ({ set, found, sheets, before, isNow }) => {
		test('is marked and printed as before', async () => {
			expect([isNow, later.drawsAsMade(set)]).toEqual([true, false]);
			const again = await later.openSet(set, await later.unpackSheets(sheets));
			const marked = said(await later.collect(again, found));
			const worksheets = await later.printWorksheets(again, students);
			const key = await later.printKey(again, students);
			expect({ hash: again.hash, marked, worksheets, key }).toEqual(before);
		});

		test('is refused as ever where nothing was kept, or what was kept is damaged', async () => {
			const damaged = sheets.map((one) => ({ ...one, draws: one.draws.slice(0, -9) }));
			for (const kept of [[], damaged]) {
				const opening = later.openSet(set, await later.unpackSheets(kept));
				await expect(opening).rejects.toThrow(
					/^Task 1 of the set, RL1-.* since an update. Make the set again/
				);
			}
		});

		test('has only those set aside whose own numbers were not kept', async () => {
			const some = sheets.filter(({ code }) => code !== 'B07');
			const again = await later.openSet(set, await later.unpackSheets(some));
			const { handIns, aside } = await later.collect(again, found);
			const isOwn = set.numbers === 'own';
			expect(handIns.map(({ code }) => code)).toEqual(isOwn ? ['B05'] : codes);
			expect(aside.map(({ file }) => file)).toEqual(isOwn ? ['B07.json'] : []);
		});
	});
});
