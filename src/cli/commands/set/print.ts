import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import {
	howToPrint,
	printKey,
	printWorksheets,
	sampleOnly
} from '../../../lib/exchange/print/sheets.ts';
import { hasOwnSheets } from '../../../lib/engine/sets/set.ts';
import { readRoster, type Student } from '../../../lib/exchange/roster.ts';
import { readText, write } from '../../files.ts';
import type { Options } from '../../options.ts';
import type { Answer, Progress } from '../../run.ts';
import { echoed, UsageError } from '../../usage-error.ts';
import { setIn } from './link.ts';

export async function printSet(
	args: readonly string[],
	options: Options,
	progress: Progress
): Promise<Answer> {
	const { open } = await setIn(args);
	const out = options.value('--out');
	if (out === undefined) throw new UsageError('Give --out as well: the folder for the sheets.');
	const students = await studentsIn(options);
	await makeFolder(out);
	const files: string[] = [];
	const worksheets = printWorksheets(open, students, (done, of) => progress('Sheets', done, of));
	await write(join(out, 'worksheets.html'), worksheets.html);
	files.push(join(out, 'worksheets.html'));
	let keySheets = 0;
	if (options.has('--key')) {
		const key = printKey(open, students, (done, of) => progress('Key', done, of));
		await write(join(out, 'key.html'), key.html);
		files.push(join(out, 'key.html'));
		keySheets = key.sheets;
	}
	const { sheets } = worksheets;
	const sample = students.length === 0 && hasOwnSheets(open.set) ? [sampleOnly] : [];
	return {
		data: { hash: open.hash, files, students: students.length, sheets, keySheets, how: howToPrint },
		text: [`${sheets} sheets, ${keySheets} of key`, ...files, ...sample, howToPrint].join('\n')
	};
}

async function studentsIn(options: Options): Promise<readonly Student[]> {
	const path = options.value('--students');
	if (path === undefined) return [];
	const roster = readRoster(await readText(path));
	if (!roster.ok) throw new UsageError(roster.sentence);
	return roster.students;
}

async function makeFolder(path: string): Promise<void> {
	try {
		await mkdir(path, { recursive: true });
	} catch {
		throw new UsageError(`Nothing can be written to ${echoed(path)}; choose another place.`);
	}
}
