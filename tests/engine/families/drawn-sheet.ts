import { readFileSync } from 'node:fs';
import type { Effect, Family, Outcome } from '../../../src/lib/engine/families/family.ts';
import type { Level } from '../../../src/lib/engine/families/level.ts';
import type { Drawing } from '../../../src/lib/engine/figures/drawing.ts';
import { toSvg } from '../../../src/lib/engine/figures/to-svg.ts';
import { escaped } from '../../../src/lib/engine/solver/markup.ts';
import { textAt } from '../../../src/lib/engine/solver/show.ts';
import { differs } from '../../../src/lib/engine/solver/tolerance.ts';
import { effectOf } from '../../../src/lib/engine/tasks/effect.ts';
import { drawTask, type Task } from '../../../src/lib/engine/tasks/task.ts';

/*
 * One SVG of what a family draws at a level: the figure of a task, and below it, for each step
 * that is asked, the metal by a wrong answer beside the metal by the right one. It is looked at by
 * eye, and stored.
 */

const gap = 24;
const lineHeight = 20;

interface Placed {
	readonly svg: string;
	readonly width: number;
	readonly height: number;
}

export function drawnSheet(family: Family, level: Level): string {
	const task = drawTask(family, level, level);
	const { method, drawn } = task;
	const figure = family.figure(drawn.given, (key, value) => textAt(method, key, value, 'in'));
	const rows = [
		titled(task.number, figure),
		...drawn.asked.flatMap((key) => {
			const shown = firstWrong(task, key);
			return shown ? [sideBySide(`${key} by ${shown.slip}`, shown.effect)] : [];
		})
	];
	const { svg, width, height } = stacked(rows);
	const [w, h] = [width + 2 * gap, height + 2 * gap];
	const ground = `<rect width="${w}" height="${h}" fill="${colours.get('sheet')}"/>`;
	const body = `${ground}\n${place({ svg, width, height }, gap, gap)}`;
	return `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}">\n<style>${stylesFor(body)}</style>\n${body}\n</svg>\n`;
}

/**
 * What the first slip leads to that changes this step and can be drawn: at level 2 the second such
 * slip and at level 3 the third, where there are as many.
 */
function firstWrong(task: Task, key: string): { slip: string; effect: Effect } | null {
	const shown = [...task.slips].flatMap(([slip, values]) => {
		const entered = values[key];
		if (entered === undefined || !differs(task.method, key, task.right, values)) return [];
		const effect = effectOf(task, key, entered);
		return effect ? [{ slip, effect }] : [];
	});
	return shown[(task.id.level - 1) % Math.max(1, shown.length)] ?? null;
}

function sideBySide(heading: string, { entered, right }: Effect): Placed {
	const [wrong, good] = [titled(heading, entered.drawing), titled('right', right.drawing)];
	const width = wrong.width + gap + good.width;
	const height = Math.max(wrong.height, good.height);
	const svg = `${place(wrong, 0, 0)}\n${place(good, wrong.width + gap, 0)}`;
	return stacked([{ svg, width, height }, said(entered), said(right)], 0);
}

/** A drawing under its title, in drawing units. */
function titled(title: string, drawing: Drawing): Placed {
	const svg = toSvg(drawing).replaceAll('/><', '/>\n<').replaceAll('</text><', '</text>\n<');
	const [, width = 0, height = 0] = /viewBox="\S+ \S+ (\d+) (\d+)"/.exec(svg)?.map(Number) ?? [];
	const sized = svg.replace(/ width="\d+"/, ` width="${width}" height="${height}"`);
	return stacked([line(title), { svg: sized, width, height }], 0);
}

function said({ says }: Outcome): Placed {
	return line(says);
}

function line(words: string): Placed {
	const svg = `<text class="t-ink" y="14">${escaped(words)}</text>`;
	return { svg, width: words.length * 7.3, height: lineHeight };
}

function stacked(rows: readonly Placed[], between = gap): Placed {
	const tops = rows.map((_, i) =>
		rows.slice(0, i).reduce((sum, { height }) => sum + height + between, 0)
	);
	return {
		svg: rows.map((row, i) => place(row, 0, tops[i] ?? 0)).join('\n'),
		width: Math.ceil(Math.max(...rows.map(({ width }) => width))),
		height: rows.reduce((sum, { height }) => sum + height, 0) + between * (rows.length - 1)
	};
}

function place({ svg }: Placed, x: number, y: number): string {
	return x === 0 && y === 0 ? svg : `<g transform="translate(${x} ${y})">\n${svg}\n</g>`;
}

const theme = readFileSync(new URL('../../../src/lib/ui/theme.css', import.meta.url), 'utf8');

/** Colours of the light theme, which stand first in the style sheet. */
const colours = new Map(
	[...(theme.split('@media')[0] ?? '').matchAll(/--([\w-]+): (#\w+);/g)].map(
		([, name = '', colour = '']) => [name, colour] as const
	)
);

/** The page's styles for the classes that these figures use, with their colours put in. */
function stylesFor(markup: string): string {
	const rules = [...theme.matchAll(/^\.figure ((?:\.[\w-]+,\n\.figure )*\.[\w-]+) \{([^}]*)\}/gm)];
	const used = rules.flatMap(([, names = '', body = '']) => {
		const classes = names.replaceAll('.figure ', '').split(/,\s*/);
		const there = classes.filter((name) => new RegExp(`[" ]${name.slice(1)}[" ]`).test(markup));
		const put = body.replace(/var\(--([\w-]+)\)/g, (_, name: string) => colours.get(name) ?? name);
		return there.length > 0 ? [`${there.join()}{${put.trim().replace(/\s*\n\s*/g, ' ')}}`] : [];
	});
	return `text{font:12px sans-serif} path{fill:none}\n${used.join('\n')}`;
}
