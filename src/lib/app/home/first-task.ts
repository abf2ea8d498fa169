import { cards } from '$lib/engine/families/topics.ts';
import { tasks } from '$lib/engine/families/rivets/rivet-length.ts';
import type { AskedRivet } from '$lib/engine/figures/parts/rivet-asked.ts';
import type { LengthUnit, Value } from '$lib/engine/quantity/value.ts';
import { textAt } from '$lib/engine/solver/show.ts';
import { drawTask, type Task } from '$lib/engine/tasks/task.ts';

/*
 * The task of the first page: a rivet through two sheets. It is drawn as any other, and always from
 * the same seed, so that the page is there before a script has come.
 */

/** An access plate on its frame, 0.040 and 0.025 in: a little over 1/4 in is needed. */
const seed = 43;

export function firstTask(): Task {
	const card = cards.find(({ id }) => id === 'rivet-length');
	if (!card) throw new Error('no family rivet-length');
	return drawTask({ ...card, ...tasks }, 1, seed);
}

/** What the drawing shows of it. */
export function askedBy(
	{ method, drawn, right }: Task,
	units: LengthUnit,
	short = false
): AskedRivet {
	const layers = numbersIn(drawn.given.layers);
	const labels = drawn.labels?.layers ?? [];
	const say = (key: string, value: Value) => textAt(method, key, value, units).replace(/ in\b/, '');
	// A narrow drawing has no room for the unit of a layer; the title block has it.
	const sayLayer = (value: Value) =>
		short ? say('layers', value).replace(/ mm\b/, '') : say('layers', value);
	return {
		layers,
		names: layers.map((one, i) => {
			const name = (labels[i] ?? '').toLowerCase();
			return `${short ? (name.split(' ').at(-1) ?? '') : name} ${sayLayer(one)}`;
		}),
		D: Number(drawn.given.D),
		size: say('D', drawn.given.D ?? 0),
		needed: Number(right.needed)
	};
}

function numbersIn(value: Value | undefined): number[] {
	return Array.isArray(value) ? value.map(Number) : [];
}

/** A rivet in the bin: its length in sixteenths, and as it is written. */
export interface InBin {
	readonly sixteenths: number;
	readonly written: string;
}

/** Six lengths to choose from: two too short by the next size, three too long. */
export function binOf({ right }: Task): InBin[] {
	const good = Math.round(Number(right.length) * 16);
	return [-2, -1, 0, 1, 2, 3].map((more) => {
		const sixteenths = good + more;
		return { sixteenths, written: inLowestTerms(sixteenths, 16) };
	});
}

function inLowestTerms(over: number, under: number): string {
	return over % 2 === 0 && under > 1 ? inLowestTerms(over / 2, under / 2) : `${over}/${under}`;
}
