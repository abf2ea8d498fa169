import type { Aside, Found } from '../engine/sets/choose-hand-ins.ts';
import type { HandInReading } from '../engine/sets/sealed.ts';
import { hasHandInText, largestFile, readHandInFile, readHandInTexts } from './hand-in-file.ts';
import { textIn } from './text-in.ts';
import { readZip } from './zip.ts';

/** A file to look at: its content is read only where its size lets it be a hand-in. */
export interface Source {
	readonly name: string;
	readonly size: number;
	readonly read: () => Promise<Uint8Array>;
}

export interface Gathered {
	readonly found: readonly Found[];
	readonly aside: readonly Aside[];
}

/** Largest package of hand-ins that is looked at, in bytes. */
const largestZip = 20_000_000;

/** Most hand-ins at once. */
export const mostHandIns = 2000;

/** Every hand-in in files, packages and pasted texts, and what is none; never rejects. */
export async function gather(
	sources: readonly Source[],
	progress?: (done: number, of: number) => void
): Promise<Gathered> {
	const found: Found[] = [];
	const aside: Aside[] = [];
	for (const [i, source] of sources.entries()) {
		for (const [file, reading, inside] of await readingsIn(source)) {
			if (!reading.ok) aside.push(unread(file, reading.sentence, inside));
			else if (found.length < mostHandIns) found.push({ file, handIn: reading.handIn });
			else aside.push({ file, why: `More than ${mostHandIns} at once; collect it by itself.` });
		}
		progress?.(i + 1, sources.length);
	}
	return { found, aside };
}

const cannotOpen =
	'The file cannot be opened; close it where it is open and try again, or choose it once more.';

/** A file or a part of one, how it was read, and the text in it. */
type Row = readonly [file: string, reading: HandInReading, inside?: string];

/** Characters of an unread file that are shown. */
const longestInside = 1000;

function unread(file: string, why: string, inside = ''): Aside {
	const begins = inside.slice(0, longestInside);
	// Bytes that are no text show nothing to anybody.
	if (why === cannotOpen) return { file, why, again: true };
	return begins === '' || /[\0\ufffd]/.test(begins) ? { file, why } : { file, why, inside: begins };
}

async function readingsIn({ name, size, read }: Source): Promise<Row[]> {
	if (size > largestZip) return [[name, refused(tooLarge(size))]];
	let bytes: Uint8Array;
	try {
		bytes = await read();
	} catch {
		return [[name, refused(cannotOpen)]];
	}
	if (!isZip(bytes)) return readFile(name, bytes);
	const zip = readZip(bytes);
	if (!zip.ok) return [[name, refused(zip.sentence)]];
	const rows: Row[] = [];
	for (const [inner, content] of zip.files) {
		if (!isHidden(inner)) rows.push(...(await readFile(`${name}/${inner}`, content)));
	}
	return rows;
}

/** Folders, and what systems pack along unseen, such as `__MACOSX/._B05.json`. */
function isHidden(name: string): boolean {
	return name.endsWith('/') || /(^|\/)(__MACOSX\/|\.[^/]*$)/.test(name);
}

async function readFile(name: string, bytes: Uint8Array): Promise<Row[]> {
	if (bytes.length > largestFile) return [[name, refused(tooLarge(bytes.length))]];
	if (isZip(bytes))
		return [[name, refused('A package in a package; unpack it and give it again.')]];
	const text = textIn(bytes);
	if (!hasHandInText(text)) return [[name, readHandInFile(text), text]];
	const readings = await readHandInTexts(text);
	const many = readings.length > 1;
	return readings.map((reading, i) => [many ? `${name} (${i + 1})` : name, reading, text]);
}

function isZip(bytes: Uint8Array): boolean {
	return [0x50, 0x4b, 0x03, 0x04].every((byte, i) => bytes[i] === byte);
}

function tooLarge(size: number): string {
	return `Too large for a hand-in: ${(size / 1e6).toFixed(1)} MB. It was not read.`;
}

function refused(sentence: string): HandInReading {
	return { ok: false, sentence };
}
