import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadFamilies } from '../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../src/lib/engine/families/level.ts';
import { composeSet, plainTerms, readWish } from '../../src/lib/engine/sets/compose.ts';
import { openSet, questionFor, type SetTask } from '../../src/lib/engine/sets/open-set.ts';
import { longest } from '../../src/lib/engine/sets/set.ts';
import { drawTask, stepsOf } from '../../src/lib/engine/tasks/task.ts';
import { keyBlocks } from '../../src/lib/exchange/print/key-block.ts';
import { type Block, paged } from '../../src/lib/exchange/print/pages.ts';
import { printKey, printWorksheets } from '../../src/lib/exchange/print/sheets.ts';
import { style } from '../../src/lib/exchange/print/style.ts';
import { taskBlock } from '../../src/lib/exchange/print/task-block.ts';
import { formulasOf, laidOut, openBrowser, type Paper, printedPages } from './print-browser.ts';

/** What a block may have on a page at least, in mm. */
const room = 215;

const papers: readonly Paper[] = ['Letter', 'A4'];

/** Two tasks of every family and level. */
const drawn = (await loadFamilies()).flatMap((family) =>
	levels.flatMap((level) => [3, 77].map((seed) => drawTask(family, level, seed)))
);
const typed: SetTask[] = drawn.map((task) => ({
	place: 1,
	task,
	marks: stepsOf(task).map(() => 1),
	question: null
}));
const chosen = typed.map((one) => ({ ...one, question: questionFor(one.task) }));

const open = await openSet(
	await composeSet(
		{
			...plainTerms('<b>Section B</b>, week 6'),
			due: '2026-12-04T16:00',
			help: false,
			note: 'Work it alone, & bring the sheet. '.repeat(20).slice(0, longest.note)
		},
		'RL2 SC2 LR2 BS3 RD2 HP2 BW3 RR3 ED3 CS2 BA3 PN3'.split(' ').map(readWish)
	)
);
const students = [
	{ code: 'B01', name: '' },
	{ code: 'B02', name: '<script>alert(1)</script>' }
];

let browser: Browser;
beforeAll(async () => {
	browser = await openBrowser();
});
afterAll(() => browser.close());

function inOneColumn(blocks: readonly Block[], kind: string): string {
	const markup = blocks.map((block) => block.markup).join('');
	return `<!doctype html><style>${style}</style><div class="${kind}"><div class="in" style="display: block">${markup}</div></div>`;
}

describe.each(papers)('on %s', (paper) => {
	test.each([
		['a task', '.task', '', typed.map((one) => taskBlock(one, 1))],
		['a task with options', '.task', '', chosen.map((one) => taskBlock(one, 1))],
		['the key of a task', '.kt', 'key', typed.flatMap((one) => keyBlocks(one, 1))]
	] as const)('%s is no higher than was reckoned, and nothing in it is cut off', async (...row) => {
		const [, selector, kind, blocks] = row;
		const { wide, heights } = await laidOut(browser, inOneColumn(blocks, kind), selector, paper);
		expect(wide).toEqual([]);
		const over = heights.flatMap((height, i) =>
			height > Math.min(blocks[i]?.height ?? 0, room) ? `${blocks[i]?.markup ?? ''}: ${height}` : []
		);
		expect(heights).toHaveLength(blocks.length);
		expect(over).toEqual([]);
	});

	test('every page of a document is one page of paper', async () => {
		for (const { html, sheets } of [
			printWorksheets(open),
			printWorksheets(open, students),
			printKey(open)
		]) {
			expect(await printedPages(browser, html, paper)).toBe(sheets);
			expect((await laidOut(browser, html, '.pg', paper)).wide).toEqual([]);
		}
	});
});

test('formulas of the key can be read: 7 points at least, and no line runs into another', async () => {
	const blocks = typed.flatMap((one) => keyBlocks(one, 1));
	const { smallest, collide } = await formulasOf(browser, inOneColumn(blocks, 'key'));
	expect(smallest).toBeGreaterThanOrEqual(7);
	expect(collide).toEqual([]);
});

describe('a printed document', () => {
	test('has set, units and its number on every page, from 1 for every student', () => {
		const { html, sheets } = printWorksheets(open, students);
		const numbers = [...html.matchAll(/<dt>Sheet<\/dt><dd>(\d+) of (\d+)<\/dd>/g)];
		const each = sheets / 2;
		expect(numbers.map(([, n, of]) => [Number(n), Number(of)])).toEqual(
			[0, 1].flatMap(() => Array.from({ length: each }, (_, i) => [i + 1, each]))
		);
		expect(html.split(`<dt>Set</dt><dd>${open.hash}</dd>`)).toHaveLength(sheets + 1);
		expect(html.match(/B01/g)).toHaveLength(each);
	});

	test('holds every task and no answer; the key holds all answers', () => {
		const { html } = printWorksheets(open);
		const key = printKey(open).html;
		for (const { task } of open.tasks) {
			expect(html).toContain(task.number);
			expect(key).toContain(task.number);
			for (const step of stepsOf(task)) {
				const label = task.method.steps[step]?.label ?? '';
				expect(key).toContain(`<td>${label}</td>`);
			}
		}
		expect(html).not.toContain('<math');
	});

	test('takes nothing from elsewhere, and shows words as words', () => {
		for (const { html } of [printWorksheets(open, students), printKey(open, students)]) {
			expect(html).not.toMatch(/<script|<link|<img|src=|@import|url\(|http/);
			expect(html).not.toContain('<b>Section');
			expect(html).toContain('&lt;b&gt;Section B&lt;/b&gt;');
		}
	});

	test('has a key for every code where the tasks are their own', async () => {
		const own = await openSet({ ...open.set, numbers: 'own' });
		const { html } = printKey(own, students);
		for (const { code } of students) {
			expect(html).toContain(`For ${code}`);
			for (const { task } of own.for(code)) expect(html).toContain(task.number);
		}
		expect(printKey(open, students).html).not.toContain('For B01');
	});

	test('says on the sheet that it is a sample, where no one sheet is for all', async () => {
		expect(printWorksheets(open).html).not.toContain('A sample');
		for (const own of [{ numbers: 'own' }, { order: 'mixed' }] as const) {
			const mixed = await openSet({ ...open.set, ...own });
			expect(printWorksheets(mixed).html).toContain('A sample, not to be handed in');
			expect(printWorksheets(mixed, students).html).not.toContain('A sample');
		}
	});

	test('reports how far it is', () => {
		const seen: number[][] = [];
		printWorksheets(open, students, (done, of) => seen.push([done, of]));
		expect(seen).toEqual([
			[1, 2],
			[2, 2]
		]);
	});
});

test('blocks are put on pages in order, none split, no more than fit', () => {
	const block = (height: number): Block => ({ markup: String(height), height });
	const heights = [60, 60, 60, 100, 120, 500, 10, 10, 10, 10];
	const pages = paged(heights.map(block), { most: 3, above: 50, frame: 40 }).map((one) =>
		one.map(({ height }) => height)
	);
	expect(pages).toEqual([[60, 60], [60, 100], [120], [500], [10, 10, 10], [10]]);
});
