import type { LengthUnit, Value } from '../quantity/value.ts';
import type { Kind } from '../quantity/kinds/kind.ts';
import type { Values } from './compiled.ts';
import type { Given } from './given.ts';
import { kindAt } from './kind-at.ts';
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
		values[key] = await readGiven(key, given, kindAt(method, key), texts[key] ?? '');
	}
	return values;
}

/** Reads one given, as `readGivens` does. */
export async function readGiven(
	key: string,
	given: Given,
	kind: Kind,
	text: string,
	units: LengthUnit = 'in'
): Promise<Value> {
	// Here a comma always stands between values; where people type, it may be a decimal comma.
	const reading = await kind.work(kind.isList ? text.replaceAll(',', ';') : text, units);
	switch (reading.state) {
		case 'empty':
			throw new GivenError(`${key} is empty; give the ${given.label.toLowerCase()}.`);
		case 'which':
			throw new GivenError(`${key}: ${reading.question}`);
		case 'unread':
			throw new GivenError(unreadGiven(key, kind, text, reading.why));
		case 'arithmetic':
			throw new GivenError(`${key}: give one value.`);
		case 'read':
			if (reading.times) throw new GivenError(`${key}: write the size itself, worked out.`);
			return checked(key, given, kind, kind.toValue(reading));
		default:
			return reading satisfies never;
	}
}

function unreadGiven(key: string, { choices, isList }: Kind, text: string, why: string): string {
	if (choices.length > 0) return `${key} is one of ${choices.join(', ')}; choose one.`;
	const several = !isList && /[^,;][,;]+[^,;]/.test(text);
	return several ? `${key} is one value; give only one.` : `${key}: ${why}`;
}

function checked(key: string, given: Given, kind: Kind, value: Value | null): Value {
	if (value === null) throw new GivenError(`${key}: give the ${given.label.toLowerCase()} again.`);
	const numbers = kind.numbers(value);
	if (numbers.some((one) => (given.zero ? one < 0 : one <= 0))) {
		throw new GivenError(
			`${key} must be ${given.zero ? 'zero or more' : 'more than zero'}; give the ${given.label.toLowerCase()} again.`
		);
	}
	const { most } = kind;
	if (most && numbers.some((one) => one > most.limit)) {
		throw new GivenError(`${key} ${most.says}`);
	}
	return value;
}

function clipped(text: string): string {
	const plain = text.replace(/\p{Cc}/gu, '');
	return plain.length > 30 ? `${plain.slice(0, 30)}…` : plain;
}
