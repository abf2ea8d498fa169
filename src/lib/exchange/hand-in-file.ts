import type { HandIn } from '../engine/sets/hand-in.ts';
import { type HandInReading, newerHandIn, readSealed, seal } from '../engine/sets/sealed.ts';
import { checked, unchecked } from './checked.ts';
import { packed, unpacked } from './fragment.ts';

/*
 * A hand-in as a file, and as a short text to paste into a message. Messages break lines and add
 * words around it, so the text stands in brackets.
 */

const version = 2;
const opening = '[Bucktail hand-in';

/** Largest file of a hand-in that is looked at, in bytes. */
export const largestFile = 256 * 1024;

/** The text of a hand-in file. */
export function writeHandInFile(handIn: HandIn): string {
	return `${JSON.stringify(seal(handIn), null, '\t')}\n`;
}

/** A name for the file: `hand-in-B05-2.json`. */
export function handInName({ code, version: times }: HandIn): string {
	return `hand-in-${code.replace(/[^\p{L}\p{N}._-]/gu, '-')}-${times}.json`;
}

/** Reads the text of a hand-in file; never throws. */
export function readHandInFile(text: string): HandInReading {
	try {
		return readSealed(JSON.parse(text));
	} catch {
		const isOne = text.includes('"bucktail"');
		return refused(isOne ? cut : 'That is no hand-in of Bucktail.');
	}
}

const cut = 'The hand-in is cut short or damaged; ask for it to be sent again.';

function refused(sentence: string): HandInReading {
	return { ok: false, sentence };
}

/** The hand-in as a text to paste; null where it is too long for one, and only a file will do. */
export async function writeHandInText(handIn: HandIn): Promise<string | null> {
	const body = await packed(version, seal(handIn));
	const fits = (await unpacked(version, body)).ok;
	return fits ? `${opening} ${handIn.code}: ${checked(body)}]` : null;
}

/** Whether there is a hand-in to be pasted somewhere in a text. */
export function hasHandInText(text: string): boolean {
	return text.includes(opening);
}

/** Reads every hand-in in a pasted text, whatever stands around them; never throws. */
export async function readHandInTexts(text: string): Promise<HandInReading[]> {
	const parts = text.split(opening).slice(1);
	const readings: HandInReading[] = [];
	for (const part of parts) readings.push(await readPart(part));
	return readings;
}

async function readPart(part: string): Promise<HandInReading> {
	const [, body] = /^[^\]:]*:([^\]]*)\]/.exec(part) ?? [];
	if (body === undefined) return refused(cut);
	// Lines may have been broken anywhere, with marks of quotation before them.
	const reading = await unpacked(version, unchecked(body.replace(/[\s>]/g, '')));
	if (reading.ok) return readSealed(reading.value);
	return refused(reading.reason === 'newer' ? newerHandIn : cut);
}
