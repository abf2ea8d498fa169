import { runInThisContext } from 'node:vm';
import {
	type Compiled,
	compileMethod,
	compilePiece
} from '../../../src/lib/engine/solver/compile.ts';
import { addCompiled, type CompiledUnit } from '../../../src/lib/engine/solver/compiled.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { addTold } from '../../../src/lib/engine/solver/told.ts';
import { toldBy } from '../../../src/lib/engine/solver/told-by.ts';
import type { Functions } from '../../../src/lib/engine/solver/term.ts';
import type { Piece } from '../../../src/lib/engine/solver/write.ts';
import { functions } from '../../../src/lib/engine/trade/functions.ts';

/**
 * A method made up in a test, compiled as the build compiles those in `methods/`.
 *
 * @param more trade functions that only the test knows
 */
export function compiledHere<M extends Method>(method: M, more: Functions = {}): M {
	const known = { ...functions, ...more };
	add(method.id, method, compileMethod(method, known), known);
	return method;
}

export function pieceHere(piece: Piece): Piece {
	add(`piece/${piece.piece}`, piece, compilePiece(piece, functions), functions);
	return piece;
}

function add(id: string, written: Method | Piece, { unit, told }: Compiled, known: Functions) {
	addCompiled(id, made<CompiledUnit>(unit, known));
	addTold(id, toldBy(written, made<Parameters<typeof toldBy>[1]>(told, known)));
}

function made<T>(source: string, known: Functions): T {
	return (runInThisContext(`(f) => (${source})`) as (f: Functions) => T)(known);
}
