import type { Entry } from '../quantity/kinds/kind.ts';
import type { Reading } from '../quantity/read.ts';
import type { LengthUnit } from '../quantity/value.ts';
import { kindAt } from '../solver/kind-at.ts';
import type { Method } from '../solver/method.ts';
import { readAnswer, workArithmetic } from './answer.ts';

/*
 * What is done with answers after they are typed.
 */

/** Reads an answer as `readAnswer`, with arithmetic worked out at once; never rejects. */
export async function readWorked(
	method: Method,
	key: string,
	text: string,
	units: LengthUnit
): Promise<Reading> {
	const reading = readAnswer(method, key, text, units);
	return reading.state === 'arithmetic' ? workArithmetic(method, key, text, units) : reading;
}

/** An answer as it was understood, as the shop writes it. */
export function entryText(method: Method, key: string, entry: Entry, units: LengthUnit): string {
	const kind = kindAt(method, key);
	if (entry.times !== undefined) return `${Number(entry.value)} ${entry.times}`;
	const value = kind.toValue(entry);
	return value === null ? '' : kind.write(value, units);
}

/** Whether two readings of a step come to the same. */
export function isSameEntry(method: Method, key: string, one: Entry, other: Entry): boolean {
	const kind = kindAt(method, key);
	const [first, second] = [kind.toValue(one), kind.toValue(other)];
	if (first === null || second === null) return first === second;
	return one.grain === other.grain && one.times === other.times && !kind.differs(first, second, 0);
}
