/** Two parts of markup, each an element or a row with no fraction or power in it. */
const one = '(<m[a-z]+[^>]*>[^<]*</m[a-z]+>|<mrow>(?:(?!<mfrac>|<msup>|<mrow>|</mrow>).)*</mrow>)';
const pairs = [
	[new RegExp(`<msup>${one}${one}</msup>`, 's'), '^'],
	[new RegExp(`<mfrac>${one}${one}</mfrac>`, 's'), '/']
] as const;

/** Displayed mathematics in one line of text, in the words of the printed key. */
export function formulaText(markup: string): string {
	let text = markup;
	for (let before = ''; before !== text;) {
		before = text;
		for (const [pair, sign] of pairs) {
			text = text.replace(pair, (_, over: string, under: string) => {
				const isShort = [over, under].every((part) => /^\w{1,2}$/.test(bare(part)));
				const between = sign === '/' && !isShort ? ' / ' : sign;
				return `<mtext>${bracketed(over)}${between}${bracketed(under)}</mtext>`;
			});
		}
	}
	return spaced(text);
}

function bracketed(part: string): string {
	return /<mo>|\d\/\d/.test(part) ? `(${spaced(part)})` : spaced(part);
}

function bare(part: string): string {
	return part.replace(/<[^>]*>/g, '');
}

/** Markup without fractions and powers as text. */
function spaced(markup: string): string {
	const text = markup
		.replace(/<mo>{<\/mo>/g, '')
		.replace(/<\/mtr><mtr><mtd><\/mtd><mtd>/g, ' ')
		.replace(/<\/mtr><mtr>/g, '; ')
		.replace(/<mspace[^>]*>|<\/mtd><mtd>|<\/mtext>(?=<mtext>)/g, ' ')
		.replace(/<mo>([^<]*)<\/mo>/g, (_, sign: string) => (/^[(),]$/.test(sign) ? sign : ` ${sign} `))
		.replace(/<[^>]*>/g, '')
		.replace(/&lt;/g, '<')
		.replace(/&gt;/g, '>')
		.replace(/&amp;/g, '&');
	return text
		.replace(/,(?=\S)/g, ', ')
		.replace(/\s+/g, ' ')
		.trim();
}
