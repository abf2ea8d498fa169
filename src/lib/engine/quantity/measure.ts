import { compound } from './compound.ts';
import { type Numeral, numerals } from './numeral.ts';
import { inUnit } from './option.ts';
import type { Field, Found, Option } from './reading.ts';
import { ownUnit, unitSpelt } from './units.ts';
import { otherDimension, refuse } from './wanted.ts';

/** A number and the unit written behind it. */
export interface Part {
	readonly number: string;
	readonly unit: string;
}

/** `in`, `lb/in³`, `lb/cu. in`, `lb·in`, `ft-lb`; a quote or a degree sign. */
export const unitPattern = '[a-z]+(?:[/·-](?:(?:cu|sq)\\.? ?)?[a-z]+(?:\\^?[23²³])?)?|[\'"°]';

const parts = new RegExp(
	String.raw`(-?[\d.,](?:[\d.,/ _·-]*\d)?\.?(?:e[-+]?\d+)?)(?: |-(?=[a-z]))?(${unitPattern}|$)(?:\.(?!\d))? ?`,
	'gy'
);

/**
 * What a plain number is told of in a shop: `5.1 per inch`, `26 rivets each side`. Not with the
 * dimension, which is loaded before the first task.
 */
const toldOf =
	/\s*(?:\/|\b(?:rivets?|holes?|pieces?)?\s*(?:per|each|a|\/))\s*(?:inch|in|side|row|sheet)\b[.]?$/;

/** Every way to read a number with or without a unit. The entry is plain text. */
export function measures(entry: string, field: Field): Found {
	const [, sign = '', rest = ''] = /^([-+±=≈~]*) ?(.*)$/.exec(entry) ?? [];
	const joined = rest.replace(/ and (?=\d+\/)/, ' ');
	const { name, spelt } = field.kind.dimension;
	const counted = name === 'number' ? joined.replace(toldOf, ' each') : joined;
	const found = unsigned(spelt(counted), field);
	const below = sign.includes('-') && typeof found !== 'string' && found.length > 0;
	if (!below) return found;
	const isDash = name === 'length' && /^\d{1,2}$/.test(rest);
	return refuse(
		isDash ? 'That is a dash number; the size is wanted.' : 'A size is not below zero.',
		field
	);
}

function unsigned(text: string, field: Field): Found {
	const all = partsOf(text);
	const [first] = all;
	if (!first) return [];
	const meant = numerals(first.number);
	if (typeof meant === 'string') return meant;
	const numbers = field.kind.thousands ? meant.slice(0, 1) : meant;
	if (numbers.length === 0) return [];
	if (!first.unit) return bare(numbers, field);
	const unit = unitSpelt(first.unit, field.kind.dimension);
	if (!unit) return refuse(`“${first.unit.slice(0, 20)}” is not a unit used here.`, field);
	if (unit.dimension !== field.kind.dimension)
		return otherDimension(`${first.number} ${first.unit}`.slice(0, 30), unit.dimension, field);
	if (all.length > 1) return compound(all, unit, field);
	const found = numbers.map((number) => inUnit(number, unit, field));
	// Minutes or seconds alone are hardly meant: whoever writes 45" may have slipped from 45°.
	if (unit.dimension.formula !== 'deg' || !/['"]/.test(first.unit)) return found;
	const degrees = ownUnit(unit.dimension, field.unit);
	const whole = numbers.filter(({ form }) => form === 'whole');
	return [...whole.map((number) => inUnit(number, degrees, field)), ...found];
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
function bare(numbers: readonly Numeral[], field: Field): Found {
	const options: Option[] = [];
	for (const number of numbers) {
		const found = bareOne(number, field);
		if (typeof found === 'string') return found;
		options.push(...found);
	}
	return options;
}

function bareOne(number: Numeral, field: Field): Found {
	const { dimension } = field.kind;
	const { found, only } = field.names?.bare(number, field) ?? { found: [], only: false };
	if (only || typeof found === 'string') return found;
	const own = ownUnit(dimension, field.unit);
	// A fraction is more often of an inch, whatever unit the field works in.
	const units = number.grain.n === 0n ? dimension.shownIn(field.unit) : [own];
	return [...found, ...units.map((unit) => inUnit(number, unit, field))];
}
