import type { Kind } from './kind.ts';
import type { Expected, OneReading } from './reading.ts';

/** What the field wants, and how to write it: `a rivet length`, `−5 or 5/16 in`. */
function wantedWords({ kind, style, unit }: Expected): readonly [noun: string, example: string] {
	if (style === 'rivet-length') return ['a rivet length', '−5 or 5/16 in'];
	if (style === 'rivet-diameter') return ['a rivet diameter', '−4 or 1/8 in'];
	if (style === 'drill') return ['a drill', 'No. 30, F or 1/8 in'];
	if (style === 'count') return ['a whole number', '12'];
	if (kind === 'angle') return ['an angle', '45 or 22.5'];
	if (kind === 'weight') return ['a weight', '2.5 lb'];
	if (kind === 'density') return ['a density', '0.1 lb/in3'];
	if (kind === 'number') return ['a plain number', '0.75 or 3/4'];
	return ['a length', unit === 'mm' ? '3.2 mm or 1/8 in' : '1/8 in or 0.125'];
}

/** `a length`: what the field wants. */
export function wanted(expected: Expected): string {
	return wantedWords(expected)[0];
}

/** What is wrong, followed by how to write it. */
export function refuse(fault: string, expected: Expected): string {
	return `${fault} Write it like ${wantedWords(expected)[1]}.`;
}

/** For an amount of another kind than the field wants. */
export function otherKind(amount: string, kind: Kind, expected: Expected): string {
	const is = `${amount} is ${wanted({ kind })}`;
	return refuse(`${is}; ${wanted(expected)} is wanted here.`, expected);
}

export function unread(why: string): OneReading {
	return { state: 'unread', why };
}

/** The answer to text that stands for nothing here. */
export function unreadable(expected: Expected): OneReading {
	return unread(refuse(`That does not read as ${wanted(expected)}.`, expected));
}
