import type { Exact } from '../quantity/exact.ts';
import type { Value } from '../quantity/kind.ts';
import { readArithmetic } from '../quantity/arithmetic.ts';
import { read } from '../quantity/read.ts';
import type { Reading } from '../quantity/reading.ts';
import type { Values } from './compiled.ts';
import type { Given } from './given.ts';
import type { Method } from './method.ts';

/** Givens that cannot be used; the message is one sentence that says what to do. */
export class GivenError extends Error {}

/**
 * Reads the givens of a method from text, by key, in any notation: `D=1/8`,
 * `layers=0.032in,0.040in`. Arithmetic is worked out. All givens are wanted and no others.
 *
 * @throws GivenError
 */
export async function readGivens(
	method: Method,
	texts: Readonly<Record<string, string>>
): Promise<Values> {
	const wanted = Object.keys(method.given);
	const stray = Object.keys(texts).find((key) => !wanted.includes(key));
	if (stray !== undefined) {
		throw new GivenError(
			`${method.id} has no given called ${clipped(stray)}; it takes ${wanted.join(', ')}.`
		);
	}
	const missing = wanted.find((key) => !Object.hasOwn(texts, key));
	if (missing !== undefined) {
		throw new GivenError(
			`${method.id} also needs ${missing} (${method.given[missing]?.label.toLowerCase()}).`
		);
	}
	const values: Record<string, Value> = {};
	for (const [key, given] of Object.entries(method.given)) {
		values[key] = await readGiven(key, given, texts[key] ?? '');
	}
	return values;
}

async function readGiven(key: string, given: Given, text: string): Promise<Value> {
	const reading = await settled(given, text);
	switch (reading.state) {
		case 'empty':
			throw new GivenError(`${key} is empty; give the ${given.label.toLowerCase()}.`);
		case 'which':
			throw new GivenError(`${key}: ${reading.question}`);
		case 'unread':
			throw new GivenError(
				!given.list && /[^,;][,;]+[^,;]/.test(text)
					? `${key} is one value; give only one.`
					: `${key}: ${reading.why}`
			);
		case 'arithmetic':
			throw new GivenError(`${key}: give one value.`);
		case 'read':
			return checked(key, given, reading.value);
		default:
			return reading satisfies never;
	}
}

async function settled(given: Given, text: string): Promise<Reading> {
	const { kind, list, style } = given;
	const expected = { kind, list, style };
	// Here a comma always stands between values; where people type, it may be a decimal comma.
	const reading = read(list ? text.replaceAll(',', ';') : text, expected);
	return reading.state === 'arithmetic' ? readArithmetic(text, expected) : reading;
}

function checked(key: string, given: Given, value: Exact | string | readonly Exact[]): Value {
	if (typeof value === 'string') return chosen(key, given, value);
	const numbers = Array.isArray(value) ? value.map(Number) : [Number(value)];
	const low = numbers.find((one) => (given.zero ? one < 0 : one <= 0));
	if (low !== undefined) {
		throw new GivenError(
			`${key} must be ${given.zero ? 'zero or more' : 'more than zero'}; give the ${given.label.toLowerCase()} again.`
		);
	}
	if (given.kind === 'angle' && numbers.some((one) => one >= 180)) {
		throw new GivenError(`${key} must be less than 180°; bend angles count from flat.`);
	}
	return given.list ? numbers : (numbers[0] ?? NaN);
}

function chosen(key: string, given: Given, text: string): string {
	if (given.oneOf.length === 0) return text;
	const found = given.oneOf.find((one) => one === text.trim().toLowerCase());
	if (found !== undefined) return found;
	throw new GivenError(`${key} is one of ${given.oneOf.join(', ')}; choose one.`);
}

function clipped(text: string): string {
	const plain = text.replace(/\p{Cc}/gu, '');
	return plain.length > 30 ? `${plain.slice(0, 30)}…` : plain;
}
