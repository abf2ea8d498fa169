import { sizeOf } from './segment-paths.ts';

/**
 * Widths of the columns of a class, in pixels: code, a task each with its digit and a segment a
 * step, sum, time. They are settled, so that rows that come later move nothing.
 */
export function widthsFor(steps: readonly number[]): number[] {
	return [88, ...steps.map((count) => 28 + sizeOf(count, 'across').width), 52, 46];
}
