import { alike, type Sample, sampleOf } from './sample.ts';
import { closed, type Functions, type Term, together } from './term.ts';
import type { TradeFunction } from './trade-function.ts';

/* Calls of trade functions in a formula, and the check of what they take. */

/** A trade function worked along the lists it is given, unless it takes a whole list. */
export function call(name: string, args: readonly Term[], functions: Functions): Term {
	const fn = Object.hasOwn(functions, name) ? functions[name] : undefined;
	if (!fn)
		throw new Error(
			`no trade function is called ${name}: export it in trade/functions/ or trade/tables/, or correct the name`
		);
	const letters: Record<string, Sample> = {};
	let each: string | null = null;
	const sources = args.map((arg, n) => {
		const wanted = takenAt(fn, n);
		if (!wanted) throw new Error(`${name} takes ${fn.takes.length} values`);
		const whole = wanted.endsWith('[]');
		match(arg.sample, wanted.replace('[]', ''), letters, name);
		if (whole && arg.each === null) throw new Error(`${name} takes a list`);
		if (whole) return () => closed(arg);
		each ??= arg.each;
		return arg.js;
	});
	if (args.length < fn.takes.filter((kind) => !kind.endsWith('...')).length) {
		throw new Error(`${name} takes ${fn.takes.length} values`);
	}
	const uses = together(...args);
	const gives = fn.gives.replace('[]', '');
	const js = (i: string) => `f.${name}.run(${sources.map((one) => one(i)).join(', ')})`;
	const list = fn.gives.endsWith('[]');
	return {
		js: list ? (i) => `${js('0')}[${i}]` : js,
		sample: letters[gives] ?? sampleOf(gives),
		each: list ? js('0') : each,
		show: fn.show(args.map((arg) => arg.show)),
		names: uses.names,
		calls: [...uses.calls, name]
	};
}

function takenAt(fn: TradeFunction, n: number): string | undefined {
	const at = fn.takes[n] ?? fn.takes.at(-1);
	if (fn.takes[n] === undefined && !at?.endsWith('...')) return undefined;
	return at?.replace('...', '');
}

function match(
	sample: Sample,
	wanted: string,
	letters: Record<string, Sample>,
	name: string
): void {
	const letter = wanted.length === 1;
	const seen = letter ? letters[wanted] : sampleOf(wanted);
	if (letter && seen === undefined) letters[wanted] = sample;
	else if (seen !== undefined && !alike(sample, seen)) {
		throw new Error(
			`${name} takes ${letter ? 'values of one kind' : `a value of the kind ${wanted}`}`
		);
	}
}
