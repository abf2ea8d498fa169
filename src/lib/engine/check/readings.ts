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
	const repeats = rows.map((row) => row.length);
	const list = listed(given.kind.member);
	const values = await readGiven(key, { ...given, kind: list }, list, joined(rows), units);
	const numbers = list.numbers(values);
	const isRepeated = repeats.some((count) => count > 1);
	const wanted = repeats.reduce((sum, count) => sum + count, 0);
	if (isRepeated && numbers.length !== wanted) {
		throw new GivenError(`${key}: write every reading out where one is measured several times.`);
	}
	const features = isRepeated ? parted(numbers, repeats) : numbers.map((one) => [one]);
	if (features.length > mostFeatures) {
		throw new GivenError(`${key}: check at most ${mostFeatures} at once.`);
	}
	if (repeats.some((count) => count > mostRepeats)) {
		throw new GivenError(`${key}: at most ${mostRepeats} readings of one feature count.`);
	}
	return features.map(featureOf);
}

function rowsIn(text: string): string[][] {
	const lines = text.trim().split(/[;\n]+/);
	// A single row of a spreadsheet is a list, not one feature.
	const [only = ''] = lines;
	if (lines.length === 1 && only.includes('\t')) return only.split(/\t+/).map((one) => [one]);
	if (lines.length === 1 && /[:|]/.test(only)) return only.split(',').map(repeatsIn);
	if (lines.length === 1) return [[only]];
	return lines.filter((line) => line.trim() !== '').map((line) => repeatsIn(pointed(line)));
}

function repeatsIn(text: string): string[] {
	return text.split(/[\t:|]+/).filter((one) => one.trim() !== '');
}

/** Where lines part the values, a comma inside a number is its decimal point. */
function pointed(line: string): string {
	return line.replace(/(\d),(\d)/g, '$1.$2');
}

function joined(rows: readonly (readonly string[])[]): string {
	return rows.flat().join('; ');
}

function parted(numbers: readonly number[], counts: readonly number[]): number[][] {
	let at = 0;
	return counts.map((count) => numbers.slice(at, (at += count)));
}

function featureOf(readings: readonly number[]): Feature {
	return { readings, value: meanOf(readings), spread: spreadOf(readings) };
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
		mean: meanOf(values),
		least: Math.min(...values),
		most: Math.max(...values),
		spread: spreadOf(values)
	};
}

function meanOf(values: readonly number[]): number {
	return values.reduce((sum, one) => sum + one, 0) / values.length;
}

function spreadOf(values: readonly number[]): number {
	return Math.max(...values) - Math.min(...values);
}

/** The features as the value of a given: a list where the given is one. */
export function valueOf(kind: Kind, features: readonly Feature[]): Value {
	const values = features.map(({ value }) => value);
	return kind.isList ? values : (values[0] ?? NaN);
}
