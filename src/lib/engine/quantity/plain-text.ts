/** Cc without tab and line breaks; and the marks that turn the direction of writing. */
const hidden = /[^\P{Cc}\t\n\r]|[\u202a-\u202e\u2066-\u2069]/u;

/** Whether the text holds characters that cannot be seen and could change how it reads. */
export function hasHidden(text: string): boolean {
	return hidden.test(text);
}

/** What people and their keyboards write for one plain character, in this order. */
const writings: readonly [RegExp, string][] = [
	[/[\u00ad\u200b-\u200f\u2060\ufeff]/g, ''],
	[/\s*[\r\n\u2028\u2029]\s*/g, '\n'],
	[/[^\S\n]+/g, ' '],
	[/[‐-―−﹘﹣➖]/g, '-'],
	[/["“”„‟″ʺ˝]|['‘’‛′´`ʹʼ]{2}/g, '"'],
	[/[‘’‛′´`ʹʼ]/g, "'"],
	[/[⁄∕⧸÷]/g, '/'],
	[/[×✕✖⋅∙•∗]/g, '*'],
	[/[º˚]/g, '°'],
	[/π/g, 'pi'],
	// Parts of an inch by their names.
	[/ eighths?\b/g, ' 8ths'],
	[/ sixteenths?\b/g, ' 16ths'],
	[/ thirty[- ]?seconds?\b/g, ' 32nds'],
	[/ sixty[- ]?fourths?\b/g, ' 64ths'],
	// A raised dot between plain digits may be a decimal point: it stays for the reader to ask.
	[/ ·|· |·(?=\()/g, '*'],
	[/(\.\d+)·/g, '$1*'],
	[/([\d)]) ?x ?(?=[\d.(])/g, '$1*']
];

/**
 * The text in lower case and plain characters: one kind of minus, quote, slash and space, `⅜` as
 * 3/8, full-width digits as digits. Line breaks stay, as one character.
 */
export function plainText(text: string): string {
	const spelt = text
		// Full-width forms, №, squared units and ⅟ are taken apart before anything reads them.
		.replace(/[№⅟\u3000\u3371-\u33df\uff01-\uff5e]/g, (char) => char.normalize('NFKC'))
		.replace(
			/(\d?)([¼-¾⅐-⅞↉]|[⁰¹²³⁴-⁹]+[⁄/][₀-₉]+)/g,
			(_, digit: string, part: string) => `${digit && `${digit} `}${part.normalize('NFKC')} `
		)
		.toLowerCase();
	const plain = writings.reduce((out, [from, to]) => out.replace(from, to), spelt).trim();
	// A telephone adds a stop behind the last word: it is no second decimal point.
	return plain.replace(/(\.\d+|#\d+|^-\d+)\.$/, '$1');
}
