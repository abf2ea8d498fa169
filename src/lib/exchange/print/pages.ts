import { page } from './style.ts';

/** Something that is not split over pages, and how high it is at the most, in mm. */
export interface Block {
	readonly markup: string;
	readonly height: number;
}

/** What stands above and below on every page, in mm, and a little to spare. */
const frame = 40;

/**
 * The blocks page by page, as many as fit and at most `most` on one.
 *
 * @param above height of what stands above the blocks on the first page only, in mm
 */
export function paged(blocks: readonly Block[], most: number, above: number): Block[][] {
	const pages: Block[][] = [];
	let room = 0;
	for (const block of blocks) {
		const last = pages.at(-1);
		if (last && last.length < most && block.height <= room) {
			last.push(block);
			room -= block.height;
		} else {
			pages.push([block]);
			room = page.height - frame - (pages.length === 1 ? above : 0) - block.height;
		}
	}
	return pages;
}

/** Height of some words in a column, in mm: so many lines of so many characters. */
export function linesOf(words: string, perLine: number, lineHeight: number): number {
	return Math.max(1, Math.ceil(words.length / perLine)) * lineHeight;
}
