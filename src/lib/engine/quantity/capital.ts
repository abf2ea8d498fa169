/** The words with a capital letter in front. */
export function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The words with a small letter in front, as they stand within a sentence. */
export function decapital(words: string): string {
	return words.charAt(0).toLowerCase() + words.slice(1);
}

/** A label as it stands within a sentence: `bend angle, from flat`, but `K for the bend angle`. */
export function inSentence(label: string): string {
	return /^[A-Z][a-z]/.test(label) ? decapital(label) : label;
}
