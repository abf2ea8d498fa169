/** Path text with its numbers rounded to a hundredth: pathData`M${x} ${y}Q…`. */
export function pathData(words: TemplateStringsArray, ...numbers: readonly number[]): string {
	return words.reduce((text, word, i) => text + round(numbers[i - 1] ?? 0) + word);
}

function round(value: number): string {
	return String(Math.round(value * 100) / 100 || 0);
}
