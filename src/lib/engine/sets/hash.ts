import { randomFrom } from '../families/random.ts';
import { toBase32 } from '../tasks/base32.ts';

/**
 * So many base-32 digits that stand for a text: another text has others. It shows changes and
 * mix-ups; who reads this program can make a text to fit, so it is no signature.
 */
export function hashOf(text: string, digits: number): string {
	const random = randomFrom(`hash ${text}`);
	return Array.from({ length: digits }, () => toBase32(random.int(0, 31), 1)).join('');
}
