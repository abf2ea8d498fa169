import type { Drawing } from '$lib/engine/figures/drawing.ts';
import type { Room } from '$lib/engine/figures/fit.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import type { Task } from '$lib/engine/tasks/task.ts';
import { drawAhead } from '../drawn-ahead.ts';

/** The drawing of a task, and which of its givens are lettered on it. */
export interface Figure {
	readonly draw: () => Drawing;
	/** Keys of givens of one value. */
	readonly lettered: ReadonlySet<string>;
}

/** The figure that was asked for last of a task. */
const figures = new WeakMap<Task, { units: LengthUnit; figure: Figure }>();
/** Where the last drawing of a task stood. */
let place: Room | undefined;

/** The drawing of a task with its values in the units that are shown. */
export function figureOf(task: Task, units: LengthUnit): Figure {
	const known = figures.get(task);
	if (known?.units === units) return known.figure;
	const figure = newFigure(task, units);
	figures.set(task, { units, figure });
	return figure;
}

/** Notes where the drawing of a task stands: that of the next will most often stand there too. */
export function stands(room: Room): void {
	place = room;
}

/** Makes the figure of a task for the place where it will stand. */
export function figureAhead(task: Task, units: LengthUnit): void {
	const { draw } = figureOf(task, units);
	if (place) drawAhead(draw, place);
}

function newFigure(task: Task, units: LengthUnit): Figure {
	const { drawing, said } = drawnWith(task, units);
	const words = drawing.shapes.flatMap((one) => (one.kind === 'text' ? one.text : [])).join('\n');
	const lettered = [...said].flatMap(([key, text]) =>
		!Array.isArray(task.drawn.given[key]) && words.includes(text) ? key : []
	);
	return { draw: () => drawnWith(task, units).drawing, lettered: new Set(lettered) };
}

/** The drawing, and what was lettered for each key: of a list, its last member. */
export function drawnWith({ family, method, drawn }: Task, units: LengthUnit) {
	const said = new Map<string, string>();
	const drawing = family.figure(drawn.given, (key, value) => {
		const text = textAt(method, key, value, units);
		said.set(key, text);
		return text;
	});
	return { drawing, said };
}
