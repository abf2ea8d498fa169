/** The words with a capital letter in front. */
export function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The words with a small letter in front, as they stand within a sentence. */
export function decapital(words: string): string {
	return words.charAt(0).toLowerCase() + words.slice(1);
}
