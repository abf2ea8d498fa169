import { hashOf } from '../engine/sets/hash.ts';

/*
 * A packed text can have letters that change nothing in what comes out of it, and then its own
 * check holds all the same. Where one wrong letter must never pass, the text itself is checked.
 */

const digits = 6;

/** The text with a check behind it. */
export function checked(text: string): string {
	return `${text}.${hashOf(text, digits)}`;
}

/** The text before the check; empty where the check does not hold. */
export function unchecked(text: string): string {
	const at = text.lastIndexOf('.');
	return at > 0 && checked(text.slice(0, at)) === text ? text.slice(0, at) : '';
}
