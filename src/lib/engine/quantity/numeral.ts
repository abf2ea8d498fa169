import { type Exact, fromDigits, ratio } from './exact.ts';

/** A number as written, without its unit. */
export interface Numeral {
	readonly value: Exact;
	/** Half of the last place written; 0 for fractions. */
	readonly grain: Exact;
	readonly form: 'whole' | 'decimal' | 'mixed' | 'fraction';
	readonly note?: string;
}

const decimal = /^(\d*)(?:\.(\d*))?(?:e([-+]?\d\d?))?$/;
const fraction = /^(?:(\d+)(_| ?- ?| ))?(\d+) ?\/ ?(\d+)\.?$/;
const grouped = /^([1-9]\d{0,2})([, ])(\d{3}(?:\2\d{3})*)(?:\.(\d*))?$/;
const commaDecimal = /^(\d*|[1-9]\d{0,2}(?: \d{3})+),(\d+)$/;
const raisedDot = /^(\d+)·(\d+)$/;

const zero = ratio(0n);
const commaNote = 'comma taken as the decimal point';

/**
 * Every number that a text without unit can stand for: usually one, two where the writing is
 * ambiguous (`3,250`), none when it is no number. A text that is nearly a number gives a sentence.
 */
export function numerals(text: string): readonly Numeral[] | string {
	if (!/^[.,]?\d/.test(text)) return [];
	const plain = decimal.exec(text);
	if (plain) {
		const number = fromDecimal(plain[1], plain[2], Number(plain[3] ?? 0));
		// Sheet of .032 is called, and sometimes written, 032.
		return /^0\d{2,3}$/.test(text) ? [number, fromDecimal('', text)] : [number];
	}
	const divided = fraction.exec(text);
	if (divided) return fromFraction(divided);
	const groups = grouped.exec(text);
	if (groups) return fromGroups(groups);
	const comma = commaDecimal.exec(text);
	if (comma) return [fromDecimal(comma[1]?.replace(/ /g, ''), comma[2], 0, commaNote)];
	const dot = raisedDot.exec(text);
	return dot ? fromRaisedDot(dot[1] ?? '', dot[2] ?? '') : [];
}

function fromDecimal(whole = '', decimals = '', power = 0, note?: string): Numeral {
	return {
		value: fromDigits(whole, decimals, power),
		grain: fromDigits('5', '', power - decimals.length - 1),
		form: decimals || power ? 'decimal' : 'whole',
		...(note && { note })
	};
}

function fromFraction([, whole, join, top = '', bottom = '']: RegExpExecArray) {
	const [n, d] = [BigInt(top), BigInt(bottom)];
	if (d === 0n) return 'The bottom of a fraction cannot be zero. Write it like 3/8.';
	const part = ratio(n, d);
	if (whole === undefined) return [{ value: part, grain: zero, form: 'fraction' } as const];
	const before = ratio(BigInt(whole));
	if (n >= d) return 'The fraction after a whole number is less than one. Write it like 1 1/2.';
	const mixed = { value: before.add(part), grain: zero, form: 'mixed' } as const;
	// `1-1/2` is a mixed number in the shop; with spaces it may be a subtraction.
	const spaced = join?.includes('-') && join !== '-' && before.n > 0n;
	return spaced ? [mixed, { ...mixed, value: before.sub(part) }] : [mixed];
}

function fromGroups([, first = '', mark, rest = '', decimals]: RegExpExecArray): Numeral[] {
	const digits = first + rest.replace(/\D/g, '');
	const thousands = fromDecimal(digits, decimals);
	const sure = decimals !== undefined || rest.length > 3;
	const note = mark === ',' ? commaNote : 'space taken as the decimal point';
	return sure ? [thousands] : [thousands, fromDecimal(first, rest, 0, note)];
}

function fromRaisedDot(left: string, right: string): Numeral[] {
	const decimals = fromDecimal(left, right, 0, 'raised dot taken as the decimal point');
	const product = ratio(BigInt(left) * BigInt(right));
	return product.n === 0n
		? [decimals]
		: [decimals, { ...fromDecimal(left), value: product, grain: zero }];
}
