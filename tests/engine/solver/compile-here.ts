import { runInThisContext } from 'node:vm';
import { compileMethod, compilePiece } from '../../../src/lib/engine/solver/compile.ts';
import { addCompiled, type CompiledUnit } from '../../../src/lib/engine/solver/compiled.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
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
	addCompiled(method.id, unit(compileMethod(method, known), known));
	return method;
}

export function pieceHere(piece: Piece): Piece {
	addCompiled(`piece/${piece.piece}`, unit(compilePiece(piece, functions), functions));
	return piece;
}

function unit(source: string, known: Functions): CompiledUnit {
	const made = runInThisContext(`(f) => (${source})`) as (f: Functions) => CompiledUnit;
	return made(known);
}
