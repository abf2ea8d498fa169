import type { Field, Found, OneReading, Option } from './reading.ts';
import { refuse, unread } from './wanted.ts';

/** The reading that the ways to understand an entry come to. */
export function settled(found: Found, field: Field): OneReading {
	if (typeof found === 'string') return unread(found);
	const { dimension, whole } = field.kind;
	const fit = whole ? found.filter(({ value }) => value.d === 1n) : found;
	if (fit.length === 0) return unread(refuse('A whole number is wanted here.', field));
	const sized = fit.filter(({ value }) => value.compare(dimension.largest) <= 0);
	const options = sized.filter(
		({ value }, i) => sized.findIndex((other) => other.value.equals(value)) === i
	);
	const [only, other] = options;
	if (!only) return unread('That is too large. Check the decimal point and the unit.');
	if (other) return { state: 'which', question: question(options), options };
	return { state: 'read', ...only, ...(whole && { grain: 0 }) };
}

/** `Do you mean 3250 in, or 3.25 in?` */
function question(options: readonly Option[]): string {
	const said = options.map((option) => option.said.replace(/^= /, ''));
	return `Do you mean ${said.slice(0, -1).join('; ')}, or ${said.at(-1)}?`;
}
