/** Words as they may stand in markup, in an element or in a quoted attribute. */
export function escaped(words: string): string {
	return words
		.replace(/&/g, '&amp;')
		.replace(/</g, '&lt;')
		.replace(/>/g, '&gt;')
		.replace(/"/g, '&quot;');
}
