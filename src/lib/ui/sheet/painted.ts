/** Longest wait for a frame, in milliseconds: a page out of sight paints none. */
const longest = 100;

/**
 * Resolves once what has changed is on the screen, or at once when the page is left: for work that
 * need not come before the frame.
 */
export function painted(): Promise<void> {
	const { requestAnimationFrame, document } = globalThis;
	if (!requestAnimationFrame || document.hidden) return Promise.resolve();
	return new Promise((resolve) => {
		const done = () => {
			removeEventListener('pagehide', done);
			resolve();
		};
		addEventListener('pagehide', done);
		requestAnimationFrame(() => setTimeout(done));
		setTimeout(done, longest);
	});
}
