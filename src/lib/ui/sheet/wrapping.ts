/** Operators that a long formula is broken before. */
const breaks = new Set(['→', '=', '+', '−', '×', '÷', '·', ',', ';', '<', '>', '≥', '≤', '?', ':']);

/**
 * MathML of a formula as several pieces in a row, so that it wraps like words: browsers do not break
 * inside one `math` element. Each piece begins with its operator.
 *
 * @param markup children of a `math` element
 */
export function wrapping(markup: string): string {
	const pieces: string[] = [];
	let piece = '';
	for (const part of topLevel(markup).flatMap(inWords)) {
		const operator = /^<mo[^>]*>(.*)<\/mo>$/.exec(part)?.[1];
		const begins = operator === undefined ? part.startsWith('<mtext class') : breaks.has(operator);
		if (begins && piece !== '') {
			pieces.push(piece);
			piece = '';
		}
		piece += part;
	}
	if (piece !== '') pieces.push(piece);
	return pieces.map((one) => `<math>${spaced(one)}</math>`).join(' ');
}

/** A leading operator stands between two pieces, and keeps its room after it. */
function spaced(piece: string): string {
	return piece.replace(/^<mo>(?=[=+−×÷·<>≥≤])/, '<mo form="infix" lspace="0">');
}

/** Words longer than this are broken between them. */
const longText = 12;

/** A long text word by word. */
function inWords(part: string): string[] {
	const words = /^<mtext>(.*)<\/mtext>$/.exec(part)?.[1] ?? '';
	if (words.length <= longText) return [part];
	return words.split(' ').map((word) => `<mtext class="word">${word}</mtext>`);
}

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
