import { isList, type Value } from '../quantity/value.ts';
import type { Values } from '../solver/compiled.ts';

/** A given with more different values than this says nothing of what goes with each. */
const mostSizes = 24;

interface Span {
	readonly words: Set<string>;
	least: number;
	most: number;
}

/**
 * What goes with what, learned from draws: beside a stocked size, every other given keeps to the
 * values that were drawn with that size.
 */
export class Goes {
	/** By given, its value, and another given: what was drawn together. */
	readonly #spans = new Map<string, Map<string, Span>>();

	constructor(draws: readonly Values[]) {
		const keys = Object.keys(draws[0] ?? {});
		const few = keys.filter((key) => {
			const values = new Set(draws.map((draw) => String(draw[key])));
			return !isList(draws[0]?.[key]) && values.size <= mostSizes;
		});
		for (const draw of draws) for (const key of few) this.#note(draw, key);
	}

	/** Whether a given goes with the others as they stand. */
	together(given: Values, key: string): boolean {
		return Object.keys(given).every((other) => {
			if (other === key) return true;
			return this.#fits(given, key, other) && this.#fits(given, other, key);
		});
	}

	#note(draw: Values, key: string): void {
		const at = `${key} ${String(draw[key])}`;
		const spans = this.#spans.get(at) ?? new Map<string, Span>();
		this.#spans.set(at, spans);
		for (const [other, value] of Object.entries(draw)) {
			if (other === key) continue;
			const span = spans.get(other) ?? { words: new Set(), least: Infinity, most: -Infinity };
			spans.set(other, span);
			for (const one of membersOf(value)) widen(span, one);
		}
	}

	/** Whether `other` keeps to what was drawn with the value of `key`. */
	#fits(given: Values, key: string, other: string): boolean {
		const span = this.#spans.get(`${key} ${String(given[key])}`)?.get(other);
		return !span || membersOf(given[other] ?? '').every((one) => holds(span, one));
	}
}

function membersOf(value: Value): readonly Value[] {
	return isList(value) ? value : [value];
}

function widen(span: Span, value: Value): void {
	if (typeof value !== 'number') span.words.add(String(value));
	else {
		span.least = Math.min(span.least, value);
		span.most = Math.max(span.most, value);
	}
}

/** A little room, so that sizes that are the same keep to each other. */
const room = 1e-9;

function holds(span: Span, value: Value): boolean {
	if (typeof value !== 'number') return span.words.has(String(value));
	return value >= span.least - room && value <= span.most + room;
}
