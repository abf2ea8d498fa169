/** A straight map from one range of numbers to another. */
export function scale(
	[from, to]: readonly [number, number],
	[start, end]: readonly [number, number]
): (value: number) => number {
	const factor = to === from ? 0 : (end - start) / (to - from);
	return (value) => start + (value - from) * factor;
}

/** SVG path through points. */
export function polyline(points: readonly (readonly [x: number, y: number])[]): string {
	return points
		.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`)
		.join('');
}

const STEPS = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];

/** A round number, 5 or more, that no count up to `most` goes over. */
export function roundTop(most: number): number {
	if (most <= 5) return 5;
	const power = 10 ** Math.floor(Math.log10(most));
	return (STEPS.find((step) => step * power >= most) ?? 10) * power;
}

/** Days drawn one by one; a longer time is drawn week by week. */
const MOST_DAYS = 60;

/** Days close enough together for a drawing, counted back from the last one. */
export function thinned<T extends { readonly day: number }>(days: readonly T[]): T[] {
	const last = days.at(-1)?.day ?? 0;
	const step = days.length > MOST_DAYS ? 7 : 1;
	return days.filter(({ day }) => (last - day) % step === 0);
}
