import { mean } from '../quantity/mean.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import { listed } from '../quantity/kinds/list.ts';
import type { LengthUnit, Value } from '../quantity/value.ts';
import type { Given } from '../solver/given.ts';
import { GivenError, readGiven } from '../solver/read-givens.ts';

/** One feature of the part as measured, once or several times. */
export interface Feature {
	/** In base units, in the order taken. */
	readonly readings: readonly number[];
	/** Their mean. */
	readonly value: number;
	/** The largest less the smallest. */
	readonly spread: number;
}

/** More features than anybody measures by hand. */
export const mostFeatures = 200;
/** More readings of one feature than are any use. */
const mostRepeats = 20;
/**
 * Readings under one unit lie nearer together than this: 0.29, 7.3 mm is inches beside millimetres.
 */
const mostApart = 8;

/**
 * Reads measured values as typed or pasted, feature by feature: one a line, or with semicolons or
 * commas between. Readings of the same feature stand in one line with tabs, colons or bars between,
 * as they stand in a row of a spreadsheet: `0.251 : 0.250 : 0.252`.
 *
 * @param units what a bare length is in
 * @throws GivenError
 */
export async function readFeatures(
	key: string,
	given: Given,
	text: string,
	units: LengthUnit
): Promise<Feature[]> {
	const rows = rowsIn(text);
	if (rows.length > mostFeatures) {
		throw new GivenError(`${key}: check at most ${mostFeatures} at once.`);
	}
	if (rows.some((row) => row.length > mostRepeats)) {
		throw new GivenError(`${key}: at most ${mostRepeats} readings of one feature count.`);
	}
	const [only] = rows;
	if (only && rows.length === 1 && only.length === 1) {
		const list = listed(given.kind.member);
		const values = await readGiven(key, { ...given, kind: list }, list, only[0] ?? '', units);
		return list.numbers(values).map((one) => featureOf([one]));
	}
	const features: Feature[] = [];
	const withUnit = withUnits(key, rows);
	for (const [i, row] of withUnit.entries()) {
		const readings: number[] = [];
		for (const one of row) {
			const { member } = given.kind;
			const at = `${key}, value ${i + 1}`;
			const value = await readGiven(at, { ...given, kind: member }, member, one, units);
			readings.push(...member.numbers(value));
		}
		features.push(featureOf(readings));
	}
	const sizes = features.flatMap((one) => one.readings);
	if (withUnit !== rows && Math.max(...sizes) > mostApart * Math.min(...sizes)) {
		throw new GivenError(unitsAsked(key));
	}
	return features;
}

const unitsAsked = (key: string) =>
	`${key}: give every value its unit, or only the last one for all.`;

/** The texts of every feature's readings. */
function rowsIn(text: string): string[][] {
	const lines = text.trim().split(/[;\n]+/);
	const [only = ''] = lines;
	// A single row of a spreadsheet is a list, not one feature.
	const rows =
		lines.length > 1
			? lines.map((line) => repeatsIn(pointed(line)))
			: only.split(/,|\t+/).map((one) => repeatsIn(one));
	return rows.filter((row) => row.length > 0);
}

/** The texts, with a unit that stands behind the last one alone behind all of them. */
function withUnits(
	key: string,
	rows: readonly (readonly string[])[]
): readonly (readonly string[])[] {
	const hasUnit = (text: string) => /[a-z"'″”]/i.test(text);
	const sizes = rows.flat().filter((text) => /\d/.test(text));
	const without = sizes.filter((text) => !hasUnit(text));
	if (without.length === 0 || without.length === sizes.length) return rows;
	const [, unit] = /\d\.?\s*([a-z"″”]+)\.?\s*$/i.exec(sizes.at(-1) ?? '') ?? [];
	if (unit === undefined || without.length < sizes.length - 1) {
		throw new GivenError(unitsAsked(key));
	}
	return rows.map((row) => row.map((text) => (hasUnit(text) ? text : `${text} ${unit}`)));
}

function repeatsIn(text: string): string[] {
	return text.split(/[\t:|]+/).filter((one) => one.trim() !== '');
}

/** Where lines part the values, a comma inside a number is its decimal point. */
function pointed(line: string): string {
	return line.replace(/(\d),(\d)/g, '$1.$2');
}

function featureOf(readings: readonly number[]): Feature {
	return { readings, value: mean(readings), spread: spreadOf(readings) };
}

/** What several values of one size come to. */
export interface Statistics {
	readonly mean: number;
	readonly least: number;
	readonly most: number;
	readonly spread: number;
}

export function statisticsOf(values: readonly number[]): Statistics {
	return {
		mean: mean(values),
		least: Math.min(...values),
		most: Math.max(...values),
		spread: spreadOf(values)
	};
}

function spreadOf(values: readonly number[]): number {
	return Math.max(...values) - Math.min(...values);
}

/** The features as the value of a given: a list where the given is one. */
export function valueOf(kind: Kind, features: readonly Feature[]): Value {
	const values = features.map(({ value }) => value);
	return kind.isList ? values : (values[0] ?? NaN);
}
