import type { Family, Say } from '../families/family.ts';
import type { Box, Drawing, Shape } from '../figures/drawing.ts';
import { boundsOf } from '../figures/to-svg.ts';
import { isList, type LengthUnit, type Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';
import { textAt } from '../solver/show.ts';
import { symbolOf } from '../solver/show-step.ts';
import { symbolAt, valueUnder } from './hand.ts';
import { endsOf, move, type Way } from './lesson.ts';
import { setbackDrawing } from './setback-drawing.ts';

/** Drawings that tell in a lesson what a task has no room for, by id of the family. */
const ofLessons: Readonly<Record<string, Family['figure']>> = { setback: setbackDrawing };

/**
 * The drawing of a lesson, its symbols in place of numbers; a chart keeps its numbers.
 *
 * @param like the givens that set the scale, so that what is moved is seen to grow
 */
export function drawingOf(
	way: Way,
	given: Values,
	like: Values,
	units: LengthUnit = 'in'
): Drawing {
	const { family, method } = way;
	const plain = (key: string, value: Value) => textAt(method, key, value, units);
	const numbers = family.figure(given, plain, like);
	if (numbers.isChart) return numbers;
	const draw = ofLessons[family.id] ?? family.figure;
	const drawing = draw(given, saySymbols(way, given, plain), like);
	return {
		title: once(drawing.title),
		shapes: drawing.shapes.map((shape) => lettered(way, shape))
	};
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

/** Wider or higher than this, a drawing of a lesson would not be read on a phone. */
const most = { width: 450, height: 330 };

/**
 * The numbers that set the scale of a lesson: those it begins with, or the greatest, where the
 * drawing would outgrow the page.
 */
export function scaleOf(way: Way): Values {
	const { given } = way.start;
	const { left, right, top, bottom } = frameOf(way, given, given);
	if (right - left <= most.width && bottom - top <= most.height) return given;
	return way.hands.reduce((now, hand) => {
		if (hand.by === 'words') return now;
		return move(way, now, hand, endsOf(way, now, hand).at(-1) ?? valueUnder(now, hand));
	}, given);
}

/** The box that holds the drawing of a lesson however far one of its givens is moved. */
export function frameOf(way: Way, given: Values, like: Values, units: LengthUnit = 'in'): Box {
	const far = way.hands.flatMap((hand) =>
		endsOf(way, given, hand).map((value) => move(way, given, hand, value))
	);
	return [given, ...far]
		.map((one) => boundsOf(drawingOf(way, one, like, units).shapes))
		.reduce(around);
}

/** The smallest box that holds both. */
export function around(one: Box, other: Box): Box {
	return {
		left: Math.min(one.left, other.left),
		top: Math.min(one.top, other.top),
		right: Math.max(one.right, other.right),
		bottom: Math.max(one.bottom, other.bottom)
	};
}
