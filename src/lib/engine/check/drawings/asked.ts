import { circle, type Drawing, path, rectangle, type Shape, text } from '../../figures/drawing.ts';
import { dimensionAcross, dimensionDown } from '../../figures/parts/dimension.ts';
import { plate } from '../../figures/parts/plate.ts';
import type { Told } from '../check.ts';
import { section } from './bend-radii.ts';
import { smallHole, toneOf, verdictMark } from './spots.ts';

/** A feature that was measured before the one that is asked for. */
export interface Before {
	readonly name: string;
	/** As it was entered. */
	readonly entry: string;
	/** Null where it cannot be told yet. */
	readonly verdict: Told['verdict'] | null;
}

export interface Asked {
	/** Id of the method that is checked. */
	readonly method: string;
	/** What is measured, by key. */
	readonly key: string;
	/** What one feature is called: `hole`. */
	readonly each: string;
	readonly name: string;
	/** The last few before it. */
	readonly before: readonly Before[];
}

/** A place on the window: where its feature stands, and whether it is the one asked for. */
interface Slot {
	readonly x: number;
	readonly asked: boolean;
	/** Number and entry over it, or none: the one asked for has its question. */
	readonly before: Before | null;
}

const width = 252;
/** Where the sheet ends below, and how high the window is. */
const [foot, high] = [0, 96];

/**
 * A window on the part: the feature that is asked for with the dimension that is wanted, behind the
 * last two. Not to scale: nobody has measured it yet.
 */
export function askedDrawing({ method, key, each, name, before }: Asked): Drawing {
	const last = before.slice(-2);
	const many = last.length + 1;
	const x = (i: number) => width * ((i + 0.5) / many);
	const slots: Slot[] = [
		...last.map((one, i) => ({ x: x(i), asked: false, before: one })),
		{ x: x(last.length), asked: true, before: null }
	];
	const draw = windows[method] ?? barWindow;
	return {
		title: `${each} ${name} is asked for${last.length > 0 ? `, after ${last.map((one) => one.name).join(' and ')}` : ''}.`,
		shapes: [...draw(slots, key), ...slots.flatMap((slot) => labels(slot, name))]
	};
}

function labels({ x, asked, before }: Slot, name: string): Shape[] {
	const top = foot - high;
	if (asked) return [text(x, top - 26, name, { anchor: 'middle' })];
	if (!before) return [];
	const tone = toneOf(before.verdict ?? 'holds');
	return [
		text(x, top - 26, before.name, { anchor: 'middle', tone: 'soft' }),
		text(x, top - 10, before.entry.slice(0, 12), { anchor: 'middle', tone }),
		...(before.verdict ? verdictMark(x + 16, top - 30, before.verdict) : [])
	];
}

type Window = (slots: readonly Slot[], key: string) => Shape[];

const sheet = () =>
	plate({ left: 0, top: foot - high, right: width, bottom: foot }, 'metal-a', ['left', 'right']);
const ring = (x: number, y: number, radius: number) => circle(x, y, radius + 7, 'none', 'dim');

const windows: Readonly<Record<string, Window>> = {
	'edge-distance': (slots) => [
		...sheet(),
		...slots.flatMap(({ x, asked }) => [
			...smallHole(x, foot - 38, 9),
			...(asked
				? [ring(x, foot - 38, 9), ...dimensionDown(foot - 38, foot, x + 26, x + 12, '?')]
				: [])
		])
	],
	'rivet-row': (slots) => [
		...plate({ left: 0, top: foot - high + 20, right: width, bottom: foot - 20 }, 'metal-a', [
			'right'
		]),
		...slots.flatMap(({ x, asked }) => [
			...smallHole(x, foot - 58, 8),
			...(asked ? [ring(x, foot - 58, 8), ...dimensionAcross(0, x, foot, foot - 20, '?')] : [])
		])
	],
	'shop-head-check': (slots, key) => [
		rectangle(0, foot - 30, width, 30, 'metal-a'),
		...slots.flatMap(({ x, asked }) => {
			const [left, right, top] = [x - 24, x + 24, foot - 62];
			const head = rectangle(left, top, 48, 32, 'rivet', asked ? 'dim' : 'edge');
			if (!asked) return [head];
			return key === 'height'
				? [head, ...dimensionDown(top, foot - 30, right + 20, right, '?')]
				: [head, ...dimensionAcross(left, right, top - 14, top, '?')];
		})
	],
	'drill-for-rivet': (slots) => [...sheet(), ...slots.flatMap((slot) => round(slot, 'paper'))],
	'rivet-diameter': (slots) => slots.flatMap((slot) => round(slot, 'rivet')),
	'rivet-diameter-from-stack': (slots) => slots.flatMap((slot) => round(slot, 'rivet')),
	'least-bend-radius': (slots) =>
		slots.flatMap(({ x, asked }) => {
			const [arm, R, T] = [64, 26, 8];
			const corner = x - arm / 2;
			return [
				path(section(corner, foot - 12, R, T, arm), asked ? 'dim' : 'edge', 'metal-a'),
				...(asked ? [text(corner + 44, foot - 44, 'R ?')] : [])
			];
		})
};

function round({ x, asked }: Slot, fill: 'paper' | 'rivet'): Shape[] {
	const [y, radius] = [foot - 48, 22];
	const across = dimensionAcross(x - radius, x + radius, foot + 6, y + radius, '?');
	return [circle(x, y, radius, fill, asked ? 'dim' : 'edge'), ...(asked ? across : [])];
}

/** Lengths: a piece for each, the one asked for with its dimension. */
function barWindow(slots: readonly Slot[]): Shape[] {
	return slots.flatMap(({ x, asked }) => {
		const half = Math.min(60, width / slots.length / 2 - 10);
		const [left, right, top] = [x - half, x + half, foot - 60];
		return [
			rectangle(left, top, 2 * half, 22, 'metal-a', asked ? 'dim' : 'edge'),
			...(asked ? dimensionAcross(left, right, top + 44, top + 22, '?') : [])
		];
	});
}
