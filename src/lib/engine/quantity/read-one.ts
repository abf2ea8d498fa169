import { dashesPerInch } from './format.ts';
import { measures } from './measure.ts';
import { namedSizes } from './named-size.ts';
import type { Expected, OneReading } from './reading.ts';
import { settled } from './settled.ts';
import { unitSpelt } from './units.ts';
import { refuse, unread, unreadable } from './wanted.ts';

/** One value from plain text. */
export function oneReading(entry: string, expected: Expected): OneReading {
	const twice = confirmed(entry, expected);
	if (twice) return twice;
	const plain = withoutNoun(entry, expected);
	if (typeof plain === 'string') return unread(refuse(plain, expected));
	const named = namedSizes(plain.entry, plain.expected);
	const found = named.length > 0 ? named : measures(plain.entry, plain.expected);
	if (found.length > 0) return settled(found, plain.expected);
	if (isSum(entry)) return { state: 'arithmetic', text: entry };
	return isSum(entry.replace(/,/g, '.'))
		? unread('In a sum write decimals with a point, like 0.5 + 0.25.')
		: unreadable(expected);
}

/** A size said twice, as this program writes it: `5/16 in (−5)`, `No. 30 (0.1285 in)`. */
function confirmed(entry: string, expected: Expected): OneReading | null {
	const [, outer = '', inner = ''] = /^([^()]+?) ?\(([^()]+)\)$/.exec(entry) ?? [];
	// Bare numbers side by side, 2(3), would be a product.
	if (!/^-|[a-z"'°]/.test(outer) && !inner.startsWith('-')) return null;
	const [one, other] = [oneReading(outer, expected), oneReading(inner, expected)];
	if (one.state !== 'read' || other.state !== 'read') return null;
	const apart = Math.abs(Number(one.value) - Number(other.value));
	if (apart > one.grain + other.grain + 1e-9)
		return unread('The two values differ. Write only one.');
	return other.grain < one.grain ? other : one;
}

/** The entry without a word that only says what it is; a sentence when it is something else. */
function withoutNoun(entry: string, expected: Expected) {
	const { kind, style } = expected;
	if (kind !== 'length') return { entry, expected };
	if (style && dashesPerInch[style]) {
		const [, size = entry, length, diameter] =
			/^(.+?) (?:(length|long)|(dia\.?|diameter)|rivets?)$/.exec(entry) ?? [];
		if (length && style === 'rivet-diameter') return 'A rivet diameter is wanted here.';
		if (diameter && style === 'rivet-length') return 'A rivet length is wanted here.';
		return { entry: size, expected };
	}
	const size = entry.replace(/^drill (?:size )?| (?:drill|bit)$/g, '');
	return {
		entry: size,
		expected: size === entry ? expected : { ...expected, style: 'drill' as const }
	};
}

/** Whether the text is numbers, units, operators and brackets, and more than one number. */
function isSum(entry: string): boolean {
	const signs = entry.replace(/[a-z]+|["'°]/g, (word) => (unitSpelt(word, 'length') ? '' : '?'));
	// Half written, it is still being typed.
	const whole = /^[\d.+\-*/() ]*[\d.) ]$/.test(signs);
	return whole && /\d/.test(signs) && /[-+*/()]/.test(signs);
}
