import { weekday } from '$lib/engine/schedule/calendar.ts';
import type { ForecastDay } from '$lib/engine/schedule/forecast.ts';

/** A bar of the chart: one day, or one week where days would be too many to tell apart. */
export interface Bar {
	readonly from: number;
	/** Last day of it. */
	readonly to: number;
	readonly tasks: number;
	readonly minutes: number;
	/** Study days in it: none on a day off. */
	readonly days: number;
	/** Whether it is part of the last look over everything. */
	readonly sweep: boolean;
}

export interface Bars {
	readonly each: 'day' | 'week';
	readonly bars: readonly Bar[];
}

/** More days than this are shown week by week. */
const mostDays = 56;

/** Bars from `today` up to, not including, `until`; weeks begin on Mondays. */
export function barsOf(days: readonly ForecastDay[], today: number, until: number): Bars {
	const each = until - today > mostDays ? 'week' : 'day';
	const bars: Bar[] = [];
	for (let from = today; from < until;) {
		const end = each === 'day' ? from : from + 6 - ((weekday(from) + 6) % 7);
		const to = Math.min(end, until - 1);
		bars.push(barOf(days, from, to));
		from = to + 1;
	}
	return { each, bars };
}

function barOf(all: readonly ForecastDay[], from: number, to: number): Bar {
	const days = all.filter(({ day }) => day >= from && day <= to);
	return {
		from,
		to,
		tasks: days.reduce((sum, { tasks }) => sum + tasks, 0),
		minutes: days.reduce((sum, { minutes }) => sum + minutes, 0),
		days: days.length,
		sweep: days.some(({ phase }) => phase === 'sweep')
	};
}

/** Mean minutes of the last look over everything, and of the other days. Days of rest do not count. */
export function usualMinutes(days: readonly ForecastDay[]): { sweep: number; other: number } {
	const mean = (some: readonly ForecastDay[]) =>
		some.reduce((sum, { minutes }) => sum + minutes, 0) / Math.max(1, some.length);
	const worked = days.filter(({ tasks }) => tasks > 0);
	return {
		sweep: mean(worked.filter(({ phase }) => phase === 'sweep')),
		other: mean(worked.filter(({ phase }) => phase !== 'sweep'))
	};
}

/** The last study day two days or more before the exam; null when that is not ahead. */
export function rehearsalDay(
	days: readonly ForecastDay[],
	today: number,
	exam: number | null
): number | null {
	if (exam === null) return null;
	return days.findLast(({ day }) => day <= exam - 2 && day > today)?.day ?? null;
}

/** A text under the chart, `width` wide around `x`. */
export interface AxisLabel {
	readonly x: number;
	readonly text: string;
}

/**
 * Labels in two rows: what does not fit into the first stands in the second, over it, the nearest day
 * first, as far as it fits there.
 */
export function inTwoRows(
	labels: readonly AxisLabel[],
	width: number
): { first: AxisLabel[]; second: AxisLabel[] } {
	const rows: [AxisLabel[], AxisLabel[]] = [[], []];
	const put = (label: AxisLabel, row: AxisLabel[]) => {
		const fits = fitting([...row, label], width).length === row.length + 1;
		if (fits) row.push(label);
		return fits;
	};
	const rest = labels.filter((label) => !put(label, rows[0]));
	for (const label of rest.toSorted((a, b) => a.x - b.x)) put(label, rows[1]);
	return { first: fitting(rows[0], width), second: fitting(rows[1], width) };
}

/** Width of a character of the chart's text, about. */
const characterWidth = 7.4;

/** Those of the labels that fit beside the ones before them, kept inside `width`. */
export function fitting(labels: readonly AxisLabel[], width: number): AxisLabel[] {
	const placed: AxisLabel[] = [];
	for (const { x, text } of labels) {
		const half = (text.length * characterWidth) / 2;
		const inside = Math.min(Math.max(x, half), width - half);
		const free = placed.every(
			(other) =>
				Math.abs(other.x - inside) >
				half + (other.text.length * characterWidth) / 2 + characterWidth
		);
		if (free) placed.push({ x: inside, text });
	}
	return placed;
}
