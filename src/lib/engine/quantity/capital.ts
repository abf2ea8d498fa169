/** The words with a capital letter in front. */
export function capital(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
