import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { loadFamilies } from '../../../src/lib/engine/families/catalogue.ts';
import { bench } from '../../../src/lib/engine/lessons/bench.ts';
import { drawnWords } from '../../../src/lib/engine/figures/words/index.ts';
import { wordDrawing } from '../../../src/lib/engine/figures/words/index.ts';
import { waysOf } from '../../../src/lib/engine/lessons/lesson.ts';
import { cite } from '../../../src/lib/engine/trade/documents.ts';
import { rules } from '../../../src/lib/engine/trade/rules.ts';
import { findWords, markWords, wordOf, words } from '../../../src/lib/engine/trade/words/index.ts';
import { isDrawn } from '../families/drawing-faults.ts';

/** Everyday English of the texts: what needs no explaining. One a line, in lower case. */
const plain = new Set(
	readFileSync(new URL('../../data/plain-words.txt', import.meta.url), 'utf8').split('\n')
);

/** Labels, questions, what is told, sentences of slips, limits and rules, and the lessons. */
async function texts(): Promise<string[]> {
	const ways = (await loadFamilies()).flatMap(waysOf);
	const ofMethods = ways.flatMap(({ method }) => [
		method.title,
		...Object.values(method.given).map(({ label }) => label),
		...Object.values(method.steps).map(({ label }) => label),
		...Object.values(method.slips).map(({ says }) => says),
		...method.limits.map(({ says }) => says)
	]);
	const ofTasks = ways.flatMap(({ draws }) =>
		draws
			.slice(0, 40)
			.flatMap(({ question, basis = '', told = [], labels = {} }) => [
				question,
				basis,
				...told.map(([label]) => label),
				...Object.values(labels).flat()
			])
	);
	const ofRules = Object.values(rules).map(({ says }) => says);
	return [...new Set([...ofMethods, ...ofTasks, ...ofRules, ...Object.values(bench)])];
}

/** The text without its words of the trade, single or many. */
function unexplained(text: string): string[] {
	const left = markWords(text, new Set(), true)
		.map(({ text: piece, word }) => (word ? ' ' : piece))
		.join('');
	const found = left.toLowerCase().match(/[a-zü]{3,}(?:’[a-z]+)?/g) ?? [];
	return found.filter((one) => !plain.has(one) && !wordOf(one));
}

test('every word of a statement, label or sentence is plain English or explained', async () => {
	const missing = new Map<string, string>();
	for (const text of await texts()) {
		for (const word of unexplained(text)) {
			if (!missing.has(word)) missing.set(word, text);
		}
	}
	expect(
		[...missing].map(
			([word, text]) =>
				`${word}: explain it in trade/words, add it to tests/data/plain-words.txt, or use another in “${text}”`
		)
	).toEqual([]);
});

test('every word has one name, a short sentence and a source', () => {
	expect(new Set(words.map(({ name }) => name)).size).toBe(words.length);
	for (const { name, says, source } of words) {
		expect(says, name).toMatch(/^[A-Z0-9].*[.]$/);
		expect(says.length, name).toBeLessThan(140);
		expect(cite(source), name).not.toBe('');
	}
});

test('every drawing belongs to a word and is drawn', () => {
	for (const name of drawnWords) {
		expect(
			words.some((word) => word.name === name),
			name
		).toBe(true);
		const draw = wordDrawing(name);
		expect(draw && isDrawn(draw(), { least: 90, most: 330 }), name).toBe(true);
	}
});

test('marks a word once, the longest it can, and never inside another', () => {
	const marked = (text: string) => markWords(text).filter(({ word }) => word);
	expect(marked('The mold line dimensions and mold lines.').map(({ text }) => text)).toEqual([
		'mold line dimensions',
		'mold lines'
	]);
	expect(marked('Bend angle, from flat').map(({ text }) => text)).toEqual(['Bend angle']);
	expect(marked('Kerf, kerf and kerfs')).toHaveLength(1);
	expect(marked('flattened')).toEqual([]);
	expect(markWords('No word here').map(({ text }) => text)).toEqual(['No word here']);
});

test('finds words by any part of them', () => {
	expect(findWords('tangent').map(({ name }) => name)).toContain('setback');
	expect(findWords('BUCKTAIL').map(({ name }) => name)).toEqual(['shop head']);
	expect(findWords('no such word')).toEqual([]);
});
