/** Operators that a long formula is broken before. */
const breaks = new Set(['→', '=', '+', '−', '×', '÷', '·', ',', ';', '<', '>', '≥', '≤', '?', ':']);

/**
 * A formula as pieces of MathML in a row, and words as plain text, so that it wraps like a sentence:
 * browsers do not break inside one `math` element. Each piece begins with its operator.
 *
 * @param markup children of a `math` element
 */
export function wrapping(markup: string): string {
	const pieces: string[] = [];
	let piece = '';
	const end = () => {
		if (piece !== '') pieces.push(`<math>${piece}</math>`);
		piece = '';
	};
	for (const part of topLevel(markup)) {
		const operator = /^<mo[^>]*>(.*)<\/mo>$/.exec(part)?.[1];
		const words = /^<mtext>(.*)<\/mtext>$/.exec(part)?.[1];
		if (operator !== undefined && breaks.has(operator)) {
			end();
			piece = `<mo form="infix">${operator}</mo>`;
		} else if (words !== undefined && words.length > longest) {
			end();
			pieces.push(`<span>${words.replaceAll('\u00a0', ' ')}</span>`);
		} else piece += part;
	}
	end();
	return pieces.join('\u200b');
}

/** Words of more letters are set as text. */
const longest = 12;

/** The elements at the top, each with all that is inside of it. */
function topLevel(markup: string): string[] {
	const parts: string[] = [];
	let depth = 0;
	let start = 0;
	for (const { 0: tag, index } of markup.matchAll(/<\/?[a-z]+[^>]*>/g)) {
		if (tag.endsWith('/>')) continue;
		depth += tag.startsWith('</') ? -1 : 1;
		if (depth > 0) continue;
		parts.push(markup.slice(start, index + tag.length));
		start = index + tag.length;
	}
	return parts;
}
