import * as v from 'valibot';
import { readSet, type SetReading, type TaskSet } from '../engine/sets/set.ts';
import { readTaskNumber, writeTaskNumber } from '../engine/tasks/task-number.ts';
import type { Level } from '../engine/families/level.ts';
import { toBase32, fromBase32 } from '../engine/tasks/base32.ts';
import { checked, unchecked } from './checked.ts';
import { packed, unpacked } from './fragment.ts';

/*
 * A whole set as the fragment of an address. Task numbers stand in columns, codes with codes and
 * seeds with seeds, without what can be worked out again, so that a set of 20 fits a QR code.
 */

/** Sets with tolerances of their own are written as version 3, which older editions cannot hold. */
const version = 3;

/** Where the pages stand that open a set. */
export const setPath = 'sets/';

const text = v.string();

/** What a set is packed as; what is left empty at the end is cut off. */
const packedSet = v.strictTuple([
	text, // title
	text, // codes, two letters each
	text, // levels, a digit each
	text, // seeds, four digits in base 32 each
	text, // revisions, a digit in base 32 each
	text, // marks
	text, // choices that are not the plain ones, a letter each
	text, // due
	v.nullable(text), // seed text; null where it is the title
	text, // tolerance
	text, // note
	v.optional(text) // tolerances by rule and micrometer, with a comma between; version 3
]);

/** The fragment of the address that opens the set. */
export async function writeSet(set: TaskSet): Promise<string> {
	const ids = set.tasks.map(({ number }) => readTaskNumber(number));
	const row = [
		set.title,
		ids.map(({ code }) => code).join(''),
		ids.map(({ level }) => level).join(''),
		ids.map(({ seed }) => toBase32(seed, 4)).join(''),
		ids.map(({ rev }) => toBase32(rev, 1)).join(''),
		set.tasks.map(({ marks }) => marksText(marks)).join(''),
		choices.map(([letter, isMade]) => (isMade(set) ? letter : '')).join(''),
		set.due ?? '',
		set.seed === set.title ? null : set.seed,
		set.tolerance,
		set.note
	];
	if (!set.within) return checked(await packed(2, row));
	const { rule = '', micrometer = '' } = set.within;
	return checked(await packed(version, [...row, `${rule},${micrometer}`]));
}

/** What may be chosen otherwise than plain. */
const choices: readonly (readonly [letter: string, isMade: (set: TaskSet) => boolean])[] = [
	['m', ({ order }) => order === 'mixed'],
	['n', ({ numbers }) => numbers === 'own'],
	['o', ({ answers }) => answers === 'options'],
	['h', ({ help }) => !help]
];

/** Whether a text holds what looks like the link of a set, damaged or not. */
export function hasLink(text: string): boolean {
	return /(^|#)[1-9]\d{0,3}\.[0-9a-z]{1,7}\./.test(text.trim());
}

/** What stands after the `#` of an address, without the words of a message around it. */
export function fragmentIn(text: string): string {
	const [first = ''] = text
		.replace(/^[^#]*#/, '')
		.trim()
		.split(/\s/, 1);
	// Messages put brackets, quotation marks, a full stop or a coded space around an address.
	return first.replace(/(?:[<>()[\]"'“”‘’‹›«».,;]|%20)+$/, '');
}

/** Reads the fragment of an address, with or without words around it; never throws. */
export async function readSetLink(link: string): Promise<SetReading> {
	const reading = await unpacked(version, unchecked(fragmentIn(link)));
	if (!reading.ok && reading.reason === 'newer') return refused(newer);
	const row = reading.ok ? v.safeParse(packedSet, reading.value) : null;
	if (!row?.success) return refused(damaged);
	const plain = plainSet(row.output);
	return plain ? readSet(plain) : refused(damaged);
}

const newer = 'Update Bucktail first: a newer version made that set link.';
const damaged =
	'That set link is damaged or cut short: one character off is enough. Ask for it to be sent again.';

function refused(sentence: string): SetReading {
	return { ok: false, sentence };
}

/** The set as plain data; null where the columns do not fit together. */
function plainSet(row: v.InferOutput<typeof packedSet>): unknown {
	const [title, codes, levels, seeds, revs, allMarks, chosen, due, seed, tolerance, note, within] =
		row;
	const marks = marksIn(allMarks);
	const has = (letter: string) => chosen.includes(letter);
	if (!marks || codes.length !== 2 * marks.length) return null;
	const tasks = marks.map((own, i) => ({
		number: numberOf(
			codes.slice(2 * i, 2 * i + 2),
			levels[i],
			seeds.slice(4 * i, 4 * i + 4),
			revs[i]
		),
		marks: own
	}));
	return {
		title,
		seed: seed ?? title,
		tasks,
		order: has('m') ? 'mixed' : 'fixed',
		numbers: has('n') ? 'own' : 'same',
		answers: has('o') ? 'options' : 'typed',
		help: !has('h'),
		due: due === '' ? null : due,
		...(within === undefined ? {} : { within: withinIn(within) }),
		tolerance,
		note
	};
}

function withinIn(text: string): Readonly<Record<string, string>> {
	const [rule = '', micrometer = ''] = text.split(',');
	return { ...(rule && { rule }), ...(micrometer && { micrometer }) };
}

/** The task number with its check digit; empty where there can be none. */
function numberOf(code: string, level = '', seedText: string, revText = ''): string {
	const [seed, rev] = [fromBase32(seedText), fromBase32(revText)];
	const sound = /^[A-Z]{2}$/.test(code) && /^[1-3]$/.test(level) && seedText.length === 4;
	if (!sound || seed === null || rev === null || revText === '') return '';
	return writeTaskNumber({ code, level: Number(level) as Level, seed, rev });
}

/** `4` for a mark in each of four steps; otherwise every mark as a digit, in brackets. */
function marksText(marks: readonly number[]): string {
	if (marks.every((one) => one === 1)) return marks.length.toString(36);
	return `(${marks.map((one) => one.toString(36)).join('')})`;
}

function marksIn(text: string): number[][] | null {
	if (!/^([0-9a-z]|\([0-9a-z]+\))*$/.test(text)) return null;
	return (text.match(/\([^)]+\)|./g) ?? []).map((part) =>
		part.startsWith('(')
			? [...part.slice(1, -1)].map((digit) => parseInt(digit, 36))
			: Array.from({ length: parseInt(part, 36) }, () => 1)
	);
}
