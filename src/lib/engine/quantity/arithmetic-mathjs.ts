import Fraction from 'fraction.js';
import {
	addDependencies,
	create,
	divideDependencies,
	type FactoryFunctionMap,
	fractionDependencies,
	isConstantNode,
	isFraction,
	isOperatorNode,
	isParenthesisNode,
	isSymbolNode,
	type MathJsInstance,
	type MathNode,
	multiplyDependencies,
	parseDependencies,
	subtractDependencies,
	unaryMinusDependencies,
	unaryPlusDependencies
} from 'mathjs';
import { type Exact, ratio } from './exact.ts';

/*
 * Works out arithmetic that sum.ts has built from its own tokens. mathjs can be made to change its
 * settings or to fill the memory by text alone, so text that a person typed is never handed to it,
 * and the tree it parses is checked again here before anything is evaluated.
 */

const parts = {
	parseDependencies,
	fractionDependencies,
	addDependencies,
	subtractDependencies,
	multiplyDependencies,
	divideDependencies,
	unaryMinusDependencies,
	unaryPlusDependencies
} as FactoryFunctionMap;
const math = create(parts, { number: 'Fraction' }) as MathJsInstance;

/** An exact result, and how many units it holds: 1 for a length, 0 for a plain number. */
export interface Worked {
	readonly value: Exact;
	readonly power: number;
}

/** Something else than numbers, units and + - * /; a sum of unlike things; a division by zero. */
export type Fault = 'foreign' | 'unlike' | 'by-zero';

const longestExpression = 2000;

/** The value of an expression, in which the names of `sizes` stand for units of those sizes. */
export function work(expression: string, sizes: ReadonlyMap<string, Exact>): Worked | Fault {
	const tree = parsed(expression);
	const power = tree ? powerOf(tree, sizes) : 'foreign';
	if (!tree || typeof power === 'string') return power as Fault;
	try {
		const value: unknown = tree.compile().evaluate(asMathjs(sizes));
		return isFraction(value) ? { value: ratio(value.s * value.n, value.d), power } : 'foreign';
	} catch {
		// Of constants and these operators, only a division by zero is left to fail.
		return 'by-zero';
	}
}

function asMathjs(sizes: ReadonlyMap<string, Exact>): Map<string, Fraction> {
	return new Map([...sizes].map(([name, { s, n, d }]) => [name, new Fraction(s * n, d)]));
}

function parsed(expression: string): MathNode | null {
	if (expression.length > longestExpression) return null;
	try {
		return math.parse(expression);
	} catch {
		return null;
	}
}

/** The power of the unit that a tree comes to; a fault when it holds anything not listed here. */
function powerOf(node: MathNode, sizes: ReadonlyMap<string, Exact>): number | Fault {
	if (isConstantNode(node)) return isFraction(node.value) ? 0 : 'foreign';
	if (isParenthesisNode(node)) return powerOf(node.content, sizes);
	if (isSymbolNode(node)) return sizes.has(node.name) ? 1 : 'foreign';
	if (!isOperatorNode(node) || node.implicit) return 'foreign';
	const { fn, args } = node as { fn: string; args: MathNode[] };
	const powers = args.map((arg) => powerOf(arg, sizes));
	const fault = powers.find((power) => typeof power === 'string');
	const [left = 0, right = 0] = powers.filter((power) => typeof power === 'number');
	if (fault) return fault;
	switch (fn) {
		case 'unaryMinus':
		case 'unaryPlus':
			return left;
		case 'add':
		case 'subtract':
			return left === right ? left : 'unlike';
		case 'multiply':
			return left + right;
		case 'divide':
			return left - right;
		default:
			return 'foreign';
	}
}
