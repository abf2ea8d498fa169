import { describe, expect, test } from 'vitest';
import { classReport, spreadOf } from '../../../src/lib/engine/sets/class-report.ts';
import { collect } from '../../../src/lib/engine/sets/collect.ts';
import { composeSet, plainTerms, readWish } from '../../../src/lib/engine/sets/compose.ts';
import { blankAgain } from '../../../src/lib/engine/sets/left-blank.ts';
import { readMissed, writeMissed } from '../../../src/lib/engine/sets/missed-query.ts';
import { openSet, type SetTask } from '../../../src/lib/engine/sets/open-set.ts';
import { studentPage } from '../../../src/lib/engine/sets/student-page.ts';
import { evaluate } from '../../../src/lib/engine/solver/evaluate.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { taskFromNumber } from '../../../src/lib/engine/tasks/task.ts';
import { handInOf, rightEntries } from './hand-ins.ts';

/*
 * Two tasks of four marks each, the second a row of rivets with steps run, spaces, count, pitch.
 * Six students: two have all, three leave the end margins in the run, one leaves the row blank.
 */
const terms = plainTerms('Section B, week 3');
const open = await openSet(await composeSet(terms, [readWish('RL2'), readWish('LR2')]));

function noMargin({ task }: SetTask) {
	const step = task.method.slips.noMargin?.step ?? '';
	const values = evaluate(task.method, task.drawn.given, { slips: { [step]: 'noMargin' } });
	return Object.fromEntries(
		task.drawn.asked.map((key) => [key, textAt(task.method, key, values[key] ?? '')])
	);
}

const handIns = await Promise.all(
	['A1', 'A2', 'B1', 'B2', 'B3', 'C1'].map((code) =>
		handInOf(open, code, (own) => {
			if (own.place === 1 || code.startsWith('A')) return rightEntries(own);
			return code.startsWith('B') ? noMargin(own) : {};
		})
	)
);
const found = handIns.map((handIn) => ({ file: handIn.code, handIn }));
const marked = (await collect(open, found)).handIns;
const of = (code: string) => marked.filter((one) => one.code === code);

describe('a class', () => {
	const report = classReport(open, marked);

	test('has its marks spread: 8, 8, 7, 7, 7, 4', () => {
		expect(report.spread.counts).toEqual([
			{ marks: 4, codes: ['C1'] },
			{ marks: 7, codes: ['B1', 'B2', 'B3'] },
			{ marks: 8, codes: ['A1', 'A2'] }
		]);
		expect(report.spread.mean).toBeCloseTo(41 / 6, 12);
		expect(report.spread.median).toBe(7);
		const four = [3, 1, 10, 4].map((marks, i) => ({ code: String(i), marks }));
		expect(spreadOf(four)).toMatchObject({ mean: 4.5, median: 3.5 });
		expect(spreadOf([])).toEqual({ counts: [], mean: null, median: null });
	});

	test('has in its headline the slip that most made', () => {
		expect(report.headline).toMatchObject({ students: 3, places: [2] });
		expect(report.headline?.says).toContain('end margins were not taken off');
		expect(report.missed[0]?.rule).toBe('row.ends');
		expect(classReport(open, of('A1')).headline).toBeNull();
	});

	test('tells a task hard that few have, and one that only the strong have apart', () => {
		// The second task: shares 1, 1, 3/4, 3/4, 3/4, 0; all have the first, so all are level.
		expect(report.tasks[1]?.difficulty).toBeCloseTo(4.25 / 6, 12);
		expect(report.tasks[1]?.discrimination).toBeCloseTo(0, 12);
		expect(report.tasks[0]).toMatchObject({ difficulty: 1, discrimination: 0 });
	});

	test('tells what was left blank, and hands it on where half of the class left it', () => {
		expect(report.blank).toEqual([
			{ place: 2, name: open.tasks[1]?.task.family.name, kind: 'LR2', codes: ['C1'] }
		]);
		expect(blankAgain(report.blank, 6)).toEqual([]);
		expect(blankAgain(report.blank, 2)).toEqual(report.blank);
		expect(writeMissed(report.missed, report.blank)).toBe(`${report.missed[0]?.skill},LR2*2`);
		expect(classReport(open, of('A1')).blank).toEqual([]);
	});

	test('hands on what it missed as an address that is read again', () => {
		const written = writeMissed(report.missed);
		expect(readMissed(written)).toEqual([report.missed[0]?.skill]);
		expect(readMissed('piece/grip,,<script>,RL2*2')).toEqual(['piece/grip']);
	});
});

describe('the steps of a task', () => {
	test.each([
		['A1', 'right right right right'],
		['B1', 'lost follows follows follows'],
		['C1', 'blank blank blank blank']
	])('%s: %s', (code, states) => {
		const [one] = of(code);
		expect(one?.tasks[1]?.steps.map(({ state }) => state).join(' ')).toBe(states);
	});
});

describe('a page for a student', () => {
	const pages = marked.map((one) => studentPage(open, one));

	test('tells what was wrong, why, and a fresh task to practise it', async () => {
		const page = pages.find(({ code }) => code === 'B1');
		expect(page).toMatchObject({ marks: 7, of: 8, tasks: [{ place: 2, marks: 3, of: 4 }] });
		const [wrong, ...others] = page?.tasks[0]?.wrong ?? [];
		expect(others).toEqual([]);
		expect(wrong?.says).toContain('end margins were not taken off');
		expect(wrong?.source).toContain('FAA-H-8083-31B');
		const [practice] = page?.practise ?? [];
		const task = await taskFromNumber(practice?.task ?? '');
		expect(`${task.id.code}${task.id.level}`).toBe('LR2');
		expect(task.number).not.toBe(open.tasks[1]?.task.number);
	});

	test('tells a rule once, at the first answer that it is behind', async () => {
		const twice = await openSet(await composeSet(plainTerms('Twice'), ['ED2*2'].map(readWish)));
		const found = [{ file: 'C1', handIn: await handInOf(twice, 'C1', () => ({})) }];
		const [blank] = (await collect(twice, found)).handIns;
		if (!blank) throw new Error('nothing was marked');
		const told = studentPage(twice, blank).tasks.map(({ wrong }) => wrong.map(({ why }) => why));
		expect(told[0]?.every((why) => why !== '')).toBe(true);
		expect(told[1]?.every((why) => why === '')).toBe(true);
	});

	test('is empty where all is right, and tells what was left out', () => {
		expect(pages.find(({ code }) => code === 'A1')).toMatchObject({ tasks: [], practise: [] });
		const blank = pages.find(({ code }) => code === 'C1')?.tasks[0]?.wrong ?? [];
		expect(blank.map(({ entry }) => entry)).toEqual(['', '']);
	});
});
