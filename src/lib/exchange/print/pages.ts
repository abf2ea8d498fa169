import { page } from './style.ts';

/** Something that is not split over pages, and how high it is at the most, in mm. */
export interface Block {
	readonly markup: string;
	readonly height: number;
}

interface Paging {
	/** Most blocks on a page. */
	readonly most: number;
	/** Height of what stands above the blocks on the first page only, in mm. */
	readonly above: number;
	/** Height of what stands above and below on every page, in mm. */
	readonly frame: number;
}

/** The blocks page by page, as many as fit. */
export function paged(blocks: readonly Block[], { most, above, frame }: Paging): Block[][] {
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
