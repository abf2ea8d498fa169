import { compound } from './compound.ts';
import { numberDrill } from './drills.ts';
import { dashesPerInch, longestDash } from './format.ts';
import type { Kind } from './kind.ts';
import { type Numeral, numerals } from './numeral.ts';
import { dashOption, drillOption, inUnit } from './option.ts';
import type { Expected, Found, Option } from './reading.ts';
import { bareUnit, lengthUnit } from './said.ts';
import { unitSpelt } from './units.ts';
import { otherKind, refuse } from './wanted.ts';

/** A number and the unit written behind it. */
export interface Part {
	readonly number: string;
	readonly unit: string;
}

const parts =
	/(-?[\d.,](?:[\d.,/ _·-]*\d)?\.?(?:e[-+]?\d+)?)(?: |-(?=[a-z]))?([a-z]+(?:\/(?:cu\.? ?)?[a-z]+(?:\^?[3³])?)?|['"°]|$)(?:\.(?!\d))? ?/gy;

/** Every way to read a number with or without a unit. The entry is plain text. */
export function measures(entry: string, expected: Expected): Found {
	const [, sign = '', rest = ''] = /^([-+±=≈~]*) ?(.*)$/.exec(entry) ?? [];
	const found = unsigned(inchWords(rest, expected.kind), expected);
	const below = sign.includes('-') && typeof found !== 'string' && found.length > 0;
	return below ? refuse('A size is not below zero.', expected) : found;
}

/** `5 32nds` as 5/32 in, `3/8 of an inch` as 3/8 in, `1 and 1/2` as 1 1/2. */
function inchWords(text: string, kind: Kind): string {
	const joined = text.replace(/ and (?=\d+\/)/, ' ');
	if (kind !== 'length') return joined;
	return joined
		.replace(/(thou|mils?|thousandths?) (?:of an )?in(?:ch)?$/, '$1')
		.replace(/[ /](64|32|16|8)(?:nds?|ths?)(?: (?:of an )?in(?:ch)?)?$/, '/$1 in')
		.replace(/ of an inch$/, ' in');
}

function unsigned(text: string, expected: Expected): Found {
	const all = partsOf(text);
	const [first] = all;
	if (!first) return [];
	const numbers = numerals(first.number);
	if (typeof numbers === 'string') return numbers;
	if (numbers.length === 0) return [];
	if (!first.unit) return numbers.flatMap((number) => bare(number, expected));
	const unit = unitSpelt(first.unit, expected.kind);
	if (!unit) return refuse(`“${first.unit.slice(0, 20)}” is not a unit used here.`, expected);
	if (unit.kind !== expected.kind)
		return otherKind(`${first.number} ${first.unit}`.slice(0, 30), unit.kind, expected);
	return all.length > 1
		? compound(all, unit, expected)
		: numbers.map((number) => inUnit(number, unit, expected));
}

/** The numbers with their units; none when anything else stands in the text. */
function partsOf(text: string): Part[] {
	// `1'-2"` is 1 ft 2 in; behind a space the dash is a minus.
	if (/[a-z'"°]\.? -/.test(text)) return [];
	const found = [...text.matchAll(parts)];
	if (found.map(([all]) => all).join('') !== text) return [];
	return found.map(([, number = '', unit = ''], i) => ({
		number: i > 0 ? number.replace(/^-/, '') : number,
		unit
	}));
}

/** Every way to read a number without a unit. */
function bare(number: Numeral, expected: Expected): Option[] {
	const { kind, style, unit } = expected;
	const own = inUnit(number, bareUnit(expected), expected);
	if (kind !== 'length') return [own];
	const options: Option[] = [];
	const dash = style && dashesPerInch[style] && mayBeDash(number, style === 'rivet-length');
	if (dash) options.push(dashOption(number.value, expected));
	if (style === 'drill' && number.form === 'whole') {
		const size = numberDrill(number.value.valueOf());
		if (size) options.push(drillOption(`No. ${number.value.n}`, size, expected));
		// A drill is never whole inches across.
		if (unit !== 'mm') return options;
	}
	options.push(own);
	// A fraction is more often of an inch, whatever unit the field works in.
	if (unit === 'mm' && number.grain.n === 0n)
		options.push(inUnit(number, lengthUnit('in'), expected));
	return options;
}

/** Whether a bare number could be a dash number: whole, or a half size of a rivet's length. */
function mayBeDash({ value, form }: Numeral, halves: boolean): boolean {
	if (form === 'fraction' || value.n === 0n || value.compare(longestDash) > 0) return false;
	return value.d === 1n || (halves && value.d === 2n && value.compare(2) > 0);
}
