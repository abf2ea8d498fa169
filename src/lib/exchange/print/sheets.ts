import { escaped } from '../../engine/solver/markup.ts';
import { dueWords } from '../../engine/sets/due-words.ts';
import type { OpenSet, SetTask } from '../../engine/sets/open-set.ts';
import { toleranceWords } from '../../engine/sets/own-tolerance.ts';
import { hasOwnSheets, type TaskSet } from '../../engine/sets/set.ts';
import type { Student } from '../roster.ts';
import { keyBlocks } from './key-block.ts';
import { type Block, linesOf, paged } from './pages.ts';
import { style } from './style.ts';
import { taskBlock } from './task-block.ts';

/** A document to print, whole in one file, and how many sheets it is on paper. */
export interface Printed {
	readonly html: string;
	/** The pages alone, for a place that has `style`. */
	readonly pages: readonly string[];
	readonly sheets: number;
}

/** How paper and PDF are made of it. */
export const howToPrint =
	'Print it from a browser, on Letter or A4, at 100 %, without headers and footers; for a PDF, choose “Save as PDF” as the printer.';

type Progress = (done: number, of: number) => void;

const mostOnWorksheet = 3;

/** What stands above and below on every page, in mm, and a little to spare. */
const worksheetFrame = 40;
const keyFrame = 26;

/** Worksheets: one with lines for code and name, or one a student. */
export function printWorksheets(
	open: OpenSet,
	students: readonly Student[] = [],
	progress?: Progress
): Printed {
	const each = students.length === 0 ? [null] : students;
	const terms = termsOf(open.set, students.length === 0 && hasOwnSheets(open.set));
	const pages = each.flatMap((student, i) => {
		const tasks = student ? open.for(student.code) : open.tasks;
		const blocks = tasks.map((task, at) => taskBlock(task, at + 1));
		const sheets = paged(blocks, {
			most: mostOnWorksheet,
			above: terms.height,
			frame: worksheetFrame
		});
		progress?.(i + 1, each.length);
		return sheets.map((sheet, n) =>
			pageOf(open, sheet, {
				head: `${headOf(open)}${whoOf(open, student)}${n === 0 ? terms.markup : ''}`,
				foot: open.set.help ? '' : 'Worked without help. ',
				number: `${n + 1} of ${sheets.length}`
			})
		);
	});
	return documentOf(`${open.set.title}: sheets`, pages);
}

/** The answer key with all working and the mark scheme; one a code where the tasks are their own. */
export function printKey(
	open: OpenSet,
	students: readonly Student[] = [],
	progress?: Progress
): Printed {
	const each = hasOwnSheets(open.set) && students.length > 0 ? students : [null];
	const pages = each.flatMap((student, i) => {
		const tasks: readonly SetTask[] = student ? open.for(student.code) : open.tasks;
		const sheets = paged(
			tasks.flatMap((task, at) => keyBlocks(task, at + 1)),
			{ most: Infinity, above: scheme.height, frame: keyFrame }
		);
		progress?.(i + 1, each.length);
		const title = `${open.set.title}: answer key and mark scheme`;
		const whose = student ? `For ${student.code}` : 'For the instructor';
		return sheets.map((sheet, n) =>
			pageOf(open, sheet, {
				head: `<div><h1>${escaped(title)}</h1><span>${escaped(whose)}</span></div>${n === 0 ? scheme.markup : ''}`,
				foot: 'For the instructor. Keep apart from the sheets. ',
				number: `${n + 1} of ${sheets.length}`,
				isKey: true
			})
		);
	});
	return documentOf(`${open.set.title}: key`, pages);
}

const scheme: Block = {
	markup:
		'<p class="terms">Marks stand at the steps. An answer speaks for the steps before it that are not asked. A slip loses the marks of its own step; what follows rightly from it keeps its marks. A number that nothing explains loses all the steps that it speaks for.</p>',
	height: 14
};

function headOf({ set, tasks, of }: OpenSet): string {
	const count = tasks.length === 1 ? '1 task' : `${tasks.length} tasks`;
	return `<div><h1>${escaped(set.title)}</h1><span>${count} · ${of} marks</span></div>`;
}

function whoOf({ of }: OpenSet, student: Student | null): string {
	const cells = [
		['Code', student?.code ?? ''],
		['Name, if asked for', student?.name ?? ''],
		['Date', ''],
		[`Marks of ${of}`, '']
	] as const;
	const rows = cells.map(
		([label, text]) => `<div><dt>${label}</dt><dd>${escaped(text)}</dd></div>`
	);
	return `<dl class="who">${rows.join('')}</dl>`;
}

/** What a sheet says that is handed to nobody. */
export const sampleOnly =
	'A sample, not to be handed in: each student’s sheet has numbers or an order of its own. Print one for each student code.';

function termsOf({ due, note, ...set }: TaskSet, isSample: boolean): Block {
	const sample = isSample ? sampleOnly : '';
	const parts = [sample, due === null ? '' : `Due ${dueWords(due)}.`, toleranceWords(set), note];
	const text = parts.filter((part) => part !== '').join(' ');
	if (text === '') return { markup: '', height: 0 };
	return { markup: `<p class="terms">${escaped(text)}</p>`, height: linesOf(text, 95, 4.6) + 2 };
}

interface PageParts {
	readonly head: string;
	readonly foot: string;
	readonly number: string;
	readonly isKey?: boolean;
}

function pageOf({ hash }: OpenSet, blocks: readonly Block[], parts: PageParts): string {
	const { head, foot, number, isKey = false } = parts;
	const cells = [
		['Set', hash],
		['Units', 'inch'],
		[isKey ? 'Key' : 'Sheet', number]
	];
	const title = cells.map(([label, text]) => `<div><dt>${label}</dt><dd>${text}</dd></div>`);
	return `<article class="pg${isKey ? ' key' : ''}"><header>${head}</header>
<div class="in">${blocks.map(({ markup }) => markup).join('\n')}</div>
<footer><p>${foot}Practice numbers only, not repair data.</p><dl>${title.join('')}</dl></footer></article>`;
}

function documentOf(title: string, pages: readonly string[]): Printed {
	const html = `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title><style>${style}</style></head>
<body><div class="bar"><p>${escaped(howToPrint)}</p></div>
${pages.join('\n')}
</body></html>
`;
	return { html, pages, sheets: pages.length };
}
