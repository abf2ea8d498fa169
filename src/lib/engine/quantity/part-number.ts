import { plainText } from './plain-text.ts';

const whole = /^(ms20|an)(\d{3})-?([a-z]{1,2})-?(\d{1,2})-(\d{1,2}(?:\.[05])?)$/;
const sizes = /^(?:(?:ms|an)?(?:20)?\d{3})?-?(?:a|ad|b|d|dd|m)?-?(\d{1,2})-(\d{1,2}(?:\.[05])?)$/;

/**
 * Plain text without the spaces and dots that stand outside numbers. A half length may be written with
 * a dash of its own, `AD6-6-5` for a -6.5 length, or as `AD6-6 1/2` (common practice).
 */
function squeezed(text: string): string {
	const half = plainText(text).replace(/(?<=-\d{1,2})[ -]1\/2$/, '.5');
	const code = half.replace(/(^|\D)[ .]+|[ .]+(?=\D|$)/g, '$1');
	return code.replace(/([a-z]-?\d{1,2}-\d{1,2})-5$/, '$1.5');
}

/**
 * A solid rivet's part number as the standard writes it, `MS20470AD4-5`: standard, head, alloy
 * letters, diameter in 32nds, length in 16ths (NAVEDTRA 14315, ch. 3); a half length is `-5.5`
 * (AC 43.13-1B, par. 4-57). The older AN designations stay as they are. Null when the text is no
 * whole part number.
 */
export function normalPartNumber(text: string): string | null {
	const [, standard = '', head, alloy, diameter, length] = whole.exec(squeezed(text)) ?? [];
	if (!standard || !Number(diameter) || !Number(length)) return null;
	return `${standard}${head}${alloy}`.toUpperCase() + `${Number(diameter)}-${Number(length)}`;
}

/** Rivets are made from 1/16 to 3/8 in across. */
const [thinnest, thickest] = [2, 12];

/** Dash numbers in a part number or the end of one, `AD4-5` or `4-5`; null when it is neither. */
export function dashesIn(text: string): { name: string; diameter: number; length: number } | null {
	const name = squeezed(text);
	// `4-5` is the end of a part number; `4 - 5` is a subtraction.
	if (/^[\d .]+(?: -|- )/.test(plainText(text))) return null;
	const [, diameter, length] = sizes.exec(name) ?? [];
	const code = { name: name.toUpperCase(), diameter: Number(diameter), length: Number(length) };
	const made = code.diameter >= thinnest && code.diameter <= thickest && code.length > 0;
	return made ? code : null;
}

const across = /^(?:(?:ms|an)?(?:20)?\d{3})?-?(?:a|ad|b|d|dd|m)-?(\d{1,2})$/;

/** The dash number of the diameter in a part number that stops there, `AD4`; null in any other text. */
export function diameterIn(text: string): { name: string; diameter: number } | null {
	const name = squeezed(text);
	const diameter = Number(across.exec(name)?.[1]);
	const made = diameter >= thinnest && diameter <= thickest;
	return made ? { name: name.toUpperCase(), diameter } : null;
}
