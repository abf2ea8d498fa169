import { asFraction, format, formatNumber, nearest64 } from '../quantity/format.ts';
import type { LengthUnit, Style, Value } from '../quantity/kind.ts';
import { compiledOf, type Values } from './compiled.ts';
import { plainStyle } from './given.ts';
import type { Method } from './method.ts';
import type { Part, Slot } from './trade-function.ts';

/** A step as displayed mathematics: MathML fragments, without the outer `math` element. */
export interface ShownStep {
	/** The formula in symbols: grip + shank. */
	readonly symbols: string;
	/** The formula with this problem's numbers; one for every member where the step makes a list. */
	readonly numbers: readonly string[];
	/** The results, one for each of `numbers`. */
	readonly results: readonly string[];
}

/** How a given or a step of the method is written. */
export function styleAt(method: Method, key: string): Style {
	const given = method.given[key];
	if (given) return given.style;
	const step = method.steps[key];
	if (!step) throw new Error(`unknown step: ${method.id}.${key}`);
	return step.style ?? plainStyle(compiledOf(method).steps[key]?.kind ?? 'number');
}

/** The value of a given or a step as the shop writes it, with its unit. */
export function textAt(
	method: Method,
	key: string,
	value: Value,
	units: LengthUnit = 'in'
): string {
	return format(value, styleAt(method, key), units);
}

/** The displayed name of a given or a step: `D`, `grip`, `end margin`. */
export function symbolOf(method: Method, key: string): string {
	const symbol = method.given[key]?.symbol ?? method.steps[key]?.symbol;
	if (symbol) return symbol;
	return key.replace(/[A-Z]/g, (capital, at) => (at === 0 ? capital : ` ${capital.toLowerCase()}`));
}

/** Step `key` of a method at these values, for the worked solution. */
export function showStep(
	method: Method,
	key: string,
	values: Values,
	units: LengthUnit = 'in',
	slipId?: string
): ShownStep {
	const { steps, slips } = compiledOf(method);
	const step = steps[key];
	const formula = slipId === undefined ? step : slips[slipId];
	if (!step || !formula) throw new Error(`unknown step: ${method.id}.${key}`);
	const value = values[key] ?? '';
	const members: Value[] = step.list && typeof value === 'object' ? [...value] : [value];
	const fill = (slot: Slot, i: number) => {
		const named = values[slot.name] ?? '';
		return shownValue(named, styleAt(method, slot.name), units, slot, i);
	};
	const alike = !formula.show.some((part) => variesAlong(part, values));
	const numbers = (alike ? members.slice(0, 1) : members).map((_, i) =>
		rendered(formula.show, (slot) => fill(slot, i))
	);
	const results = (alike ? [value] : members).map((one) => shownResult(method, key, one, units));
	return {
		symbols: rendered(formula.show, (slot) => shownName(method, slot)),
		numbers,
		results
	};
}

function variesAlong(part: Part, values: Values): boolean {
	return typeof part === 'object' && !part.join && typeof values[part.name] === 'object';
}

function rendered(parts: readonly Part[], fill: (slot: Slot) => string): string {
	return parts.map((part) => (typeof part === 'string' ? part : fill(part))).join('');
}

function shownName(method: Method, slot: Slot): string {
	const name = identifier(symbolOf(method, slot.name));
	return slot.join === '+' ? `<mtext>sum of\u00a0</mtext>${name}` : name;
}

/** A name as MathML: single letters in italics, longer names as words. */
export function identifier(name: string): string {
	return name.length === 1 ? `<mi mathvariant="normal">${name}</mi>` : `<mtext>${name}</mtext>`;
}

function shownValue(value: Value, style: Style, units: LengthUnit, slot: Slot, i: number): string {
	if (typeof value === 'string') return `<mtext>${value.replace(/[&<]/g, '')}</mtext>`;
	if (typeof value === 'number') return shownNumber(value, style, units);
	if (!slot.join) return shownNumber(value[i] ?? value[0] ?? 0, style, units);
	return value.map((one) => shownNumber(one, style, units)).join(`<mo>${slot.join}</mo>`);
}

const fractionStyles: ReadonlySet<Style> = new Set(['fraction', 'rivet-diameter', 'rivet-length']);

function shownNumber(value: number, style: Style, units: LengthUnit): string {
	const fraction = units === 'in' && fractionStyles.has(style) ? asFraction(value) : null;
	if (!fraction || fraction.numerator === 0) return `<mn>${formatNumber(value, style, units)}</mn>`;
	const { whole, numerator, denominator } = fraction;
	const part = `<mfrac><mn>${numerator}</mn><mn>${denominator}</mn></mfrac>`;
	return whole === 0 ? part : `<mrow><mn>${whole}</mn>${part}</mrow>`;
}

/** The result; where a line is laid out to the nearest 64th, that 64th beside it. */
function shownResult(method: Method, key: string, value: Value, units: LengthUnit): string {
	const text = format(value, styleAt(method, key), units);
	const laidOut = method.steps[key]?.tolerance?.amount === '1/64' && units === 'in';
	const near = laidOut && typeof value === 'number' ? nearest64(value) : '';
	return `<mtext>${text}${near.startsWith('≈') ? `\u00a0(${near} in)` : ''}</mtext>`;
}
