import { reopened } from '$lib/engine/sets/kept-question.ts';
import type { Question } from '$lib/engine/sets/rehearsal.ts';
import { type Paper, readPaper } from './rehearsal-paper.ts';

/** A paper with its questions drawn again. */
export interface OpenPaper {
	readonly paper: Paper;
	readonly questions: readonly Question[];
}

/**
 * Opens a paper as it is kept: null when there is none, `'outdated'` when its questions can no
 * longer be asked as they were.
 */
export async function openPaper(text: string | null): Promise<OpenPaper | 'outdated' | null> {
	const paper = readPaper(text);
	if (paper === null || paper === 'outdated') return paper;
	const drawn = await Promise.all(paper.questions.map(reopened));
	const questions = drawn.filter((question) => question !== null);
	return questions.length === drawn.length ? { paper, questions } : 'outdated';
}
