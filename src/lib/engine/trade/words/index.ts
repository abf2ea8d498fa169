import { bends } from './bends.ts';
import { cutting } from './cutting.ts';
import { layout } from './layout.ts';
import { rivets } from './rivets.ts';
import { structure } from './structure.ts';
import type { Word } from './word.ts';

export type { Word } from './word.ts';

/** Every word of the trade that is explained, by name. */
export const words: readonly Word[] = [
	...bends,
	...rivets,
	...layout,
	...cutting,
	...structure
].sort((a, b) => (lower(a) < lower(b) ? -1 : 1));

/** Names are plain letters: the browser's rules of sorting, which take it long to load, are not needed. */
function lower({ name }: Word): string {
	return name.toLowerCase();
}

/** The words that a search finds: in name, other writings and sentence. */
export function findWords(search: string): readonly Word[] {
	const wanted = search.trim().toLowerCase().split(/\s+/);
	return words.filter(({ name, also, says }) => {
		const text = [name, ...also, says].join(' ').toLowerCase();
		return wanted.every((one) => text.includes(one));
	});
}

/** A piece of a text; one that is a word of the trade has its entry. */
export interface TextPart {
	readonly text: string;
	readonly word: Word | null;
}

/** Every way a word is written, to its entry; the longest first. */
const writings = words
	.flatMap((one) => [one.name, ...one.also].map((written) => [written, one] as const))
	.sort(([a], [b]) => b.length - a.length);

/** Words that everybody at a bench has by heart: in the list, but not marked in texts. */
const everyday = new Set([
	...['rivet', 'layer', 'row', 'space', 'thickness', 'rivet diameter', 'alloy', 'drive', 'break'],
	...[
		'square bend',
		'rework',
		'stocked',
		'tolerance',
		'leg',
		'patch',
		'final drill',
		'K',
		'skin',
		'panel',
		'frame',
		'punch'
	]
]);

/** Letters and signs that no word may be cut out of: `K` in `K chart`, but not in `KLM` or `3K`. */
const pattern = new RegExp(
	`(?<![\\w./-])(?:${writings.map(([written]) => `${escapedForPattern(written)}(?:s|es)?`).join('|')})(?![\\w/-])`,
	'gi'
);

const byWriting = new Map(writings.map(([written, one]) => [written.toLowerCase(), one]));

/** The entry of a word as it is written, in singular or plural. */
export function wordOf(written: string): Word | null {
	const plain = written.toLowerCase();
	for (const one of [plain, plain.replace(/s$/, ''), plain.replace(/es$/, '')]) {
		const found = byWriting.get(one);
		// A symbol is one only as a capital: K, not k.
		if (found && (one.length > 1 || written === written.toUpperCase())) return found;
	}
	return null;
}

/**
 * A text in parts, with each word of the trade marked where it first stands.
 *
 * @param seen names that were marked before; taken on
 * @param all whether every word is marked wherever it stands, those by heart too
 */
export function markWords(text: string, seen = new Set<string>(), all = false): TextPart[] {
	const parts: TextPart[] = [];
	let from = 0;
	for (const { 0: written, index } of text.matchAll(pattern)) {
		const word = wordOf(written);
		if (!word || (!all && isLeftOut(word, text.slice(0, index), seen))) continue;
		seen.add(word.name);
		if (index > from) parts.push({ text: text.slice(from, index), word: null });
		parts.push({ text: written, word });
		from = index + written.length;
	}
	if (from < text.length) parts.push({ text: text.slice(from), word: null });
	return parts;
}

function isLeftOut({ name }: Word, before: string, seen: ReadonlySet<string>): boolean {
	// “From flat” is how an angle is counted, and names no part of the blank.
	const isAngle = name === 'flat' && /from $/i.test(before);
	return isAngle || seen.has(name) || everyday.has(name);
}

function escapedForPattern(text: string): string {
	return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
