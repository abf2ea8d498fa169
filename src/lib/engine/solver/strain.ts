import type { Functions } from './term.ts';

/** What makes a step harder than plain arithmetic: found in its formula, which pages are without. */
export interface Strain {
	/** A table is read. */
	readonly lookUp?: true;
	/** Goes over to another scale: rounds to a size or a whole number, or counts in a named unit. */
	readonly conversion?: true;
}

const roundings = new Set(['upTo', 'downTo', 'nearest']);

export function strainOf(formula: string, functions: Functions): Strain {
	const names: readonly string[] = formula.match(/[A-Za-z]\w*/g) ?? [];
	const counts = names.some((name) => roundings.has(name)) || /[*/] \([\d/.]+ in\)/.test(formula);
	return {
		...(names.some((name) => isLookUp(functions[name])) && { lookUp: true }),
		...(counts && { conversion: true })
	};
}

/** Only look-ups can tell what they find in their table. */
function isLookUp(called: Functions[string] | undefined): boolean {
	return called !== undefined && 'find' in called;
}
