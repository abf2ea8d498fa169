import { type DashSize, dashText, longestDash } from './dash.ts';
import { type Exact, fromDigits, ratio } from './exact.ts';
import type { Numeral } from './numeral.ts';
import { amountIn, listed } from './option.ts';
import { dashesIn, diameterIn } from './part-number.ts';
import type { Entry, Field, Found, NameReading, Option } from './reading.ts';
import { unitOf } from './units.ts';

/** The names of a rivet's lengths or diameters: `−5`, or a part number that holds them. */
export function dashNames(size: DashSize): NameReading {
	return {
		withoutNoun: (entry, field) => withoutNoun(entry, field, size),
		named: (entry, field) => named(entry, field, size),
		bare: (number, field) => ({
			found: mayBeDash(number, size) ? [dashOption(number.value, field, size)] : [],
			only: false
		}),
		said: (value) => {
			// Half sizes are made, but whoever writes 17/32 does not think of one.
			const dash = dashText(value, { ...size, halves: false });
			return dash ? `, a ${dash} ${size.is}` : '';
		}
	};
}

function withoutNoun(entry: string, field: Field, { is }: DashSize): Entry | string {
	const [, size = entry, long, across] =
		/^(.+?) (?:(length|long)|(dia\.?|diameter)|rivets?)$/.exec(entry) ?? [];
	return (is === 'length' ? across : long)
		? `A rivet ${is} is wanted here.`
		: { entry: size, field };
}

const dash = /^(?:-|dash(?: no\.?| number)? ?-?) ?(\d{1,2})(?:\.([05]))?$/;

/** The number behind a dash, `-5` or `dash 5`; null where no size has it. */
export function dashIn(entry: string, { halves }: Pick<DashSize, 'halves'>): Exact | null {
	const [, whole, half = ''] = dash.exec(entry) ?? [];
	if (!whole) return null;
	const number = fromDigits(whole, half);
	return number.n > 0n && (number.d === 1n || halves) ? number : null;
}

function named(entry: string, field: Field, size: DashSize): Found {
	const number = dashIn(entry, size);
	if (number) return [dashOption(number, field, size)];
	const code = dashesIn(entry);
	if (code) return [fromCode(code[size.is], code.name, field, size)];
	const begun = size.is === 'diameter' ? diameterIn(entry) : null;
	return begun ? [fromCode(begun.diameter, begun.name, field, size)] : [];
}

function fromCode(number: number, name: string, field: Field, size: DashSize): Option {
	const note = `−${number} taken from ${name}`;
	return { ...dashOption(ratio(BigInt(number * 2), 2n), field, size), note };
}

/** Whether a bare number could be a dash number: whole, or a half size of a rivet's length. */
function mayBeDash({ value, form }: Numeral, { halves }: DashSize): boolean {
	if (form === 'fraction' || value.n === 0n || value.compare(longestDash) > 0) return false;
	return value.d === 1n || (halves && value.d === 2n && value.compare(2) > 0);
}

/** A dash number, read as its size. */
function dashOption(number: Exact, field: Field, size: DashSize): Option {
	const inches = unitOf(field.kind.dimension, 'in');
	const option = amountIn(listed(number.div(size.perInch), 'fraction'), inches, field);
	return { ...option, said: `${option.said}, a ${dashText(option.value, size)} ${size.is}` };
}
