import { numerals } from './numeral.ts';
import type { Field, OneReading } from './reading.ts';

const factor = /^([\d.][\d./ -]*?) ?[*x]? ?([dt])$/;

/**
 * A factor with the letter of the size it multiplies, `2D` or `1.5 x T`, as rules are written; null
 * when the entry is none. Which size it is, and what it comes to, the task tells.
 */
export function timesReading(entry: string, { kind }: Field): OneReading | null {
	if (kind.dimension.formula !== 'in') return null;
	const [, text = '', letter = ''] = factor.exec(entry) ?? [];
	const found = text === '' ? [] : numerals(text);
	const [number, ...others] = typeof found === 'string' ? [] : found;
	if (!number || others.length > 0) return null;
	const times = letter.toUpperCase();
	const said = `${text.replace(/^\./, '0.')} ${times}`;
	return { state: 'read', value: number.value, grain: number.grain.valueOf(), said, times };
}
