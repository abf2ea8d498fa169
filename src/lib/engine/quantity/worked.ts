import { work } from './arithmetic-mathjs.ts';
import type { Exact } from './exact.ts';
import { dashesPerInch } from './format.ts';
import type { Expected, Found, Option, Reading } from './reading.ts';
import { bareUnit, convertedText, lengthUnit, saidOf } from './said.ts';
import { settled } from './settled.ts';
import { type Sum, sumOf } from './sum.ts';
import type { Unit } from './units.ts';
import { refuse, unread, wanted } from './wanted.ts';

/** Arithmetic from plain text, worked out. */
export function workedReading(text: string, expected: Expected): Reading {
	const joined = sumOf(text, true, expected);
	const apart = sumOf(text, false, expected);
	if (typeof joined === 'string') return unread(joined);
	const asMixed = resultsOf(joined, expected);
	if (joined.unsure === undefined || typeof apart === 'string') return settled(asMixed, expected);
	return settled(either(joined.unsure, asMixed, resultsOf(apart, expected)), expected);
}

/** The results a sum can mean, or the sentence that refuses it. */
function resultsOf(sum: Sum, expected: Expected): Found {
	const units = [...sum.units.values()];
	const worked = work(sum.expression, sizesOf(sum));
	if (worked === 'by-zero') return 'Nothing can be divided by zero. Check the part below the line.';
	if (worked === 'unlike') return 'Give every number that is added its unit, or none of them.';
	const power = units.length > 0 && expected.kind !== 'number' ? 1 : 0;
	if (worked === 'foreign' || worked.power !== power) {
		return refuse(`The result is not ${wanted(expected)}.`, expected);
	}
	if (worked.value.n > 0n && worked.value.s < 0n)
		return 'The result is below zero. Check the signs.';
	if (power > 0) return [result(worked.value, shownUnit(units, expected), expected)];
	const bare = bareUnit(expected);
	// In millimetres 1/8 + 1/16 may still be inches.
	const both = bare.symbol === 'mm' && sum.hasFraction ? [bare, lengthUnit('in')] : [bare];
	return both.map((unit) => result(worked.value.mul(unit.size), unit, expected));
}

function sizesOf({ units }: Sum): ReadonlyMap<string, Exact> {
	return new Map([...units].map(([name, unit]) => [name, unit.size]));
}

function shownUnit([first, ...others]: readonly Unit[], expected: Expected): Unit {
	return first && others.every((other) => other === first) ? first : bareUnit(expected);
}

function result(value: Exact, unit: Unit, expected: Expected): Option {
	const { style } = expected;
	const isFraction = style === 'fraction' || (style && dashesPerInch[style] !== undefined);
	const fraction = isFraction === true && 64n % value.d === 0n;
	const written = convertedText(value, unit, fraction);
	return { value, said: saidOf(value, written, unit, fraction, expected), grain: 0 };
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
