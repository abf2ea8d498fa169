import type { Field } from './reading.ts';
import { isPlain, type Unit, unitSpelt } from './units.ts';
import { otherDimension, refuse } from './wanted.ts';

/** Arithmetic made ready for the evaluator. */
export interface Sum {
	/** Numbers, + - * / ( ) and unit names only. */
	readonly expression: string;
	/** The units by the name they have in the expression. */
	readonly units: ReadonlyMap<string, Unit>;
	/** The first `1-1/2` that can be a mixed number or a subtraction. */
	readonly unsure: string | undefined;
	/** Whether whole numbers are divided, as in a fraction. */
	readonly hasFraction: boolean;
}

interface Piece {
	readonly kind: 'number' | 'unit' | 'sign';
	readonly text: string;
	readonly unsure?: string | undefined;
}

const deepest = 20;

const mixed = /^(\d+)( ?- ?| )(\d+)\/(\d+)(?! ?[\d./])/;
const fractionWithUnit = /^(\d+) ?\/ ?(\d+)(?= ?[a-z'"°])/;
const plain = /^(\d+\.?\d*|\.\d+)/;
const word = /^([a-z]+|['"°])/;
const sign = /^([-+*/()])/;

/**
 * Takes arithmetic apart and writes it anew from the pieces, so that nothing else that was typed
 * goes further. `join` takes `1-1/2` for a mixed number, else it is a subtraction. Gives a sentence
 * when the text is no arithmetic.
 */
export function sumOf(text: string, join: boolean, field: Field): Sum | string {
	const pieces = piecesOf(text, join);
	if (!pieces) return 'Use only numbers, units, + − × ÷ and brackets.';
	const fault = orderFault(pieces);
	if (fault !== null) return fault;
	const units = unitsIn(pieces, field);
	if (typeof units === 'string') return units;
	const unsure = pieces.find((piece) => piece.unsure !== undefined)?.unsure;
	return {
		expression: expressionOf(pieces, units),
		units,
		unsure,
		hasFraction: /(?:^|[^\d.])\d+ ?\/ ?\d+(?![\d.])/.test(text)
	};
}

function piecesOf(text: string, join: boolean): Piece[] | null {
	const pieces: Piece[] = [];
	for (let rest = text; rest !== '';) {
		const found = nextPiece(rest, pieces.at(-1), join);
		if (!found) return null;
		const [piece, length] = found;
		pieces.push(piece);
		rest = rest.slice(length).trimStart();
	}
	return pieces;
}

/** The piece a text begins with, and its length. */
function nextPiece(text: string, before: Piece | undefined, join: boolean): [Piece, number] | null {
	const [all, whole, mark, top, bottom] = before?.text === '/' ? [] : (mixed.exec(text) ?? []);
	const unsure =
		mark?.includes('-') && Number(whole) > 0 && isProper(top, bottom) ? all : undefined;
	if (all && isProper(top, bottom) && (mark === ' ' || (unsure && join))) {
		return [{ kind: 'number', text: `(${whole}+${top}/${bottom})`, unsure }, all.length];
	}
	const [part, over, under] = fractionWithUnit.exec(text) ?? [];
	if (part) return [{ kind: 'number', text: `(${over}/${under})` }, part.length];
	const number = plain.exec(text)?.[1];
	if (number) return [{ kind: 'number', text: number.replace(/\.$/, ''), unsure }, number.length];
	const unit = word.exec(text)?.[1];
	if (unit) return [{ kind: 'unit', text: unit }, unit.length];
	const operator = sign.exec(text)?.[1];
	return operator ? [{ kind: 'sign', text: operator }, 1] : null;
}

function isProper(top = '', bottom = ''): boolean {
	return BigInt(top) < BigInt(bottom);
}

/** What is wrong with the order of the pieces, as a sentence. */
function orderFault(pieces: readonly Piece[]): string | null {
	const letters = { number: 'n', unit: 'u', sign: '' };
	const shape = pieces.map(({ kind, text }) => letters[kind] || text).join('');
	const unsigned = shape.replace(/(^|\()[-+]/g, '$1');
	if (pieces.some(({ text }) => /^0\d/.test(text)))
		return 'Write decimals with the point, like .032.';
	if (/[nu)][n(]/.test(shape)) return 'Put + − × or ÷ between the numbers.';
	if (/(^|[^n)])u/.test(shape)) return 'Write a unit after its number, like 1.5 in.';
	if (/^$|^[*/)]|[-+*/(][-+*/)]|[-+*/(]$/.test(unsigned)) {
		return 'Put a number on both sides of each + − × and ÷.';
	}
	if (/\/nu?\//.test(shape)) return 'Show with brackets what is divided, like 2/(1/8).';
	return bracketFault(shape);
}

function bracketFault(shape: string): string | null {
	let open = 0;
	for (const sign of shape) {
		open += sign === '(' ? 1 : sign === ')' ? -1 : 0;
		if (open < 0) return 'Open a bracket for each one that is closed.';
		if (open > deepest) return 'Use fewer brackets inside one another.';
	}
	return open > 0 ? 'Close each bracket that is opened.' : null;
}

/** The units by the name they get in the expression; a sentence when one has no place here. */
function unitsIn(pieces: readonly Piece[], field: Field): Map<string, Unit> | string {
	const { dimension } = field.kind;
	const units = new Map<string, Unit>();
	for (const [i, { kind, text }] of pieces.entries()) {
		if (kind !== 'unit') continue;
		const unit = unitSpelt(text, dimension);
		if (!unit) return refuse(`“${text.slice(0, 20)}” is not a unit used here.`, field);
		const [first = unit] = units.values();
		// A plain number may come from lengths, 10 in / 1.25 in; but not from a length and a weight.
		const fits = unit.dimension === dimension || isPlain(dimension);
		if (!fits || unit.dimension !== first.dimension) {
			return otherDimension(`“${text}”`, unit.dimension, field);
		}
		if (!isPlain(unit.dimension)) units.set(`u${i}`, unit);
	}
	return units;
}

/** A counted thing, `12 rivets`, is no unit: its word is left out. */
function expressionOf(pieces: readonly Piece[], units: ReadonlyMap<string, Unit>): string {
	const texts = pieces.map(({ kind, text }, i) => {
		const close = pieces[i - 1]?.kind === 'number' ? ')' : '';
		if (kind === 'unit') return (units.has(`u${i}`) ? `*u${i}` : '') + close;
		return kind === 'number' && pieces[i + 1]?.kind === 'unit' ? `(${text}` : text;
	});
	return texts.join('');
}
