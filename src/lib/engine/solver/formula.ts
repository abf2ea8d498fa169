import {
	addDependencies,
	create,
	divideDependencies,
	type FactoryFunctionMap,
	type MathJsInstance,
	type MathNode,
	multiplyDependencies,
	parseDependencies,
	powDependencies,
	subtractDependencies,
	tanDependencies,
	type Unit,
	unaryMinusDependencies,
	unitDependencies
} from 'mathjs';
import type { Exact } from '../quantity/exact.ts';
import { dimensions } from '../quantity/kinds/all.ts';
import { type Dimension, unitSpelt } from '../quantity/units.ts';
import { branch, type Case, comparison, condition, isComparison, joined } from './branches.ts';
import type { Part, TradeFunction } from './trade-function.ts';

/*
 * One formula: mathjs reads its text and checks its dimensions with units; what comes out is
 * JavaScript source and displayed mathematics. This runs when the app is built, never on a page.
 */

const parts = {
	parseDependencies,
	unitDependencies,
	addDependencies,
	subtractDependencies,
	multiplyDependencies,
	divideDependencies,
	powDependencies,
	unaryMinusDependencies,
	tanDependencies
} as FactoryFunctionMap;
const math = create(parts) as MathJsInstance;

/** A number, a dimension, words, or a condition: what mathjs computes dimensions with. */
export type Sample = number | Unit | string | boolean;

/**
 * A formula in the making: source for one member, its dimension, and the source of the list it
 * runs along, if any.
 */
export interface Term {
	readonly js: (index: string) => string;
	readonly sample: Sample;
	readonly each: string | null;
	readonly show: readonly Part[];
	/** The names it is worked from. */
	readonly names: readonly string[];
	/** The trade functions it calls. */
	readonly calls: readonly string[];
	/** The cases of a branch. */
	readonly cases?: readonly Case[] | undefined;
}

export interface Named {
	readonly sample: Sample;
	readonly list: boolean;
}

export type Names = Readonly<Record<string, Named>>;
export type Functions = Readonly<Record<string, TradeFunction>>;

/** Units a formula may name, as multiples of the base unit of their dimension. */
const literalUnits: Readonly<Record<string, string>> = Object.fromEntries(
	dimensions.flatMap((dimension) =>
		dimension.literals.map((name) => [name, factorOf(unitSpelt(name, dimension)?.size, name)])
	)
);

/** Source of a number; a fraction as a division, so that nothing is rounded here. */
function factorOf(size: Exact | undefined, name: string): string {
	if (!size) throw new Error(`no dimension has the unit ${name}`);
	return size.d === 1n ? String(size.n) : `(${size.n}/${size.d})`;
}

/** What a value of a dimension is like; `more` are dimensions besides those that kinds/all.ts lists. */
export function sampleOf(name: string, ...more: readonly Dimension[]): Sample {
	const found = [...more, ...dimensions].find((one) => one.name === name);
	if (!found) throw new Error(`unknown dimension: ${name}; add its kind to kinds/all.ts`);
	const { formula } = found;
	if (formula === null) return 'words';
	return formula === '' ? 1 : math.unit(1, formula);
}

/**
 * Name of the dimension of a step's result; `where` names the step if it is none that a step may
 * end in. Of dimensions that formulas do not tell apart, `wanted` comes first.
 */
export function dimensionOf(sample: Sample, where: string, wanted?: Dimension): string {
	if (typeof sample === 'boolean') throw new Error(`${where}: a step may not end in a condition`);
	const all = wanted ? [wanted] : dimensions;
	const found = all.find(({ name }) => alike(sample, sampleOf(name, ...all)));
	if (found) return found.name;
	const gives = typeof sample === 'object' ? sample.formatUnits() : typeof sample;
	throw new Error(
		wanted
			? `${where}: ${wanted.noun} is wanted, and the formula gives ${gives}`
			: `${where}: a step may not end in ${gives}`
	);
}

