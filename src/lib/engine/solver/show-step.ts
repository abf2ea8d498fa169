import type { Kind } from '../quantity/kinds/kind.ts';
import type { NumberKind } from '../quantity/kinds/measured.ts';
import { ownUnit } from '../quantity/units.ts';
import { isList, type LengthUnit, type Value } from '../quantity/value.ts';
import { compiledOf, type Values } from './compiled.ts';
import { kindAt } from './kind-at.ts';
import type { Method } from './method.ts';
import { symbolOf } from './symbol.ts';
import { orNull, type Part, type Slot } from './trade-function.ts';

export { symbolOf };

/** A step as displayed mathematics: MathML fragments, without the outer `math` element. */
export interface ShownStep {
	/** The formula in symbols: grip + shank. */
	readonly symbols: string;
	/** The formula with this problem's numbers; one for every member where the step makes a list. */
	readonly numbers: readonly string[];
	/** The results, one for each of `numbers`. */
	readonly results: readonly string[];
	/** What stands before each: `≈` where the numbers come to another last digit as they are shown. */
	readonly signs: readonly ('=' | '≈')[];
}

/** The formula of a step, or of a slip made in it, in symbols: MathML without the outer `math`. */
export function symbolsIn(method: Method, key: string, slipId?: string): string {
	return rendered(partsOf(method, key, slipId), (slot) => shownName(method, slot));
}

function partsOf(method: Method, key: string, slipId?: string): readonly Part[] {
	const { steps, slips } = compiledOf(method);
	const formula = slipId === undefined ? steps[key] : slips[slipId];
	if (!formula) throw new Error(`unknown step: ${method.id}.${key}`);
	return formula.show();
}

/** Step `key` of a method at these values, for the worked solution. */
export function showStep(
	method: Method,
	key: string,
	values: Values,
	units: LengthUnit = 'in',
	slipId?: string
): ShownStep {
	const value = values[key] ?? '';
	const kind = kindAt(method, key);
	const members = kind.isList ? kind.members(value) : [value];
	const fill = (slot: Slot, i: number) => {
		const named = values[slot.name] ?? '';
		return shownValue(named, kindAt(method, slot.name), units, slot, i);
	};
	const parts = partsOf(method, key, slipId);
	const alike = !parts.some((part) => variesAlong(part, values));
	const numbers = (alike ? members.slice(0, 1) : members).map((_, i) =>
		rendered(parts, (slot) => fill(slot, i))
	);
	const resultsOf = (result: Value) =>
		alike
			? [shownResult(method, key, kind, result, units)]
			: kind.members(result).map((one) => shownResult(method, key, kind.member, one, units));
	const results = resultsOf(value);
	const again = resultsOf(fromShown(method, key, values, units, slipId) ?? value);
	return {
		symbols: symbolsIn(method, key, slipId),
		numbers,
		results,
		signs: results.map((result, i) => (again[i] === result ? '=' : '≈'))
	};
}

/** What a step comes to from the numbers as they are shown; null where it cannot be worked with them. */
function fromShown(
	method: Method,
	key: string,
	values: Values,
	units: LengthUnit,
	slipId?: string
): Value | null {
	const { steps, slips } = compiledOf(method);
	const work =
		slipId !== undefined && method.slips[slipId]?.step === key ? slips[slipId] : steps[key];
	if (!work) return null;
	const shown = work.needs.flatMap((name) => {
		const value = values[name];
		return value === undefined
			? []
			: [[name, asShown(value, kindAt(method, name), units)] as const];
	});
	return orNull(() => work.run({ ...values, ...Object.fromEntries(shown) }));
}

/** A value with every number as it is written in a formula: 0.0787 for 2 mm. */
function asShown(value: Value, kind: Kind, units: LengthUnit): Value {
	const { member } = kind;
	if (!isNumberKind(member)) return value;
	const size = ownUnit(member.dimension, units).size.valueOf();
	return kind.map(value, (one) => numberIn(member.number(one, units)) * size);
}

/** `0.0787`, `5/32`, `1 3/8` or `−0.25` as a number. */
function numberIn(text: string): number {
	const [whole = NaN, over, under] = text.replace('−', '').split(/[ /]/).map(Number);
	const size =
		over === undefined ? whole : under === undefined ? whole / over : whole + over / under;
	return text.startsWith('−') ? -size : size;
}

function isNumberKind(kind: Kind): kind is Kind & Pick<NumberKind, 'number'> {
	return 'number' in kind;
}

function variesAlong(part: Part, values: Values): boolean {
	return typeof part === 'object' && !part.join && isList(values[part.name]);
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

function shownValue(value: Value, kind: Kind, units: LengthUnit, slot: Slot, i: number): string {
	// Lengths stand without their unit; an angle beside 180° has its own.
	const sign = kind.dimension.formula === 'deg' && !slot.bare ? '<mtext>°</mtext>' : '';
	if (!kind.isList) return kind.mathml(value, units) + sign;
	const members = kind.members(value);
	const one = members[i] ?? members[0];
	if (!slot.join) return one === undefined ? '' : kind.member.mathml(one, units) + sign;
	const shown = members.map((member) => kind.member.mathml(member, units) + sign);
	return shown.join(`<mo>${slot.join}</mo>`);
}

/** The result; where a line is laid out to the nearest 64th, that 64th beside it. */
function shownResult(
	method: Method,
	key: string,
	kind: Kind,
	value: Value,
	units: LengthUnit
): string {
	const laidOut = method.steps[key]?.tolerance?.tool === 'rule';
	const near = laidOut ? kind.nearest64(value, units) : '';
	return `<mtext>${kind.write(value, units)}${near && `\u00a0(${near})`}</mtext>`;
}
