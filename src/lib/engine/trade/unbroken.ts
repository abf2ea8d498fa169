/** A text in which no line ends between `p.`, `Fig.` or `Table` and its number, or a number and its unit. */
export function unbroken(text: string): string {
	return text
		.replace(/\b((?:pp?|pars?|ch|Figs?|Table)\.?) (?=\d)/g, '$1\u00a0')
		.replace(/(\d) (?=(?:in|mm|lb)\b)/g, '$1\u00a0');
}