/** Whether two samples measure the same thing. */
export function alike(one: Sample, other: Sample): boolean {
	if (typeof one === 'object' && typeof other === 'object') return one.equalBase(other);
	return typeof one === typeof other;
}

/** Source for the whole value: along a list, every member in turn. */
export function closed(term: Term): string {
	if (term.each === null) return term.js('0');
	const member = term.js('i');
	return member === `${term.each}[i]` ? term.each : `${term.each}.map((_, i) => ${member})`;
}

/** @throws Error naming the formula when it cannot be read or its dimensions do not agree. */
export function compileFormula(
	text: string,
	names: Names,
	functions: Functions,
	where: string
): Term {
	try {
		return termOf(math.parse(text), names, functions);
	} catch (error) {
		const why = error instanceof Error ? error.message : String(error);
		throw new Error(`${where}: ${text}: ${why}`, { cause: error });
	}
}

function termOf(node: MathNode, names: Names, functions: Functions): Term {
	const inner = (child: MathNode) => termOf(child, names, functions);
	switch (node.type) {
		case 'ConstantNode':
			return constant((node as unknown as { value: unknown }).value);
		case 'ParenthesisNode':
			return bracketed(inner((node as unknown as { content: MathNode }).content));
		case 'SymbolNode':
			return symbol((node as unknown as { name: string }).name, names);
		case 'OperatorNode': {
			const { fn, args } = node as unknown as { fn: string; args: MathNode[] };
			return operator(fn, args, args.map(inner));
		}
		case 'ConditionalNode': {
			const arms = node as unknown as Record<'condition' | 'trueExpr' | 'falseExpr', MathNode>;
			return branch(inner(arms.condition), inner(arms.trueExpr), inner(arms.falseExpr));
		}
		case 'AccessorNode':
			return symbol(dotted(node), names);
		case 'FunctionNode': {
			const { fn, args } = node as unknown as { fn: { name: string }; args: MathNode[] };
			return call(fn.name, args.map(inner), functions);
		}
		case 'RelationalNode':
			throw new Error('compare two values at a time, and set sizes in brackets: (1/32 in)');
		default:
			throw new Error(`${node.type} has no place in a formula`);
	}
}

const nothing = { names: [], calls: [] } as const;

/** The names and calls of several terms, each once. */
function used(...terms: readonly Term[]): Pick<Term, 'names' | 'calls'> {
	return {
		names: [...new Set(terms.flatMap((term) => term.names))],
		calls: [...new Set(terms.flatMap((term) => term.calls))]
	};
}

function constant(value: unknown): Term {
	if (typeof value === 'string') {
		return {
			js: () => JSON.stringify(value),
			sample: value,
			each: null,
			show: [`<mtext>${escaped(value)}</mtext>`],
			...nothing
		};
	}
	if (typeof value !== 'number') throw new Error(`${String(value)} is not a number`);
	return {
		js: () => String(value),
		sample: value,
		each: null,
		show: [`<mn>${value}</mn>`],
		...nothing
	};
}

function escaped(text: string): string {
	return text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
}

function bracketed(term: Term): Term {
	return {
		...term,
		show: ['<mrow><mo>(</mo>', ...term.show, '<mo>)</mo></mrow>']
	};
}

/** In front of a name, in the formula of an outcome: its right value, not the student's. */
export const ofRight = 'right.';

/** `right.width` as one name. */
function dotted(node: MathNode): string {
	const text = node.toString();
	if (!/^right\.\w+$/.test(text)) throw new Error(`${node.type} has no place in a formula`);
	return text;
}

function symbol(name: string, names: Names): Term {
	const named = Object.hasOwn(names, name) ? names[name] : undefined;
	if (named) {
		const at = name.startsWith(ofRight) ? `r.${name.slice(ofRight.length)}` : `v.${name}`;
		return {
			js: (i) => (named.list ? `${at}[${i}]` : at),
			sample: named.sample,
			each: named.list ? at : null,
			show: [{ name }],
			names: [name],
			calls: []
		};
	}
	const factor = Object.hasOwn(literalUnits, name) ? literalUnits[name] : undefined;
	if (!factor) throw new Error(`${name} is neither a given, an earlier step nor a unit`);
	return {
		js: () => factor,
		sample: math.unit(1, name),
		each: null,
		show: [`<mspace width="0.2em"/><mtext>${name === 'deg' ? '°' : name}</mtext>`],
		...nothing
	};
}

