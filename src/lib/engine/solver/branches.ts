import { alike } from './sample.ts';
import { type Case, type Term, together } from './term.ts';
import type { Part } from './trade-function.ts';

/*
 * Conditions and branches in a formula, `width > most ? "replace" : "accept"`: the source they
 * become, the check that both arms give the same kind of value, and their displayed cases.
 */

/** Room for computed floats: sizes nearer than this are the same size. */
const slack = '1e-9';

const comparisons: Readonly<Record<string, readonly [sign: string, words: string]>> = {
	larger: ['>', '&gt;'],
	smaller: ['<', '&lt;'],
	largerEq: ['>=', '≥'],
	smallerEq: ['<=', '≤'],
	equal: ['===', 'is'],
	unequal: ['!==', 'is not']
};

export function isComparison(fn: string): boolean {
	return Object.hasOwn(comparisons, fn);
}

/** Two values of one kind compared; numbers within the slack count as equal. */
export function comparison(fn: string, a: Term, b: Term): Term {
	const [sign, words] = comparisons[fn] ?? ['', ''];
	if (!alike(a.sample, b.sample)) throw new Error('values of unlike kinds are compared');
	const text = typeof a.sample === 'string';
	if (text && !sign.endsWith('==')) throw new Error('words are only the same or not');
	return {
		...together(a, b),
		js: (i) => (text ? `(${a.js(i)} ${sign} ${b.js(i)})` : compared(fn, a.js(i), b.js(i))),
		sample: true,
		show: [...a.show, `<mo>\u00a0${words}\u00a0</mo>`, ...b.show]
	};
}

function compared(fn: string, a: string, b: string): string {
	switch (fn) {
		case 'larger':
			return `(${a} - ${b} > ${slack})`;
		case 'smaller':
			return `(${b} - ${a} > ${slack})`;
		case 'largerEq':
			return `(${b} - ${a} <= ${slack})`;
		case 'smallerEq':
			return `(${a} - ${b} <= ${slack})`;
		case 'equal':
			return `(Math.abs(${a} - ${b}) <= ${slack})`;
		default:
			return `(Math.abs(${a} - ${b}) > ${slack})`;
	}
}

const andSign = '<mtext>\u00a0and\u00a0</mtext>';
const orSign = '<mtext>\u00a0or\u00a0</mtext>';

/** Two conditions joined by `and` or `or`. */
export function joined(fn: 'and' | 'or', a: Term, b: Term): Term {
	const sign = fn === 'and' ? '&&' : '||';
	return {
		...together(a, b),
		js: (i) => `(${condition(a).js(i)} ${sign} ${condition(b).js(i)})`,
		sample: true,
		show: [...a.show, fn === 'or' ? orSign : andSign, ...b.show]
	};
}

/** The term, if it is a condition. */
export function condition(term: Term): Term {
	if (term.sample !== true) throw new Error('a condition is wanted: compare two values');
	return term;
}

/** One of two values by a condition; a branch in the second arm adds its cases to these. */
export function branch(test: Term, yes: Term, no: Term): Term {
	if (!alike(yes.sample, no.sample)) {
		throw new Error('both arms of a branch must give the same kind of value');
	}
	const cases: readonly Case[] = [
		{ show: yes.show, when: condition(test).show },
		...(no.cases ?? [{ show: no.show, when: null }])
	];
	return {
		...together(test, yes, no),
		js: (i) => `(${test.js(i)} ? ${yes.js(i)} : ${no.js(i)})`,
		// Unlike words are one kind of value, but no one word.
		sample: yes.sample,
		show: shownCases(cases),
		cases
	};
}

function shownCases(cases: readonly Case[]): Part[] {
	const row = (show: readonly Part[], when: readonly Part[]): Part[] => [
		'<mtr><mtd>',
		...show,
		'</mtd><mtd>',
		...when,
		'</mtd></mtr>'
	];
	const rows = cases.flatMap(({ show, when }) => {
		if (!when) return row(show, ['<mtext>otherwise</mtext>']);
		const [first = [], ...others] = alternatives(when);
		const more = others.flatMap((one) => row([], ['<mtext>or\u00a0</mtext>', ...one]));
		return [...row(show, ['<mtext>if\u00a0</mtext>', ...first]), ...more];
	});
	return ['<mrow><mo>{</mo><mtable>', ...rows, '</mtable></mrow>'];
}

/** The conditions on either side of every `or`, a line each; one in brackets stays whole. */
function alternatives(when: readonly Part[]): Part[][] {
	const isWhole = when.some((part) => typeof part === 'string' && part.includes('<mo>(</mo>'));
	const lines: Part[][] = [[]];
	for (const part of when) {
		if (part === orSign && !isWhole) lines.push([]);
		else lines.at(-1)?.push(part);
	}
	return lines;
}
