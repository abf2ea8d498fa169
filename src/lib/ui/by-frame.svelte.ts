/**
 * How many of many parts are drawn: more with every frame, so that nothing stands still. What is
 * no longer wanted comes again little by little. Made while a component is.
 */
export class ByFrame {
	#come = $state(1);
	readonly #wanted: () => number;
	readonly drawn = $derived.by(() => Math.min(this.#come, this.#wanted()));

	/** @param aFrame how many a frame may draw; one at least */
	constructor(wanted: () => number, aFrame: () => number) {
		this.#wanted = wanted;
		$effect(() => {
			const most = Math.max(1, wanted());
			if (this.#come > most) this.#come = most;
			if (this.#come >= most) return;
			const frame = requestAnimationFrame(() => (this.#come += Math.max(1, aFrame())));
			return () => cancelAnimationFrame(frame);
		});
	}
}
