import type { Drawing, Shape } from './drawing.ts';

/**
 * The drawing with the dimensions marked whose lettering begins or ends with one of these words;
 * itself where there is none. The lines of a dimension stand before its lettering.
 */
export function marked(drawing: Drawing, words: readonly string[]): Drawing {
	const wanted = words.map((word) => word.toLowerCase()).filter(Boolean);
	const shapes: Shape[] = [];
	let isAny = false;
	for (const shape of drawing.shapes) {
		if (shape.kind === 'path' || !isNamed(shape.text.toLowerCase(), wanted)) {
			shapes.push(shape);
			continue;
		}
		isAny = true;
		for (let i = shapes.length - 1; i >= 0; i--) {
			const line = shapes[i];
			if (line?.kind !== 'path' || line.line !== 'dim') break;
			shapes[i] = { ...line, line: 'marked' };
		}
		shapes.push({ ...shape, tone: 'marked' });
	}
	return isAny ? { ...drawing, shapes } : drawing;
}

/** Whether lettering is one of the words, with a symbol before or a value behind at most. */
function isNamed(text: string, words: readonly string[]): boolean {
	return words.some(
		(word) => text === word || text.startsWith(`${word} `) || text.endsWith(` ${word}`)
	);
}
