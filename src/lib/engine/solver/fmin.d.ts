declare module 'fmin/src/bisect.js' {
	/** A zero of `f` between `a` and `b`, at which it must have unlike signs; throws a text if not. */
	export function bisect(
		f: (x: number) => number,
		a: number,
		b: number,
		options?: { maxIterations?: number; tolerance?: number }
	): number;
}
