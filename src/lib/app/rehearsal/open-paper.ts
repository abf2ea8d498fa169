import { loadFamilies } from '$lib/engine/families/catalogue.ts';
import { kept, reopened } from '$lib/engine/sets/kept-question.ts';
import type { Question } from '$lib/engine/sets/rehearsal.ts';
import { type FirstPaper, type Paper, readPaper } from './rehearsal-paper.ts';

/** A paper with its questions drawn again. */
export interface OpenPaper {
	readonly paper: Paper;
	readonly questions: readonly Question[];
}

/**
 * Opens a paper as it is kept, by this edition or the first: null when there is none,
 * `'outdated'` when its questions can no longer be asked as they were.
 */
export async function openPaper(text: string | null): Promise<OpenPaper | 'outdated' | null> {
	const paper = readPaper(text);
	if (!paper) return null;
	if (!('questions' in paper)) return (await ofFirstEdition(paper)) ?? 'outdated';
	const drawn = await Promise.all(paper.questions.map(reopened));
	const questions = drawn.filter((question) => question !== null);
	return questions.length === drawn.length ? { paper, questions } : 'outdated';
}

async function ofFirstEdition({ check, ...paper }: FirstPaper): Promise<OpenPaper | null> {
	// Hardly anybody has one: it is fetched when it is needed.
	const { firstEditionOf } = await import('$lib/engine/sets/first-edition.ts');
	const questions = firstEditionOf({ ...paper, check }, await loadFamilies());
	return questions && { paper: { ...paper, questions: questions.map(kept) }, questions };
}
