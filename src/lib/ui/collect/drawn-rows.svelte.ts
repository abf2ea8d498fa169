import { ByFrame } from '../by-frame.svelte.ts';
import { rowWindow } from './row-window.ts';

/** Cells that are drawn in a frame. */
const cellsAFrame = 50;

/** The rows of a long table that are drawn: those in sight, a few a frame. Made while a component is. */
export class DrawnRows {
	/** How far the table is scrolled, in pixels. */
	scrolled = $state(0);
	/** Height of what is in sight, in pixels. */
	seen = $state(0);
	rowHeight = $state(28);
	readonly #count: () => number;
	readonly #wanted = $derived.by(() =>
		rowWindow(this.#count(), this.scrolled, this.seen, this.rowHeight)
	);
	readonly #come: ByFrame;
	readonly shown = $derived.by(() => ({
		...this.#wanted,
		to: this.#wanted.from + this.#come.drawn
	}));

	constructor(count: () => number, columns: () => number) {
		this.#count = count;
		this.#come = new ByFrame(
			() => this.#wanted.to - this.#wanted.from,
			() => Math.floor(cellsAFrame / Math.max(1, columns()))
		);
	}

	has(row: number): boolean {
		return row >= this.shown.from && row < this.shown.to;
	}
}
