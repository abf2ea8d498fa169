import type { Level } from '../families/level.ts';
import { checkDigit, fromBase32, toBase32 } from './base32.ts';

/** What a task number says: how to draw the task again anywhere. */
export interface TaskId {
	/** The family's code, two capital letters. */
	readonly code: string;
	readonly level: Level;
	/** Which draw of the family: 0 to 1,048,575. */
	readonly seed: number;
	/** Revision of the family that drew it: 0 to 31. */
	readonly rev: number;
}

export const seedCount = 32 ** 4;

/** A number has one digit for the revision. */
const revCount = 32;

/** A task number that cannot be used; the message is one sentence for a person. */
export class TaskNumberError extends Error {}

/**
 * The number as it stands in a title block: `RL2-7Q4K-21`.
 *
 * @throws Error where the seed or the revision has more digits than the number has room for
 */
export function writeTaskNumber({ code, level, seed, rev }: TaskId): string {
	if (!isBelow(seedCount, seed)) throw new Error(outOfRange(code, 'seed', seed, seedCount));
	if (!isBelow(revCount, rev)) throw new Error(outOfRange(code, 'revision', rev, revCount));
	const body = toBase32(seed, 4) + toBase32(rev, 1);
	const check = toBase32(checkDigit(valuesOf(code, level, body)), 1);
	return `${code}${level}-${body.slice(0, 4)}-${body[4]}${check}`;
}

/**
 * Reads a task number as typed or pasted: capitals or not, with or without hyphens and spaces.
 * Whether a family of that code and revision exists is not looked at here.
 */
export function readTaskNumber(typed: string): TaskId {
	const plain = typed
		.normalize('NFKC')
		.replace(/[\s\-‐-―−]/g, '')
		.toUpperCase();
	const parts = /^([A-Z]{2})([1-3])([0-9A-Z]{4})([0-9A-Z])([0-9A-Z])$/.exec(plain);
	if (!parts) {
		throw new TaskNumberError('That is not a task number; one looks like RL2-7Q4K-21.');
	}
	const [, code = '', level = '', seedText = '', revText = '', checkText = ''] = parts;
	const seed = fromBase32(seedText);
	const rev = fromBase32(revText);
	const check = fromBase32(checkText);
	if (seed === null || rev === null || check === null) {
		throw new TaskNumberError('A task number has no letter U; check it against the title block.');
	}
	const body = toBase32(seed, 4) + toBase32(rev, 1);
	if (check !== checkDigit(valuesOf(code, Number(level), body))) {
		throw new TaskNumberError(
			'One character of that task number is off; check it against the title block.'
		);
	}
	return { code, level: Number(level) as Level, seed, rev };
}

function isBelow(limit: number, value: number): boolean {
	return Number.isInteger(value) && value >= 0 && value < limit;
}

function outOfRange(code: string, what: string, value: number, limit: number): string {
	return `family ${code}: a task number holds a ${what} from 0 to ${limit - 1}, not ${value}`;
}

function valuesOf(code: string, level: number, body: string): number[] {
	const letters = [...code].map((letter) => letter.charCodeAt(0) - 64);
	return [...letters, level, ...[...body].map((digit) => fromBase32(digit) ?? 0)];
}
