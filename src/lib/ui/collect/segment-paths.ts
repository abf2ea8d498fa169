import type { StepState } from '$lib/engine/sets/step-marks.ts';

type State = StepState['state'];

/** Size of a segment and of the gap behind it, in pixels: beside the digit, or stacked alone. */
export const across = { width: 6, height: 9, dx: 7, dy: 0 } as const;
export const stacked = { width: 15, height: 6, dx: 0, dy: 7 } as const;

type Layout = typeof across | typeof stacked;

/** The lines of all steps of a state, as one path: a table of a class has thousands of them. */
export interface Segments {
	readonly state: State;
	readonly path: string;
}

/** Width and height of so many segments. */
export function sizeOf(count: number, { width, height, dx, dy }: Layout) {
	const gaps = Math.max(0, count - 1);
	return { width: width + gaps * dx, height: height + gaps * dy };
}

/** Filled is right, barred follows, struck is lost, dotted was left blank. */
export function segmentPaths(states: readonly State[], layout: Layout): Segments[] {
	const paths = new Map<State, string>();
	for (const [i, state] of states.entries()) {
		const at = pathOf(state, i * layout.dx, i * layout.dy, layout);
		paths.set(state, (paths.get(state) ?? '') + at);
	}
	return [...paths].map(([state, path]) => ({ state, path }));
}

function pathOf(state: State, x: number, y: number, { width, height }: Layout): string {
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