const unitNames = new Set(Object.keys(literalUnits));

function operator(fn: string, nodes: readonly MathNode[], args: readonly Term[]): Term {
	const [a, b] = args;
	if (fn === 'unaryMinus' && a) {
		return {
			...a,
			js: (i) => `(-${a.js(i)})`,
			show: ['<mo>−</mo>', ...a.show],
			cases: undefined
		};
	}
	if (fn === 'not' && a) {
		const show = ['<mtext>not\u00a0</mtext>', ...a.show];
		return { ...condition(a), js: (i) => `!(${a.js(i)})`, show };
	}
	if (!a || !b) throw new Error(`${fn} has no place in a formula`);
	if (isComparison(fn)) return comparison(fn, a, b);
	if (fn === 'and' || fn === 'or') return joined(fn, a, b);
	const last = nodes[1];
	const unit = last?.type === 'SymbolNode' && unitNames.has(String(last));
	const each = a.each ?? b.each;
	const uses = used(a, b);
	switch (fn) {
		case 'add':
		case 'subtract': {
			const sign = fn === 'add' ? '+' : '-';
			return {
				js: (i) => `(${a.js(i)} ${sign} ${b.js(i)})`,
				sample: (fn === 'add' ? math.add : math.subtract)(
					a.sample as Unit,
					b.sample as Unit
				) as Sample,
				each,
				show: [...a.show, `<mo>${sign === '+' ? '+' : '−'}</mo>`, ...b.show],
				...uses
			};
		}
		case 'multiply':
			return {
				js: (i) => (unit && b.js(i) === '1' ? a.js(i) : `(${a.js(i)} * ${b.js(i)})`),
				sample: math.multiply(a.sample as Unit, b.sample as Unit) as unknown as Sample,
				each,
				show: unit ? [...a.show, ...b.show] : [...a.show, '<mo>×</mo>', ...b.show],
				...uses
			};
		case 'divide':
			return {
				js: (i) => `(${a.js(i)} / ${b.js(i)})`,
				sample: math.divide(a.sample as Unit, b.sample as Unit) as unknown as Sample,
				each,
				show: [
					'<mfrac><mrow>',
					...bare(nodes[0], a),
					'</mrow><mrow>',
					...bare(nodes[1], b),
					'</mrow></mfrac>'
				],
				...uses
			};
		case 'pow':
			return {
				js: (i) => `(${a.js(i)} ** ${b.js(i)})`,
				sample: math.pow(a.sample as Unit, b.sample as number) as unknown as Sample,
				each,
				show: ['<msup><mrow>', ...a.show, '</mrow><mrow>', ...b.show, '</mrow></msup>'],
				...uses
			};
		default:
			throw new Error(`${fn} has no place in a formula`);
	}
}

/** A fraction bar brackets by itself: the brackets of its parts are left off. */
function bare(node: MathNode | undefined, term: Term): readonly Part[] {
	return node?.type === 'ParenthesisNode' ? term.show.slice(1, -1) : term.show;
}

function call(name: string, args: readonly Term[], functions: Functions): Term {
	const fn = Object.hasOwn(functions, name) ? functions[name] : undefined;
	if (!fn) throw new Error(`no trade function is called ${name}`);
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
	const gives = fn.gives.replace('[]', '');
	const js = (i: string) => `f.${name}.run(${sources.map((one) => one(i)).join(', ')})`;
	const list = fn.gives.endsWith('[]');
	return {
		js: list ? (i) => `${js('0')}[${i}]` : js,
		sample: letters[gives] ?? sampleOf(gives),
		each: list ? js('0') : each,
		show: fn.show(args.map((arg) => arg.show)),
		names: used(...args).names,
		calls: [...used(...args).calls, name]
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
