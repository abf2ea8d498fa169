/** Operators that a long formula is broken before. */
const breaks = new Set([
	'→',
	'=',
	'≈',
	'+',
	'−',
	'×',
	'÷',
	'·',
	'/',
	'&lt;',
	'&gt;',
	'≥',
	'≤',
	'?',
	':'
]);

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
	for (const part of topLevel(markup).flatMap(opened)) {
		const operator = /^<mo[^>]*>(.*)<\/mo>$/.exec(part)?.[1];
		const words = /^<mtext>(.*)<\/mtext>$/.exec(part)?.[1];
		if (part.startsWith(casesBegin)) {
			end();
			pieces.push(cases(part));
		} else if (operator === ',' || operator === ';') {
			// It stands by what is before it, with room for the next.
			piece += `${part}<mspace width="0.3em"/>`;
			end();
		} else if (operator !== undefined && breaks.has(operator.replaceAll('\u00a0', ''))) {
			end();
			piece = `<mo form="infix">${operator}</mo>`;
		} else if (words !== undefined && words.length > longest) {
			end();
			pieces.push(`<span>${loose(words)}</span>`);
		} else {
			piece += part;
			if (/.{4}\u00a0$/.test(words ?? '') || part.startsWith('<mspace width="0.5em"')) end();
		}
	}
	end();
	return pieces.join('\u200b');
}

/** Words that may break at their spaces, but not in a short bracket: `(≈ 3/32 in)`. */
function loose(words: string): string {
	return words
		.replaceAll('\u00a0', ' ')
		.replace(/\([^()]{1,16}\)/g, (bracket) => bracket.replaceAll(' ', '\u00a0'));
}

/** What is in brackets piece by piece; short ones stay as high as the fraction in them. */
function opened(part: string): string[] {
	if (part.startsWith('<mfrac>') && textOf(part).length > longestFraction) return onOneLine(part);
	const inside = /^<mrow><mo>\(<\/mo>(.*)<mo>\)<\/mo><\/mrow>$/.exec(part)?.[1];
	if (inside === undefined) return [part];
	const isHigh = /<m(frac|sqrt|sup)>/.test(inside);
	if (isHigh && textOf(inside).length <= longest) return [part];
	return inBrackets(topLevel(inside).flatMap(opened));
}

/** A fraction too long for its line, with a stroke between its two parts. */
function onOneLine(fraction: string): string[] {
	const [above = [], below = []] = topLevel(within(fraction)).map((part) =>
		part.startsWith('<mrow>') && !part.startsWith(casesBegin) ? topLevel(within(part)) : [part]
	);
	const group = (parts: readonly string[]) => {
		const pieces = parts.flatMap(opened);
		return pieces.length > 1 ? inBrackets(pieces) : pieces;
	};
	return [...group(above), '<mo>/</mo>', ...group(below)];
}

function inBrackets(pieces: readonly string[]): string[] {
	const bracket = (form: string, sign: string) =>
		`<mo form="${form}" stretchy="false">${sign}</mo>`;
	return [bracket('prefix', '('), ...pieces, bracket('postfix', ')')];
}

/** What stands inside of an element. */
function within(element: string): string {
	return element.slice(element.indexOf('>') + 1, element.lastIndexOf('<'));
}

function textOf(markup: string): string {
	return markup.replace(/<[^>]*>/g, '');
}

const casesBegin = '<mrow><mo>{</mo><mtable>';

/** Cases under each other, each a line that wraps by itself. */
function cases(markup: string): string {
	const lines = [...markup.matchAll(/<mtr><mtd>(.*?)<\/mtd><mtd>(.*?)<\/mtd><\/mtr>/g)].map(
		([, value = '', when = '']) => {
			const shown = value === '' ? '' : `${wrapping(value)} `;
			return `<span>${shown}${wrapping(when)}</span>`;
		}
	);
	return `<span class="cases">${lines.join('')}</span>`;
}

/** Words of more letters are set as text. */
const longest = 12;

/** Letters above and below the line of a fraction that a phone has the width for. */
const longestFraction = 28;

/** The elements at the top, each with all that is inside of it. */
function topLevel(markup: string): string[] {
	const parts: string[] = [];
	let depth = 0;
	let start = 0;
	for (const { 0: tag, index } of markup.matchAll(/<\/?[a-z]+[^>]*>/g)) {
		if (!tag.endsWith('/>')) depth += tag.startsWith('</') ? -1 : 1;
		if (depth > 0) continue;
		parts.push(markup.slice(start, index + tag.length));
		start = index + tag.length;
	}
	return parts;
}
