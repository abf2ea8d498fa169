import { longestCode, readCode } from '../engine/sets/student-code.ts';
import { longestName } from '../engine/sets/hand-in.ts';
import { readCsv } from './csv.ts';

/** Most students in a list. */
export const mostStudents = 500;

/** What a column of codes is headed with, the plainest first: a table may have several of these. */
const codeHeadings = [
	/^(student )?codes?$/,
	/^(ids?|student (ids?|numbers?|no\.?))$/,
	/^students?$/
] as const;

const nameHeadings = [/^names?$/, /^students?$/] as const;

/** A student as an instructor lists them. */
export interface Student {
	readonly code: string;
	/** Only where the list has one. */
	readonly name: string;
}

export type RosterReading =
	| { readonly ok: true; readonly students: readonly Student[] }
	| { readonly ok: false; readonly sentence: string };

/**
 * Reads student codes from a table, or one a line. A first row with “code”, “ID”, “number” or
 * “student” names the columns; without it, the first column holds the codes.
 */
export function readRoster(text: string): RosterReading {
	const table = readCsv(text);
	if (!table.ok) return table;
	const [first = []] = table.rows;
	const names = first.map((cell) => cell.toLowerCase());
	const codeColumn = headed(names, codeHeadings);
	const nameColumn = headed(names, nameHeadings, codeColumn);
	if (codeColumn < 0 && nameColumn >= 0) {
		return refused('No column of the list is headed “Code”; head the one with the codes so.');
	}
	const rows = codeColumn < 0 ? table.rows : table.rows.slice(1);
	if (rows.length === 0) return refused('There is no student code in the list.');
	if (rows.length > mostStudents) {
		return refused(`A list has at most ${mostStudents} students; part it into several.`);
	}
	const students: Student[] = [];
	for (const row of rows) {
		const typed = row[Math.max(0, codeColumn)] ?? '';
		const reading = readCode(typed);
		const where = `Student ${students.length + 1} of the list`;
		if (!reading.ok) return refused(`${where}${quoted(typed)}: ${reading.sentence}`);
		const same = students.findIndex(({ code }) => code === reading.code);
		if (same >= 0) {
			return refused(
				`${where} has the code ${reading.code}, as student ${same + 1} has; change one.`
			);
		}
		const name = nameColumn < 0 ? '' : (row[nameColumn] ?? '');
		students.push({ code: reading.code, name: plainName(name) });
	}
	return { ok: true, students };
}

/** The first column under one of the headings; -1 where there is none. */
function headed(names: readonly string[], headings: readonly RegExp[], taken = -1): number {
	for (const heading of headings) {
		const column = names.findIndex((name, i) => i !== taken && heading.test(name));
		if (column >= 0) return column;
	}
	return -1;
}

/** What was read, for somebody to find it in the list; shortened where it is long. */
function quoted(typed: string): string {
	const text = [...typed.replace(/\s+/g, ' ')];
	if (text.length === 0) return '';
	return `, “${text.length > longestCode ? `${text.slice(0, longestCode).join('')}…` : typed}”`;
}

function refused(sentence: string): RosterReading {
	return { ok: false, sentence };
}

function plainName(name: string): string {
	return [...name.replace(/[\p{Cc}\p{Cf}]/gu, '')].slice(0, longestName).join('');
}
