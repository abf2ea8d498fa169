/** Longest student code, in characters. */
export const longestCode = 24;

export type CodeReading =
	| { readonly ok: true; readonly code: string }
	| { readonly ok: false; readonly sentence: string };

/**
 * The code of a student as typed: capitals or not, it is the same code. It goes into tables and
 * addresses, so it holds letters, digits, spaces, points, hyphens and underlines only.
 */
export function readCode(typed: string): CodeReading {
	const code = typed.normalize('NFKC').trim().replace(/\s+/g, ' ').toUpperCase();
	if (code === '') return { ok: false, sentence: 'Type a student code, such as B05.' };
	if ([...code].length > longestCode) {
		const sentence = `A student code has at most ${longestCode} characters; shorten it.`;
		return { ok: false, sentence };
	}
	if (!/^[\p{L}\p{N}][\p{L}\p{M}\p{N} ._-]*$/u.test(code)) {
		return {
			ok: false,
			sentence: 'A student code starts with a letter or digit, and may also have . - _ and spaces.'
		};
	}
	return { ok: true, code };
}
