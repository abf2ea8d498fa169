import { escaped } from '../../engine/solver/markup.ts';

type Attributes = Readonly<Record<string, string | number | boolean>>;

/** An element as XML; what is in it is XML already. */
export function el(
	name: string,
	attributes: Attributes = {},
	...inside: readonly string[]
): string {
	const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${words(value)}"`);
	const start = `${name}${written.join('')}`;
	return inside.length === 0 ? `<${start}/>` : `<${start}>${inside.join('')}</${name}>`;
}

/** Words as they may stand in XML: what no XML may hold is left out. */
export function words(value: string | number | boolean): string {
	return escaped(
		String(value).replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
	);
}

export function xmlDocument(root: string): string {
	return `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`;
}
