import type { StepState } from '$lib/engine/sets/step-marks.ts';

type State = StepState['state'];

/** Beside the digit in one row, in two where tasks are many, or stacked alone on a narrow page. */
export type Layout = 'across' | 'dense' | 'stacked';

/** Size of a segment in pixels, and how many stand in a row, with a gap of a pixel around them. */
interface Grid {
	readonly width: number;
	readonly height: number;
	readonly columns: number;
}

/** More steps than this stand closer. */
const many = 8;

function gridFor(count: number, layout: Layout): Grid {
	if (layout === 'across') {
		if (count <= many) return { width: 6, height: 9, columns: Math.max(1, count) };
		return { width: 6, height: 7, columns: Math.ceil(count / 2) };
	}
	if (layout === 'dense') {
		return { width: 4, height: 7, columns: count <= 2 ? count : Math.ceil(count / 2) };
	}
	return count <= many ? { width: 15, height: 6, columns: 1 } : { width: 4, height: 6, columns: 3 };
}

/** The lines of all steps of a state, as one path: a table of a class has thousands of them. */
export interface Segments {
	readonly state: State;
	readonly path: string;
}

/** Width and height of so many segments. */
export function sizeOf(count: number, layout: Layout) {
	const { width, height, columns } = gridFor(count, layout);
	const rows = Math.max(1, Math.ceil(count / columns));
	return { width: columns * (width + 1) - 1, height: rows * (height + 1) - 1 };
}

/** Filled is right, barred follows, struck is lost, dotted was left blank. */
export function segmentPaths(states: readonly State[], layout: Layout): Segments[] {
	const grid = gridFor(states.length, layout);
	const paths = new Map<State, string>();
	for (const [i, state] of states.entries()) {
		const x = (i % grid.columns) * (grid.width + 1);
		const y = Math.floor(i / grid.columns) * (grid.height + 1);
		paths.set(state, (paths.get(state) ?? '') + pathOf(state, x, y, grid));
	}
	return [...paths].map(([state, path]) => ({ state, path }));
}

function pathOf(state: State, x: number, y: number, { width, height }: Grid): string {
	const box = `M${x + 0.5} ${y + 0.5}h${width - 1}v${height - 1}h${1 - width}z`;
	if (state === 'lost') return `${box}M${x + 0.5} ${y + height - 0.5}l${width - 1} ${1 - height}`;
	if (state !== 'follows') return box;
	const bars = Math.floor((width - 1) / 2.5);
	const step = (width - 1) / (bars + 1);
	const lines = Array.from({ length: bars }, (_, i) => {
		return `M${(x + 0.5 + (i + 1) * step).toFixed(1)} ${y + 0.5}v${height - 1}`;
	});
	return box + lines.join('');
}
