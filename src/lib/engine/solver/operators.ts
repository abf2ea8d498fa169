import { comparison, condition, isComparison, joined } from './branches.ts';
import { math, type MathNode, type Unit } from './math.ts';
import { alike, literalUnits, nounOf, type Sample } from './sample.ts';
import { type Term, together } from './term.ts';
import type { Part } from './trade-function.ts';

/* Signs between terms: arithmetic, and the comparisons that branches.ts writes. */

const unitNames = new Set(Object.keys(literalUnits));

/** @param nodes the operands as they were read, beside their terms */
export function operator(fn: string, nodes: readonly MathNode[], args: readonly Term[]): Term {
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
	const uses = together(a, b);
	switch (fn) {
		case 'add':
		case 'subtract': {
			const sign = fn === 'add' ? '+' : '-';
			if (!alike(a.sample, b.sample)) {
				throw new Error(
					`${nounOf(a.sample)} ${sign} ${nounOf(b.sample)} makes no sense: a size wants its unit, in brackets, as in (1/8 in)`
				);
			}
			return {
				js: (i) => `(${a.js(i)} ${sign} ${b.js(i)})`,
				sample: (fn === 'add' ? math.add : math.subtract)(
					a.sample as Unit,
					b.sample as Unit
				) as Sample,
				show: [...a.show, `<mo>${sign === '+' ? '+' : '−'}</mo>`, ...b.show],
				...uses
			};
		}
		case 'multiply':
			return {
				js: (i) => (unit && b.js(i) === '1' ? a.js(i) : `(${a.js(i)} * ${b.js(i)})`),
				sample: math.multiply(a.sample as Unit, b.sample as Unit) as unknown as Sample,
				show: unit ? [...a.show, ...b.show] : [...a.show, '<mo>×</mo>', ...b.show],
				...uses
			};
		case 'divide':
			return {
				js: (i) => `(${a.js(i)} / ${b.js(i)})`,
				sample: math.divide(a.sample as Unit, b.sample as Unit) as unknown as Sample,
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
