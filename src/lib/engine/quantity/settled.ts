import type { Expected, Found, OneReading, Option } from './reading.ts';
import { refuse, unread } from './wanted.ts';

/** Larger values are typing slips: inches, degrees or pounds; and plain numbers. */
const largest = 1e6;
const largestNumber = 1e9;

/** The reading that the ways to understand an entry come to. */
export function settled(found: Found, expected: Expected): OneReading {
	if (typeof found === 'string') return unread(found);
	const whole = expected.style === 'count' ? found.filter(({ value }) => value.d === 1n) : found;
	if (whole.length === 0) return unread(refuse('A whole number is wanted here.', expected));
	const most = expected.kind === 'number' ? largestNumber : largest;
	const sized = whole.filter(({ value }) => value.compare(most) <= 0);
	const options = sized.filter(
		({ value }, i) => sized.findIndex((other) => other.value.equals(value)) === i
	);
	const [only, other] = options;
	if (!only) return unread('That is too large. Check the decimal point and the unit.');
	if (other) return { state: 'which', question: question(options), options };
	return { state: 'read', ...only, ...(expected.style === 'count' && { grain: 0 }) };
}

/** `Do you mean 3250 in, or 3.25 in?` */
function question(options: readonly Option[]): string {
	const said = options.map((option) => option.said.replace(/^= /, ''));
	return `Do you mean ${said.slice(0, -1).join('; ')}, or ${said.at(-1)}?`;
}
