import { drillName } from './drills.ts';
import { decimalText, type Exact, exactly, mixedText, ratio } from './exact.ts';
import { baseUnit, type Kind, type LengthUnit, type Style, type Value } from './kind.ts';

/** Millimetres in an inch. */
export const mmPerInch = ratio(127n, 5n);

/**
 * What each style measures when nothing else says so, and its fewest and most decimal places; the
 * last one is rounded half up.
 */
const written: Readonly<Record<Style, readonly [Kind, least: number, most: number]>> = {
	thousandth: ['length', 3, 4],
	fraction: ['length', 3, 4],
	'rivet-diameter': ['length', 3, 4],
	'rivet-length': ['length', 3, 4],
	drill: ['length', 3, 4],
	count: ['number', 0, 4],
	factor: ['number', 0, 5],
	hundredth: ['number', 0, 2],
	degrees: ['angle', 0, 2],
	pounds: ['weight', 0, 4],
	words: ['text', 0, 5]
};

/** Rivet dash numbers to the inch: lengths count 16ths, diameters 32nds. */
export const dashesPerInch: Readonly<Partial<Record<Style, number>>> = {
	'rivet-length': 16,
	'rivet-diameter': 32
};

/**
 * A value in base units as the shop writes it, with its unit: `5/16 in (−5)`, `0.0625 in`, `90°`.
 * A list has one unit at the end. `kind` is needed only where it is not the style's own, as for a
 * density written as a `factor`.
 */
export function format(
	value: Value,
	style: Style,
	units: LengthUnit = 'in',
	kind: Kind = written[style][0]
): string {
	if (typeof value === 'string') return value;
	const unit = unitText(kind, units);
	if (typeof value === 'number') return oneText(value, style, units, kind, unit);
	if (style === 'drill') {
		return value.map((one) => oneText(one, style, units, kind, unit)).join(', ');
	}
	const numbers = value.map((one) => numberText(exactly(one), style, units, kind)).join(', ');
	return numbers && numbers + unit;
}

/** The number alone, without unit, dash number or drill name, for use inside a formula. */
export function formatNumber(value: number, style: Style, units: LengthUnit = 'in'): string {
	return numberText(exactly(value), style, units, written[style][0]);
}

function oneText(value: number, style: Style, units: LengthUnit, kind: Kind, unit: string): string {
	const exact = exactly(value);
	const size = numberText(exact, style, units, kind) + unit;
	if (style === 'drill') return drillText(exact, size);
	const dash = dashText(exact, style);
	return dash ? `${size} (${dash})` : size;
}

function drillText(size: Exact, text: string): string {
	const name = drillName(size);
	if (!name) return text;
	return `${name}${name.includes('/') ? ' in' : ''} (${text})`;
}

function unitText(kind: Kind, units: LengthUnit): string {
	if (kind === 'angle') return '°';
	if (kind === 'density') return ' lb/in³';
	const unit = kind === 'length' ? units : baseUnit[kind];
	return unit && ` ${unit}`;
}

function numberText(value: Exact, style: Style, units: LengthUnit, kind: Kind): string {
	const [, least, most] = written[style];
	if (kind === 'length' && units === 'mm') return decimalText(value.mul(mmPerInch), 0, 3);
	const fraction = style === 'fraction' || dashesPerInch[style];
	return fraction && isIn64ths(value) ? mixedText(value) : decimalText(value, least, most);
}

/** Dash numbers have two digits. */
export const longestDash = 99;

/** `−5` for a 5/16 in rivet length; null when the size is no whole or half dash number. */
export function dashText(size: Exact, style: Style): string | null {
	const perInch = dashesPerInch[style];
	if (!perInch) return null;
	const dash = size.mul(perInch);
	const halves = style === 'rivet-length' ? 2n : 1n;
	const named = halves % dash.d === 0n && dash.compare(1) >= 0 && dash.compare(longestDash) <= 0;
	return named ? `−${decimalText(dash, 0, 1)}` : null;
}

/**
 * Inches as a whole number and a fraction in lowest terms, for displayed mathematics; null when
 * the value is below zero or not in 64ths. The numerator is 0 for a whole number.
 */
export function asFraction(
	value: number
): { whole: number; numerator: number; denominator: number } | null {
	const exact = exactly(value);
	if (!isIn64ths(exact)) return null;
	const { n, d } = exact;
	return { whole: Number(n / d), numerator: Number(n % d), denominator: Number(d) };
}

function isIn64ths({ s, n, d }: Exact): boolean {
	return 64n % d === 0n && (s > 0n || n === 0n);
}

/** Inches to the nearest 64th, for layout with a scale: `23/32`, or `≈ 23/32` when rounded. */
export function nearest64(value: number): string {
	const exact = exactly(value);
	const rounded = ratio((exact.n * 128n + exact.d) / (exact.d * 2n), 64n);
	const sign = exact.s < 0n && rounded.n !== 0n ? '−' : '';
	return (rounded.equals(exact.abs()) ? '' : '≈ ') + sign + mixedText(rounded);
}
