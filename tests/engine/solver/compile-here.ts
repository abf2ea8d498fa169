import { runInThisContext } from 'node:vm';
import { compileMethod, compilePiece } from '../../../src/lib/engine/solver/compile.ts';
import { addCompiled, type CompiledUnit } from '../../../src/lib/engine/solver/compiled.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import type { Piece } from '../../../src/lib/engine/solver/write.ts';
import { functions } from '../../../src/lib/engine/trade/functions.ts';

/** A method made up in a test, compiled as the build compiles those in `methods/`. */
export function compiledHere<M extends Method>(method: M): M {
	addCompiled(method.id, unit(compileMethod(method, functions)));
	return method;
}

export function pieceHere(piece: Piece): Piece {
	addCompiled(`piece/${piece.piece}`, unit(compilePiece(piece, functions)));
	return piece;
}

function unit(source: string): CompiledUnit {
	const made = runInThisContext(`(f) => (${source})`) as (f: typeof functions) => CompiledUnit;
	return made(functions);
}
