/** Lets the browser take what somebody has done meanwhile, and paint, in the midst of long work. */
export function breath(): Promise<void> {
	return new Promise((resolve) => setTimeout(resolve));
}
