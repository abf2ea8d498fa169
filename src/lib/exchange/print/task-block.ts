import { toSvg } from '../../engine/figures/to-svg.ts';
import { kindAt } from '../../engine/solver/kind-at.ts';
import { escaped } from '../../engine/solver/markup.ts';
import { textAt } from '../../engine/solver/show.ts';
import { optionTexts, questionText } from '../../engine/sets/rehearsal.ts';
import type { SetTask } from '../../engine/sets/open-set.ts';
import { totalOf } from '../../engine/sets/set.ts';
import { givenRows } from '../../engine/tasks/given-rows.ts';
import type { Task } from '../../engine/tasks/task.ts';
import { type Block, linesOf } from './pages.ts';
import { figureWidth, roomFor } from './style.ts';

/** Millimetres of one unit of a drawing: lettering of 12 units is 8 point high. */
const unit = 25.4 / 108;

const pixel = 25.4 / 96;

/** One task of a worksheet: what it tells, where the answer goes, its drawing, room to work. */
export function taskBlock(own: SetTask, place: number): Block {
	const { task, marks, question } = own;
	const { drawn } = task;
	const asks = question ? questionText(question) : drawn.question;
	const rows = givenRows(task, 'in');
	const answer = question ? options(optionTexts(question, 'in')) : lines(task);
	const figure = figureIn(task);
	const told = rows.map(
		([label, value]) => `<div><dt>${escaped(label)}</dt><dd>${escaped(value)}</dd></div>`
	);
	const total = totalOf(marks);
	const room = roomFor(marks.length);
	const markup = `<section class="task"><div class="say"><h2><b>${place}</b><span>${escaped(asks)}</span></h2>
<p>${escaped(drawn.story)}</p><dl>${told.join('')}</dl>
${drawn.basis === undefined ? '' : `<p class="nt">${escaped(drawn.basis)}</p>`}
${answer.markup}<p class="tn">${task.number}</p></div>
<div class="dr"><figure>${figure.markup}</figure><div class="room r${marks.length}"><span>Working · ${total} ${total === 1 ? 'mark' : 'marks'}</span></div></div></section>`;
	const say =
		linesOf(asks, 26, 4.3) +
		linesOf(drawn.story, 31, 4.6) +
		rows.reduce((sum, [label, value]) => sum + linesOf(`${label}   ${value}`, 30, 4.8), 0) +
		(drawn.basis === undefined ? 0 : linesOf(drawn.basis, 34, 4.1)) +
		answer.height +
		9;
	return { markup, height: Math.max(say, figure.height + room + 2) + 6 };
}

/** A line for every value asked. */
function lines(task: Task): Block {
	const { method, drawn } = task;
	const rows = drawn.asked.map((key) => {
		const label = method.steps[key]?.label ?? key;
		const isLong = kindAt(method, key).isList;
		return {
			markup: `<div${isLong ? ' class="long"' : ''}>${escaped(label)}<i></i></div>`,
			height: isLong ? 6 + linesOf(label, 32, 4) : Math.max(7, linesOf(label, 17, 3.9) + 1)
		};
	});
	return {
		markup: `<div class="ans">${rows.map(({ markup }) => markup).join('')}</div>`,
		height: rows.reduce((sum, { height }) => sum + height, 2)
	};
}

/** Circles with letters to mark one of. */
function options(texts: readonly string[]): Block {
	const rows = texts.map(
		(text, i) => `<li><b>${String.fromCharCode(65 + i)}</b><span>${escaped(text)}</span></li>`
	);
	return {
		markup: `<div class="ans"><ol class="choose">${rows.join('')}</ol></div>`,
		height: texts.reduce((sum, text) => sum + Math.max(5, linesOf(text, 30, 4)), 2)
	};
}

/** The drawing of a task, as large as it stands on paper. */
function figureIn({ family, method, drawn }: Task): Block {
	const say = (key: string, value: Parameters<typeof textAt>[2]) => textAt(method, key, value);
	const svg = toSvg(family.figure(drawn.given, say));
	const [, width = '1', height = '1'] = /viewBox="\S+ \S+ (\S+) (\S+)"/.exec(svg) ?? [];
	const shown = Math.min(figureWidth, Number(width) * unit);
	return {
		markup: svg.replace(/ width="\d+"/, ` width="${(shown / pixel).toFixed(0)}"`),
		height: (shown * Number(height)) / Number(width)
	};
}
