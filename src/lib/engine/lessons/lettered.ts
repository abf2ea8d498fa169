import type { Say } from '../families/family.ts';
import type { Drawing, Shape } from '../figures/drawing.ts';
import { isList, type LengthUnit, type Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { textAt } from '../solver/show.ts';
import { symbolOf } from '../solver/show-step.ts';
import { symbolAt } from './hand.ts';
import type { Way } from './lesson.ts';

/**
 * The drawing of a lesson, its symbols in place of numbers; a chart keeps its numbers.
 *
 * @param like the givens that set the scale, so that what is moved is seen to grow
 */
export function drawingOf(way: Way, given: Values, like: Values, units: LengthUnit = 'in'): Drawing {
	const { family, method } = way;
	const plain = (key: string, value: Value) => textAt(method, key, value, units);
	const numbers = family.figure(given, plain, like);
	if (numbers.isChart) return numbers;
	const drawing = family.figure(given, saySymbols(way, given, plain), like);
	return { title: once(drawing.title), shapes: drawing.shapes.map((shape) => lettered(way, shape)) };
}

/** Says the symbol of a given; of a list, those of its members in turn. */
function saySymbols({ method }: Way, given: Values, plain: Say): Say {
	const turns = new Map<string, number>();
	return (key, value) => {
		if (!Object.hasOwn(method.given, key)) return plain(key, value);
		const list = given[key];
		if (!isList(list) || isList(value)) return symbolOf(method, key);
		const turn = turns.get(key) ?? 0;
		turns.set(key, turn + 1);
		return symbolAt(method, key, list.length === 1 ? null : turn % list.length);
	};
}

function lettered({ method }: Way, shape: Shape): Shape {
	if (shape.kind !== 'text') return shape;
	const named = Object.entries(method.steps).find(
		([, { label }]) => label.toLowerCase() === shape.text
	);
	return { ...shape, text: named ? symbolOf(method, named[0]) : once(shape.text) };
}

/** A figure letters `T 0.040 in`: with the symbol for the number, it stands there once. */
function once(words: string): string {
	return words.replace(/(^|[\s(≤])(\S.*?) \2(?=$|[\s,.;)])/g, '$1$2');
}
