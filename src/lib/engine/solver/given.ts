import type { Kind } from '../quantity/kinds/kind.ts';

/** A value a method starts from. Numbers are in the base unit of their kind's dimension. */
export interface Given<K extends Kind = Kind> {
	readonly kind: K;
	readonly label: string;
	/** How it stands in a formula; a given without one is shown by its key. */
	readonly symbol: string | null;
	/** Whether zero makes sense: a kerf may be nothing, a thickness may not. */
	readonly zero: boolean;
}

interface GivenNotes {
	symbol?: string;
	zero?: boolean;
}

/** `given(listOf(length), 'Layers')`: what is given, and how it is called on the task. */
export function given<K extends Kind>(
	kind: K,
	label: string,
	{ symbol, zero = false }: GivenNotes = {}
): Given<K> {
	return { kind, label, symbol: symbol ?? null, zero };
}
