import { evaluate } from '../solver/evaluate.ts';
import type { Method } from '../solver/method.ts';
import { TradeError } from '../solver/trade-function.ts';
import type { Values } from '../solver/compiled.ts';
import { drillForRivet } from '../methods/drill-for-rivet.ts';
import { edgeDistance } from '../methods/edge-distance.ts';
import { rivetDiameterFromStack } from '../methods/rivet-diameter-from-stack.ts';
import { rivetLength } from '../methods/rivet-length.ts';
import { rivetNumber } from '../methods/rivet-number.ts';
import { rivetDashes } from '../trade/stock.ts';
import type { PanelJob } from './job.ts';
import { gaugeText } from './write.ts';

/** The head as the edge distance tables name it. */
export type HeadSort = 'protruding' | 'countersunk';

export function headSort({ rivet }: PanelJob): HeadSort {
	return rivet.head === 'countersunk' ? 'countersunk' : 'protruding';
}

/** A number among the values of a worked method. */
export function numberAt(values: Values, key: string): number {
	const value = values[key];
	if (typeof value === 'number') return value;
	throw new Error(`${key} is no number`);
}

export function worked(method: Method, given: Values, key: string): number {
	return numberAt(evaluate(method, given), key);
}

/**
 * Rivet diameter that a stack wants, inches: 3T, the next 1/32 in up, and on to the next stocked
 * size.
 *
 * @throws TradeError where none is stocked that is large enough
 */
export function diameterFor(layers: readonly number[]): number {
	const wanted = worked(rivetDiameterFromStack, { layers }, 'diameter');
	const dash = rivetDashes.find((one) => one / 32 >= wanted - 1e-9);
	if (dash !== undefined) return dash / 32;
	throw new TradeError(
		`${gaugeText(Math.max(...layers))} wants a rivet over 1/4 in: take it from approved data`
	);
}

/** Least, preferred and greatest distance from a hole to an edge, inches. */
export interface EdgeDistances {
	readonly least: number;
	readonly preferred: number;
	readonly greatest: number;
}

const edges = new Map<string, EdgeDistances>();

export function edgesFor(D: number, head: HeadSort): EdgeDistances {
	const known = edges.get(`${D} ${head}`);
	if (known) return known;
	const values = evaluate(edgeDistance, { D, head });
	const fresh = {
		least: numberAt(values, 'least'),
		preferred: numberAt(values, 'preferred'),
		greatest: numberAt(values, 'greatest')
	};
	edges.set(`${D} ${head}`, fresh);
	return fresh;
}

/** The rivet for one stack. */
export interface Rivet {
	/** `MS20470AD4-4` */
	readonly number: string;
	readonly diameter: number;
	readonly length: number;
	readonly grip: number;
	/** Grip and shank, before the next length up. */
	readonly needed: number;
}

/** Part numbers by stack: a panel has few stacks and many holes. */
export class Rivets {
	readonly #known = new Map<string, Rivet>();
	readonly #rivet: PanelJob['rivet'];

	constructor(rivet: PanelJob['rivet']) {
		this.#rivet = rivet;
	}

	for(layers: readonly number[], D: number): Rivet {
		const key = `${D} ${layers.join(' ')}`;
		const known = this.#known.get(key);
		if (known) return known;
		const values = evaluate(rivetLength, { layers, D });
		const length = numberAt(values, 'length');
		const { head, alloy } = this.#rivet;
		const number = String(evaluate(rivetNumber, { head, alloy, D, length }).number);
		const fresh = {
			number,
			diameter: D,
			length,
			grip: numberAt(values, 'grip'),
			needed: numberAt(values, 'needed')
		};
		this.#known.set(key, fresh);
		return fresh;
	}
}

/** Pilot and final drill for a rivet, inches. */
export function drillsFor(D: number): { readonly pilot: number; readonly final: number } {
	const values = evaluate(drillForRivet, { D });
	return { pilot: numberAt(values, 'pilot'), final: numberAt(values, 'final') };
}
