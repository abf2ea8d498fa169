import { capital } from '$lib/engine/quantity/capital.ts';

const words = [
	...['no', 'one', 'two', 'three', 'four', 'five', 'six'],
	...['seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']
];

/** A whole number as it stands in a sentence: in words up to twelve. */
export function inWords(count: number): string {
	return words[count] ?? String(count);
}

/** The same at the start of a sentence. */
export function firstInWords(count: number): string {
	return capital(inWords(count));
}

/** How many tasks were right at the first answer, at the start of a sentence. */
export function rightAtFirst(count: number): string {
	return `${count === 0 ? 'None' : firstInWords(count)} right at first`;
}
