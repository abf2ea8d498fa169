import { bisect } from 'fmin/src/bisect.js';
import {
	compiledOf,
	copyOf,
	readied,
	setReady,
	type StepWork,
	type Values,
	type Work
} from './compiled.ts';
import { type Given, given } from './given.ts';
import type { Value } from '../quantity/value.ts';
import { kindAt } from './kind-at.ts';
import { laidSlip, notesOf } from './laid.ts';
import type { Inverse, InverseSlip, Method, Slip, Step } from './method.ts';
import { toldOf } from './told.ts';

const inverted = new WeakMap<Method, Map<string, Method>>();

/**
 * The method turned round: `want`, one of its givens, is asked for, and the step it is found from
 * is given. Steps that do not hang on it stay, with their slips; a slip in one that does leads to
 * the value somebody who makes it would find, and is told in the words of the inverse. The same
 * method and given give the same object.
 *
 * @throws Error when the method does not say how that given is found
 */
export function inverseOf(method: Method, want: string): Method {
	const inverse = method.inverses[want];
	if (!inverse) throw new Error(`${method.id} does not say how to find ${want}: add an inverse`);
	if ('by' in inverse) return inverse.by;
	const known = inverted.get(method) ?? new Map<string, Method>();
	inverted.set(method, known);
	const fresh = known.get(want) ?? turnedRound(method, want, inverse);
	known.set(want, fresh);
	return fresh;
}

type Rooted = Exclude<Inverse, { by: Method }>;

function turnedRound(method: Method, want: string, inverse: Rooted): Method {
	const { steps, slips } = compiledOf(method);
	const { from } = inverse;
	const leading = Object.keys(method.steps).slice(0, Object.keys(method.steps).indexOf(from) + 1);
	const hanging = hangingOn(want, leading, steps);
	const stay = leading.filter((key) => !hanging.includes(key));
	const turned: Method = {
		...method,
		id: `${method.id}-${want}`,
		title: `${method.title}: ${inverse.label.toLowerCase()}`,
		given: givenFor(method, want, from),
		steps: {
			...Object.fromEntries(stay.map((key) => [key, method.steps[key] as Step])),
			[want]: wantedStep(method, want, inverse)
		},
		slips: Object.fromEntries(
			Object.entries(method.slips).flatMap(([id, slip]): [string, Slip][] => {
				if (stay.includes(slip.step)) return [[id, slip]];
				const text = hanging.includes(slip.step) ? inverse.slips[id] : undefined;
				return text ? [[id, turnedSlip(slip, want, text)]] : [];
			})
		),
		limits: [],
		outcomes: [],
		inverses: {}
	};
	const chain = hanging.map((key) => ({ key, run: steps[key]?.run as Work['run'] }));
	const copy = copyOf([...Object.keys(method.given), ...Object.keys(method.steps)]);
	const rootOf = (slip?: string) =>
		rootBy({ want, inverse, copy }, chain, slipped(method, slips, slip));
	const { name: dimension } = kindAt(method, want).dimension;
	const needs = [...Object.keys(turned.given), ...stay];
	const told = () => toldOf(method.id).inverses[want];
	const work: StepWork = {
		run: rootOf(),
		show: () => told()?.show ?? [],
		needs,
		dimension,
		list: false
	};
	const works = Object.fromEntries(
		Object.entries(turned.slips).map(([id, slip]) => [
			id,
			slip.step === want
				? { run: rootOf(id), show: () => told()?.slips[id]?.show ?? [], needs }
				: (slips[id] as Work)
		])
	);
	const kept = Object.fromEntries(stay.map((key) => [key, steps[key] as StepWork]));
	setReady(turned, readied(turned, { ...kept, [want]: work }, works, copy));
	return turned;
}

/** The steps that a change of `want` reaches, in order. */
function hangingOn(
	want: string,
	leading: readonly string[],
	steps: Readonly<Record<string, StepWork>>
): string[] {
	const reached = new Set([want]);
	for (const key of leading) {
		if (steps[key]?.needs.some((name) => reached.has(name))) reached.add(key);
	}
	return leading.filter((key) => reached.has(key));
}

function givenFor(method: Method, want: string, from: string): Record<string, Given> {
	const step = method.steps[from];
	const known = given(kindAt(method, from), step?.label ?? from, {
		...(step?.symbol ? { symbol: step.symbol } : {}),
		zero: true
	});
	const others = Object.entries(method.given).filter(([key]) => key !== want);
	return { ...Object.fromEntries(others), [from]: known };
}

function wantedStep({ id, given: known }: Method, want: string, inverse: Rooted): Step {
	const { formula, label, rule, tolerance } = inverse;
	return {
		formula,
		label,
		symbol: known[want]?.symbol ?? null,
		asks: '',
		kind: known[want]?.kind ?? null,
		rule,
		tolerance,
		skill: `${id}-${want}/${want}`,
		from: { unit: id, key: want, names: {} }
	};
}

/** A slip made the other way round, in the formula and words of the inverse. */
function turnedSlip(slip: Slip, want: string, text: InverseSlip): Slip {
	// Its own words are not read, for they may not be there yet.
	const { id, from } = slip;
	return laidSlip(text, {}, { step: want, ...notesOf(slip), id, from });
}

interface Search {
	readonly want: string;
	readonly inverse: Rooted;
	readonly copy: (values: Values) => Record<string, Value>;
}

type Chain = readonly { readonly key: string; readonly run: Work['run'] }[];

function slipped(method: Method, slips: Readonly<Record<string, Work>>, id?: string) {
	const slip = id === undefined ? undefined : method.slips[id];
	return slip && { step: slip.step, run: slips[id ?? '']?.run as Work['run'] };
}

/** Base units: far finer than any tool. */
const precision = 1e-12;

function rootBy(
	{ want, inverse, copy }: Search,
	chain: Chain,
	slip: { step: string; run: Work['run'] } | undefined
): Work['run'] {
	const { from, between } = inverse;
	return (given) => {
		// Each try overwrites all that hangs on it, in the order in which it is worked.
		const values = copy({ ...given, [want]: 0 });
		const off = (at: number): number => {
			values[want] = at;
			for (const { key, run } of chain) values[key] = (slip?.step === key ? slip.run : run)(values);
			return Number(values[from]) - Number(given[from]);
		};
		const [least, most] = between;
		const ends = [off(least), off(most)].map(Math.sign);
		// No value between the bounds leads there; what is no number is refused where it is worked.
		if (!ends.every(Number.isFinite) || ends[0] === ends[1]) return NaN;
		return bisect(off, least, most, { tolerance: precision, maxIterations: 100 });
	};
}
