import { branch } from './branches.ts';
import { call } from './calls.ts';
import { type MathNode, math } from './math.ts';
import { escaped } from './markup.ts';
import { operator } from './operators.ts';
import { literalUnits } from './sample.ts';
import type { Functions, Names, Term } from './term.ts';

/*
 * One formula: mathjs reads its text and checks its dimensions with units; what comes out is
 * JavaScript source and displayed mathematics. This runs when the app is built, never on a page.
 */

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

const nothing = { each: null, names: [], calls: [] } as const;

function constant(value: unknown): Term {
	if (typeof value === 'string') {
		return {
			js: () => JSON.stringify(value),
			sample: value,
			show: [`<mtext>${escaped(value)}</mtext>`],
			...nothing
		};
	}
	if (typeof value !== 'number') throw new Error(`${String(value)} is not a number`);
	return {
		js: () => String(value),
		sample: value,
		show: [`<mn>${value}</mn>`],
		...nothing
	};
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
	if (!factor) {
		const known = Object.keys(names).filter((one) => !one.startsWith(ofRight));
		throw new Error(
			`${name} is neither a given, an earlier step nor a unit: there are ${known.join(', ')}, and the units ${Object.keys(literalUnits).join(', ')}`
		);
	}
	return {
		js: () => factor,
		sample: math.unit(1, name),
		show: [name === 'deg' ? '<mtext>°</mtext>' : `<mspace width="0.2em"/><mtext>${name}</mtext>`],
		...nothing
	};
}
