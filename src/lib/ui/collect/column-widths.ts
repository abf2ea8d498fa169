import { type Layout, sizeOf } from './segment-paths.ts';

/** What the columns take besides the segments, in pixels: code, a task's digit, sum, time. */
const room = {
	across: { code: 88, digit: 28, sum: 52, time: 46 },
	dense: { code: 64, digit: 16, sum: 44, time: 40 },
	stacked: { code: 44, digit: 4, sum: 34, time: 0 }
} as const;

/** A task of so many steps can bring a mark of two digits, which take so much more. */
const twoDigits = { from: 10, more: 9 };

/**
 * Widths of the columns of a class, in pixels: code, a task each with its digit and its segments,
 * sum, time. They are settled, so that rows that come later move nothing.
 */
export function widthsFor(steps: readonly number[], layout: Layout): number[] {
	const { code, digit, sum, time } = room[layout];
	const digits = (count: number) =>
		digit + (layout !== 'stacked' && count >= twoDigits.from ? twoDigits.more : 0);
	const tasks = steps.map((count) => digits(count) + sizeOf(count, layout).width);
	return [code, ...tasks, sum, ...(time > 0 ? [time] : [])];
}
