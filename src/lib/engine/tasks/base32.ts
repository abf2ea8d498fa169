/*
 * Crockford's base 32: no I, L, O or U, so that a number can be read aloud and typed. What is
 * typed may be in small letters; I and L are read as 1, O as 0.
 */

const digits = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** `value` as `length` base-32 digits, the last ones where there are more. */
export function toBase32(value: number, length: number): string {
	let text = '';
	for (let rest = value; text.length < length; rest = Math.floor(rest / 32)) {
		text = (digits[rest % 32] ?? '') + text;
	}
	return text;
}

/** The number in base-32 digits, or null when a character is not one. */
export function fromBase32(text: string): number | null {
	let value = 0;
	for (const char of text) {
		const digit = digitOf(char);
		if (digit === null) return null;
		value = value * 32 + digit;
	}
	return value;
}

function digitOf(char: string): number | null {
	const capital = char.toUpperCase();
	const plain = capital === 'O' ? '0' : capital === 'I' || capital === 'L' ? '1' : capital;
	const at = digits.indexOf(plain);
	return plain.length === 1 && at >= 0 ? at : null;
}

/**
 * Check digit over the values of the characters before it: the hybrid system of ISO 7064 with
 * modulus 32. It finds every single wrong character and nearly every swap of two neighbours.
 */
export function checkDigit(values: readonly number[]): number {
	let product = 32;
	for (const value of values) {
		const sum = (product + value) % 32 || 32;
		product = (sum * 2) % 33;
	}
	return (33 - product) % 32;
}
