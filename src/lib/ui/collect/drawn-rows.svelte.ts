import { rowWindow } from './row-window.ts';

/** Cells that are drawn in a frame. */
const cellsAFrame = 150;

/**
 * The rows of a long table that are drawn: those in sight, and of the first sight a few a frame, so
 * that nothing stands still. Made while a component is.
 */
export class DrawnRows {
	/** How far the table is scrolled, in pixels. */
	scrolled = $state(0);
	/** Height of what is in sight, in pixels. */
	seen = $state(0);
	rowHeight = $state(28);
	readonly #aFrame: () => number;
	#come = $state(1);
	readonly #count: () => number;
	readonly #wanted = $derived.by(() =>
		rowWindow(this.#count(), this.scrolled, this.seen, this.rowHeight)
	);
	readonly shown = $derived({
		...this.#wanted,
		to: Math.min(this.#wanted.to, this.#wanted.from + this.#come)
	});

	constructor(count: () => number, columns: () => number) {
		this.#count = count;
		this.#aFrame = () => Math.max(1, Math.floor(cellsAFrame / Math.max(1, columns())));
		$effect(() => {
			if (this.shown.to >= this.#wanted.to) return;
			const frame = requestAnimationFrame(() => (this.#come += this.#aFrame()));
			return () => cancelAnimationFrame(frame);
		});
	}

	has(row: number): boolean {
		return row >= this.shown.from && row < this.shown.to;
	}
}
