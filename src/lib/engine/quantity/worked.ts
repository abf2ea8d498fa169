import { work } from './arithmetic-mathjs.ts';
import type { Exact } from './exact.ts';
import type { Field, Found, OneReading, Option } from './reading.ts';
import { convertedText, nameText, saidOf } from './said.ts';
import { settled } from './settled.ts';
import { type Sum, sumOf } from './sum.ts';
import { isPlain, ownUnit, type Unit } from './units.ts';
import { withNumbers } from './trigonometry.ts';
import { refuse, unread } from './wanted.ts';

/** Arithmetic from plain text, worked out. */
export function workedReading(entry: string, field: Field): OneReading {
	const text = withNumbers(entry);
	if (typeof text === 'object') return text;
	const joined = sumOf(text, true, field);
	const apart = sumOf(text, false, field);
	if (typeof joined === 'string') return unread(joined);
	const asMixed = resultsOf(joined, field);
	if (joined.unsure === undefined || typeof apart === 'string') return settled(asMixed, field);
	return settled(either(joined.unsure, asMixed, resultsOf(apart, field)), field);
}

/** The results a sum can mean, or the sentence that refuses it. */
function resultsOf(sum: Sum, field: Field): Found {
	const units = [...sum.units.values()];
	const worked = work(sum.expression, sizesOf(sum));
	if (worked === 'by-zero') return 'Nothing can be divided by zero. Check the part below the line.';
	if (worked === 'unlike') return 'Give every number that is added its unit, or none of them.';
	const power = units.length > 0 && !isPlain(field.kind.dimension) ? 1 : 0;
	if (worked === 'foreign' || worked.power !== power) {
		return refuse(`The result is not ${field.kind.noun}.`, field);
	}
	if (worked.value.n > 0n && worked.value.s < 0n)
		return 'The result is below zero. Check the signs.';
	if (power > 0) return [result(worked.value, shownUnit(units, field), field)];
	// In millimetres 1/8 + 1/16 may still be inches.
	const shown = field.kind.dimension.shownIn(field.unit);
	const bare = sum.hasFraction ? shown : shown.slice(0, 1);
	return bare.map((unit) => result(worked.value.mul(unit.size), unit, field));
}

function sizesOf({ units }: Sum): ReadonlyMap<string, Exact> {
	return new Map([...units].map(([name, unit]) => [name, unit.size]));
}

function shownUnit([first, ...others]: readonly Unit[], field: Field): Unit {
	return first && others.every((other) => other === first)
		? first
		: ownUnit(field.kind.dimension, field.unit);
}

function result(value: Exact, unit: Unit, field: Field): Option {
	const fraction = field.kind.fractions && 64n % value.d === 0n;
	const written = convertedText(value, unit, fraction);
	const said = saidOf(value, written, unit, fraction, field) + nameText(value, fraction, field);
	return { value, said, grain: 0 };
}

/** The results with `1-1/2` as a mixed number and as a subtraction; the one that can be worked. */
function either(unsure: string, joined: Found, apart: Found): Found {
	if (typeof apart === 'string') return noted(joined, `${unsure} taken as one mixed number`);
	if (typeof joined === 'string') return noted(apart, `${unsure} taken as a subtraction`);
	return [...joined, ...apart];
}

function noted(found: Found, note: string): Found {
	return typeof found === 'string' ? found : found.map((option) => ({ ...option, note }));
}
