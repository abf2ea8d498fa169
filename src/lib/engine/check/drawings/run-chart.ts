import { type Drawing, path, polyline, segment, text } from '../../figures/drawing.ts';
import type { Checkup, Summary } from '../check.ts';
import { boundText, sizeText, spotsOf, verdictMark } from './spots.ts';

const height = 120;

/** The values in the order they were measured, with the limits and the mean. */
export function runChart(checkup: Checkup, summary: Summary, width: number): Drawing {
	const spots = spotsOf(checkup, summary.what);
	const [first] = spots;
	const near = (bound: number | undefined) =>
		bound !== undefined && Math.abs(bound - summary.mean) < 1.5 * Math.max(summary.spread, 0.01);
	const bounds = [first?.least, first?.most].filter((told) => told && near(told.bound));
	const levels = [summary.least, summary.most, ...bounds.map((told) => told?.bound ?? 0)];
	const [low, high] = [Math.min(...levels), Math.max(...levels)];
	const room = (high - low) * 0.12 || 0.005;
	const [left, right] = [44, width - 40];
	const y = (value: number) => ((high + room - value) / (high - low + 2 * room)) * height;
	const x = (i: number) => left + 14 + (i * (right - left - 28)) / Math.max(1, spots.length - 1);
	// Numbers as near as they have room for.
	const every = [1, 2, 5, 10, 20, 50].find((one) => one * (x(1) - x(0)) >= 20) ?? 100;
	const marks = [low, high].filter(
		(value, i, all) => i === 0 || Math.abs(y(value) - y(all[0] ?? 0)) > 16
	);
	return {
		title: `${summary.what} in the order measured, from ${sizeText(summary.least, checkup.units)} to ${sizeText(summary.most, checkup.units)}.`,
		shapes: [
			segment(left, 0, left, height, 'thin'),
			segment(left, height, right, height, 'thin'),
			...marks.map((value) =>
				text(left - 6, y(value) + 4, sizeText(value, checkup.units), {
					anchor: 'end',
					tone: 'soft'
				})
			),
			segment(left, y(summary.mean), right, y(summary.mean), 'centre'),
			...(bounds.some((told) => Math.abs(y(told?.bound ?? 0) - y(summary.mean)) < 14)
				? []
				: [text(right + 4, y(summary.mean) + 4, 'mean')]),
			...bounds.flatMap((told) =>
				told
					? [
							segment(left, y(told.bound), right, y(told.bound), 'slip'),
							text(right + 4, y(told.bound) + 4, boundText(checkup, told), { tone: 'rework' })
						]
					: []
			),
			path(polyline(spots.map(({ value }, i) => [x(i), y(value)] as const)), 'dim'),
			...spots.flatMap((spot, i) => [
				...verdictMark(x(i), y(spot.value), spot.verdict, spots.length > 40 ? 2.5 : 4.5),
				...(i % every === 0
					? [text(x(i), height + 16, spot.name, { anchor: 'middle', tone: 'soft' })]
					: [])
			])
		]
	};
}
