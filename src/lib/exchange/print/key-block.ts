import { escaped } from '../../engine/solver/markup.ts';
import { textAt } from '../../engine/solver/show.ts';
import { identifier, showStep, symbolOf } from '../../engine/solver/show-step.ts';
import { optionTexts } from '../../engine/sets/rehearsal.ts';
import type { SetTask } from '../../engine/sets/open-set.ts';
import { stepsOf, type Task } from '../../engine/tasks/task.ts';
import { type Block, linesOf } from './pages.ts';

/** Steps of one block are no higher together, in mm: with its head it fits on any page. */
const mostOfSteps = 195;

/**
 * One task of the key: its answer, every step with working, a slip met there, and its marks. A task
 * too long for a page is parted between its steps.
 */
export function keyBlocks(own: SetTask, place: number): Block[] {
	const { task, marks } = own;
	const parts: Block[][] = [[]];
	for (const [i, key] of stepsOf(task).entries()) {
		const row = stepRow(task, key, marks[i] ?? 0);
		const last = parts.at(-1) ?? [];
		if (last.length > 0 && heightIn(last) + row.height > mostOfSteps) parts.push([row]);
		else last.push(row);
	}
	return parts.map((rows, i) => {
		const head = i === 0 ? answerText(own) : 'continued';
		const markup = `<section class="kt"><h2><b>${place}</b><span>${escaped(head)}</span><em class="tn">${task.number}</em></h2>
<table><colgroup><col class="st"><col><col class="sl"><col class="mk"></colgroup><thead><tr><th>Step</th><th>Working</th><th>Slip met there</th><th>Marks</th></tr></thead>
<tbody>${rows.map((row) => row.markup).join('')}</tbody></table></section>`;
		return { markup, height: heightIn(rows) + 12.5 + linesOf(head, 70, 4.3) };
	});
}

function heightIn(rows: readonly Block[]): number {
	return rows.reduce((sum, { height }) => sum + height, 0);
}

function answerText({ task, question }: SetTask): string {
	if (question) {
		const letter = String.fromCharCode(65 + question.right);
		return `${letter}: ${optionTexts(question, 'in')[question.right] ?? ''}`;
	}
	return task.drawn.asked.map((key) => textAt(task.method, key, task.right[key] ?? '')).join('; ');
}

function stepRow(task: Task, key: string, marks: number): Block {
	const { method, right } = task;
	const label = method.steps[key]?.label ?? key;
	const shown = showStep(method, key, right);
	const name = identifier(symbolOf(method, key));
	const formulas = [
		...formulaLines(`${name}<mo>=</mo>`, shown.symbols, ''),
		...shortened(
			shown.numbers.map((numbers, i) =>
				worked(numbers, shown.results[i] ?? '', shown.signs[i] ?? '=')
			)
		).flat()
	];
	if (shown.numbers.length > mostShown) {
		formulas.push(`<p>${escaped(textAt(method, key, right[key] ?? ''))}</p>`);
	}
	const slip = slipAt(task, key);
	const high = formulas.reduce((sum, one) => sum + heightOf(one), 1.6);
	return {
		markup: `<tr><td>${escaped(label)}</td><td>${formulas.join('')}</td><td>${escaped(slip)}</td><td>${marks}</td></tr>`,
		height: Math.max(high, linesOf(label, 23, 4.1) + 1.6, linesOf(slip, 29, 4.1) + 1.6)
	};
}

function worked(numbers: string, result: string, sign: string): string[] {
	const same = plain(numbers) === plain(result).replace(/ (in|mm)$/, '');
	const end = `<mo>${sign}</mo>${result}`;
	return same ? formulaLines('', end, '') : formulaLines('<mo>=</mo>', numbers, end);
}

function plain(markup: string): string {
	return markup.replace(/<[^>]*>/g, '');
}

/** Most characters of a formula in one line. */
const longestLine = 56;

/** A formula in as few lines as hold it; browsers do not break one. */
function formulaLines(before: string, formula: string, after: string): string[] {
	const isLong = (markup: string) => plain(markup).length > longestLine;
	const parts = isLong(before + formula + after)
		? isLong(before + formula)
			? [before, formula, after]
			: [before + formula, after]
		: [before + formula + after];
	return parts
		.filter((part) => part !== '')
		.map((part) => `<p${isLong(part) ? ' class="sm"' : ''}><math>${part}</math></p>`);
}

/** In mm; a formula with cases has a line for each. */
function heightOf(formula: string): number {
	const [, ...cases] = formula.split('<mtr>');
	if (cases.length > 0) return cases.reduce((sum, one) => sum + lineHeight(one, 3.4), 0.5);
	return formula.includes('<math') ? lineHeight(formula, 4.3) : linesOf(formula, 50, 4.2);
}

/** In mm: higher by a fraction, and by fractions above and below its line. */
function lineHeight(markup: string, plainHeight: number): number {
	let depth = 0;
	let inner = 0;
	for (const [tag] of markup.matchAll(/<\/?mfrac/g)) {
		if (tag === '<mfrac' && depth > 0) inner++;
		depth += tag === '<mfrac' ? 1 : -1;
	}
	return markup.includes('<mfrac') ? 6.8 + 3.6 * Math.min(2, inner) : plainHeight;
}

/** Members of a list that are worked one by one. */
const mostShown = 3;

function shortened(formulas: readonly string[][]): readonly string[][] {
	const [first = []] = formulas;
	return formulas.length > mostShown ? [first, ['<p>and so on:</p>']] : formulas;
}

/** The first slip of a step that shows in this task, and what the step comes to by it. */
function slipAt({ method, slips }: Task, key: string): string {
	const id = Object.keys(method.slips).find(
		(one) => method.slips[one]?.step === key && slips.has(one)
	);
	if (id === undefined) return '';
	const value = slips.get(id)?.[key];
	const leads = value === undefined ? '' : `${textAt(method, key, value)}: `;
	return `${leads.length > 40 ? '' : leads}${method.slips[id]?.says ?? ''}`;
}
