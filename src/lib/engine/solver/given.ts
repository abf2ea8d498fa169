import type { Kind, Style } from '../quantity/kind.ts';

/** A value a method starts from. Numbers are in the base unit of their kind, a dimension's name. */
export interface Given<K extends string = string, L extends boolean = boolean> {
	readonly kind: K;
	readonly list: L;
	readonly label: string;
	/** How it stands in a formula; a given without one is shown by its key. */
	readonly symbol: string | null;
	readonly style: Style;
	/** The words a `text` given may take; empty when any word is looked up in a table. */
	readonly oneOf: readonly string[];
	/** Whether zero makes sense: a kerf may be nothing, a thickness may not. */
	readonly zero: boolean;
}

interface GivenNotes {
	symbol?: string;
	style?: Style;
	zero?: boolean;
}

const styleOf: Readonly<Record<Kind, Style>> = {
	length: 'thousandth',
	angle: 'degrees',
	weight: 'pounds',
	density: 'factor',
	number: 'factor',
	text: 'words'
};

/** The style a value of this kind is written in when nothing else is said. */
export function plainStyle(kind: string): Style {
	return styleOf[kind as Kind] ?? 'factor';
}

function given<K extends Kind, L extends boolean>(
	kind: K,
	list: L,
	label: string,
	notes: GivenNotes = {},
	oneOf: readonly string[] = []
): Given<K, L> {
	const { symbol = null, style = plainStyle(kind), zero = false } = notes;
	return { kind, list, label, symbol, style, oneOf, zero };
}

export const length = (label: string, notes?: GivenNotes) => given('length', false, label, notes);
export const lengths = (label: string, notes?: GivenNotes) => given('length', true, label, notes);
export const angle = (label: string, notes?: GivenNotes) => given('angle', false, label, notes);
export const angles = (label: string, notes?: GivenNotes) => given('angle', true, label, notes);
export const count = (label: string, notes?: GivenNotes) =>
	given('number', false, label, { style: 'count', ...notes });
/** A plain number: a factor, a share. */
export const number = (label: string, notes?: GivenNotes) => given('number', false, label, notes);
export const words = (label: string, notes?: GivenNotes) => given('text', false, label, notes);
export const choice = (label: string, oneOf: readonly string[], notes?: GivenNotes) =>
	given('text', false, label, notes, oneOf);
