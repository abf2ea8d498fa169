import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { textIn } from '../lib/exchange/text-in.ts';
import { echoed, UsageError } from './usage-error.ts';

/** Largest file that is read as a whole, in bytes. */
const largest = 5_000_000;

/**
 * The text of a file that a person named.
 *
 * @throws UsageError
 */
export async function readText(path: string): Promise<string> {
	const info = await infoOf(path);
	if (info.isDirectory()) throw new UsageError(`Name a file; ${echoed(path)} is a folder.`);
	if (info.size > largest) throw new UsageError(`Name another file; ${echoed(path)} is too large.`);
	return textIn(await readFile(path));
}

/**
 * The same, as JSON.
 *
 * @throws UsageError
 */
export async function readJson(path: string): Promise<unknown> {
	const text = await readText(path);
	try {
		return JSON.parse(text);
	} catch {
		throw new UsageError(
			`There is no JSON in ${echoed(path)}; check its brackets and quotation marks.`
		);
	}
}

/** @throws UsageError */
export async function write(path: string, content: string | Uint8Array): Promise<void> {
	try {
		await writeFile(path, content);
	} catch {
		throw new UsageError(`Nothing can be written to ${echoed(path)}; choose another place.`);
	}
}

/** A file: its path, and its size in bytes. */
export interface FileInfo {
	readonly path: string;
	readonly size: number;
}

/**
 * The files named, and all files in the folders named, in the order of their names; hidden ones
 * are left out.
 *
 * @throws UsageError
 */
export async function filesIn(paths: readonly string[]): Promise<FileInfo[]> {
	const found: FileInfo[] = [];
	for (const path of paths) {
		const info = await infoOf(path);
		if (!info.isDirectory()) {
			found.push({ path, size: info.size });
			continue;
		}
		const names = (await readdir(path)).filter((name) => !name.startsWith('.')).sort();
		found.push(...(await filesIn(names.map((name) => join(path, name)))));
	}
	return found;
}

async function infoOf(path: string) {
	try {
		return await stat(path);
	} catch {
		throw new UsageError(`There is no file ${echoed(path)}.`);
	}
}
