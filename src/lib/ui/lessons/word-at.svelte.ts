import type { Word } from '$lib/engine/trade/words/index.ts';

/** The word that was pressed, and where it stands. One is open at a time, on whatever page. */
class WordAt {
	word = $state.raw<Word | null>(null);
	#pressed: HTMLElement | null = null;

	open(word: Word, pressed: HTMLElement): void {
		this.#pressed = pressed;
		this.word = word;
	}

	/** Where the word stands on the screen. */
	get place(): DOMRect | null {
		return this.#pressed?.getBoundingClientRect() ?? null;
	}

	close(): void {
		this.word = null;
		this.#pressed?.focus({ preventScroll: true });
	}
}

export const wordAt = new WordAt();
