import {
	type Drawing,
	path,
	segment,
	type Shape,
	text,
	type Tone
} from '$lib/engine/figures/drawing.ts';
import { head } from '$lib/engine/figures/parts/dimension.ts';
import { partsOf, type TimeLayout } from '$lib/engine/time-plan/lay-out.ts';
import { clock, dayLabel, duration } from './words.ts';

/** Room a letter takes, in drawing units. */
const letter = 7;
const rowHeight = 24;

/**
 * The steps one under the other as dimension lines over the time at the bench, to scale; what is
 * left over in green, what is missing in red past the end.
 *
 * @param width in drawing units, of which a screen pixel is about one
 */
export function timeFigure(
	layout: TimeLayout,
	width: number,
	numberOf: (id: string) => number
): Drawing {
	const { time, work, slack, placed } = layout;
	const scale = width / Math.max(time, work, 1);
	const open = placed.filter(({ step }) => step.left > 0);
	const foot = 44 + open.length * rowHeight;
	let at = 0;
	const rows = open.flatMap(({ step }, i) => {
		const from = at;
		at += step.left;
		const number = numberOf(step.id);
		const words = width < 480 ? String(number) : `${number}. ${step.name}, ${duration(step.left)}`;
		return stretch({ from, to: at, y: 48 + i * rowHeight, words, scale, width });
	});
	return {
		title: titleOf(layout, open.length),
		shapes: [
			...benchLines(layout, scale, foot),
			...rows,
			...endLine(slack, { scale, y: foot + 8, time, work, width })
		]
	};
}

interface Bar {
	readonly from: number;
	readonly to: number;
	readonly y: number;
	readonly words: string;
	readonly scale: number;
	readonly width: number;
}

/** A step as a dimension line; its words stand behind it, or before it where there is no room. */
function stretch({ from, to, y, words, scale, width }: Bar): Shape[] {
	const [left, right] = [from * scale, to * scale];
	const line = [
		segment(left, y - 8, left, y + 5, 'dim'),
		segment(right, y - 8, right, y + 5, 'dim'),
		segment(left, y, right, y, 'dim')
	];
	const heads = right - left > 16 ? [head(left, y, -1, 0), head(right, y, 1, 0)] : [];
	return [...line, ...heads, ...beside(left, right, y, words, width, 'ink')];
}

/** Words behind a stretch, before it where there is no room, and else on it. */
function beside(
	left: number,
	right: number,
	y: number,
	words: string,
	width: number,
	tone: Tone
): Shape[] {
	const room = words.length * letter + 8;
	if (right + room <= width + 6) {
		return [ground(right + 5, right + room - 2, y), text(right + 8, y + 4, words, { tone })];
	}
	if (left - room >= -6) {
		return [
			ground(left - room + 2, left - 5, y),
			text(left - 8, y + 4, words, { anchor: 'end', tone })
		];
	}
	return [text((left + right) / 2, y + 4, words, { anchor: 'middle', tone })];
}

/** Paper under words, so that no line of a time at the bench runs through them. */
function ground(from: number, to: number, y: number): Shape {
	return path(`M${from} ${y - 9}H${to}V${y + 8}H${from}Z`, 'none', 'paper');
}

/** The times at the bench, one after the other, with a scale of minutes or hours. */
function benchLines({ bench, time }: TimeLayout, scale: number, foot: number): Shape[] {
	let at = 0;
	const days = bench.flatMap((one, i) => {
		const left = at * scale;
		at += one.to - one.from;
		const room = at * scale - left - 6;
		const before = bench[i - 1];
		const isNewDay = !before || partsOf(before.from).day !== partsOf(one.from).day;
		return [
			segment(left, -12, left, foot, 'thin'),
			...label(one.from, one.to, left + 5, room, isNewDay)
		];
	});
	const end = time * scale;
	const step = [10, 30, 60, 120, 240, 480].find((one) => one * scale >= 9) ?? 960;
	const ticks = Array.from({ length: Math.floor(time / step) + 1 }, (_, i) => {
		const x = i * step * scale;
		return segment(x, 18, x, i % 6 === 0 ? 26 : 23, 'thin');
	});
	if (bench.length === 0) return [];
	return [...days, segment(end, -12, end, foot, 'thin'), segment(0, 18, end, 18, 'thin'), ...ticks];
}

/** The day of a time, and its hours where there is room. */
function label(from: number, to: number, x: number, room: number, isNewDay: boolean): Shape[] {
	const [begin, end] = [partsOf(from), partsOf(to - 1)];
	const hours = `${clock(begin.minute)} to ${clock(end.minute + 1)}`;
	const day = dayLabel(begin.day);
	const all = isNewDay ? [`${day}, ${hours}`, day, day.split(' ')[1] ?? ''] : [hours];
	const words = all.find((one) => one.length * letter <= room);
	return words === undefined ? [] : [text(x, 6, words, { tone: 'ink' })];
}

interface End {
	readonly scale: number;
	readonly y: number;
	readonly time: number;
	readonly work: number;
	readonly width: number;
}

function endLine(slack: number, { scale, y, time, work, width }: End): Shape[] {
	if (slack === 0 || work === 0 || time === 0) return [];
	const [from, to] = [Math.min(time, work) * scale, Math.max(time, work) * scale];
	const line = slack > 0 ? 'slack' : 'slip';
	const words = slack > 0 ? `slack ${duration(slack)}` : `${duration(-slack)} short`;
	return [
		segment(from, y - 8, from, y + 8, line),
		segment(to, y - 8, to, y + 8, line),
		segment(from, y, to, y, line),
		...beside(from, to, y, words, width, slack > 0 ? 'accept' : 'rework')
	];
}

function titleOf({ bench, slack }: TimeLayout, steps: number): string {
	const end = slack >= 0 ? `${duration(slack)} are left over` : `${duration(-slack)} are missing`;
	return `${steps} steps over ${bench.length} working times to scale; ${end}.`;
}
