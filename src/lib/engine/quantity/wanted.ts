import type { Field, OneReading } from './reading.ts';
import type { Dimension } from './units.ts';

/** What is wrong, followed by how to write it. */
export function refuse(fault: string, { kind, unit }: Field): string {
	return `${fault} Write it like ${kind.example(unit)}.`;
}

/** For an amount of another dimension than the field wants. */
export function otherDimension(amount: string, { noun }: Dimension, field: Field): string {
	return refuse(`${amount} is ${noun}; ${field.kind.noun} is wanted here.`, field);
}

export function unread(why: string): { readonly state: 'unread'; readonly why: string } {
	return { state: 'unread', why };
}

/** The answer to text that stands for nothing here. */
export function unreadable(field: Field): OneReading {
	return unread(refuse(`That does not read as ${field.kind.noun}.`, field));
}
