import { readCode } from '../engine/sets/student-code.ts';
import { longestName } from '../engine/sets/hand-in.ts';
import { readCsv } from './csv.ts';

/** Most students in a list. */
export const mostStudents = 500;

/** What a column of codes is headed with. */
const codeHeading = /^(codes?|ids?|students?|student (codes?|ids?|numbers?|no\.?))$/;

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
 * Reads student codes from a table, or one a line. A first row with “code”, “student” or “ID” names
 * the columns; without it, the first column holds the codes.
 */
export function readRoster(text: string): RosterReading {
	const table = readCsv(text);
	if (!table.ok) return table;
	const [first = []] = table.rows;
	const names = first.map((cell) => cell.toLowerCase());
	const codeColumn = names.findIndex((cell) => codeHeading.test(cell));
	const nameColumn = codeColumn < 0 ? -1 : names.indexOf('name');
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
		if (!reading.ok) return refused(`${where}: ${reading.sentence}`);
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

function refused(sentence: string): RosterReading {
	return { ok: false, sentence };
}

function plainName(name: string): string {
	return [...name.replace(/[\p{Cc}\p{Cf}]/gu, '')].slice(0, longestName).join('');
}
