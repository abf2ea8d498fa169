import { measures } from './measure.ts';
import type { Entry, Field, OneReading } from './reading.ts';
import { settled } from './settled.ts';
import { timesReading } from './times.ts';
import { unitSpelt } from './units.ts';
import { refuse, unread, unreadable } from './wanted.ts';

/** What may stand in arithmetic besides numbers and units. */
const names = ['pi', 'sin', 'cos', 'tan'];

/** One value from plain text. */
export function oneReading(entry: string, field: Field): OneReading {
	const whole = confirmed(entry, field) ?? timesReading(entry, field);
	if (whole) return whole;
	const plain = withoutNoun(entry, field);
	if (typeof plain === 'string') return unread(refuse(plain, field));
	const named = plain.field.names?.named(plain.entry, plain.field) ?? [];
	const found = named.length > 0 ? named : measures(plain.entry, plain.field);
	if (found.length > 0) return settled(found, plain.field);
	if (isSum(entry, field)) return { state: 'arithmetic', text: entry };
	return isSum(entry.replace(/,/g, '.'), field)
		? unread('In a sum write decimals with a point, like 0.5 + 0.25.')
		: unreadable(field);
}

/** A size said twice, as this program writes it: `5/16 in (−5)`, `No. 30 (0.1285 in)`; `#30 (.1285)`. */
function confirmed(entry: string, field: Field): OneReading | null {
	const [, outer = '', inner = ''] = /^([^()]+?) ?\(([^()]+)\)$/.exec(entry) ?? [];
	// A whole number before brackets, 2(3), is multiplied.
	if (!/^[-#]|[a-z"'°./]/.test(outer) && !inner.startsWith('-')) return null;
	const [one, other] = [oneReading(outer, field), oneReading(inner, field)];
	if (one.state !== 'read' || other.state !== 'read') return null;
	const apart = Math.abs(Number(one.value) - Number(other.value));
	if (apart > one.grain + other.grain + 1e-9) {
		// Bare numbers side by side, 1.5(3), are a product.
		const named = /^[-#]|[a-z"'°]/;
		const isProduct = !named.test(outer) && !named.test(inner);
		return isProduct ? null : unread('The two values differ. Write only one.');
	}
	return other.grain < one.grain ? other : one;
}

function withoutNoun(entry: string, field: Field): Entry | string {
	return field.names?.withoutNoun(entry, field) ?? { entry, field };
}

/** Whether the text is numbers, units, operators and brackets, and more than one number. */
function isSum(entry: string, { kind }: Field): boolean {
	const signs = entry.replace(/[a-z]+|["'°]/g, (word) =>
		unitSpelt(word, kind.dimension) || names.includes(word) ? '' : '?'
	);
	// Half written, it is still being typed.
	const whole = /^[\d.+\-*/() ]*[\d.) ]$/.test(signs);
	return whole && /\d/.test(signs) && (/[-+*/()]/.test(signs) || /sin|cos|tan/.test(entry));
}
