import { optionTexts, type Question } from './rehearsal.ts';

/** The chosen option: its letter, or its letter and text; null where it is none of them. */
export function optionChosen(question: Question, entry: string): number | null {
	const [, letter = '', text] = /^\s*([A-Za-z])\s*(?::\s*(.*\S))?\s*$/.exec(entry) ?? [];
	const written = letter === '' ? entry.trim() : text;
	const place =
		written === undefined
			? letter.toUpperCase().charCodeAt(0) - firstLetter
			: Math.max(...(['in', 'mm'] as const).map((u) => optionTexts(question, u).indexOf(written)));
	return question.options[place] ? place : null;
}

const firstLetter = 'A'.charCodeAt(0);

/** An option as it is handed in: `B: 3/8 in`. */
export function optionEntry(question: Question, place: number): string {
	return `${String.fromCharCode(firstLetter + place)}: ${optionTexts(question, 'in')[place] ?? ''}`;
}
