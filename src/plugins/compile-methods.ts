import { resolve } from 'node:path';
import { type Plugin, runnerImport } from 'vite';
import { compileMethod, compilePiece } from '../lib/engine/solver/compile.ts';
import type { Functions } from '../lib/engine/solver/term.ts';
import type { Method } from '../lib/engine/solver/method.ts';
import type { Piece } from '../lib/engine/solver/write.ts';

/** What the build reads from `trade/functions.ts`. */
interface Trade {
	readonly functions: Functions;
	readonly importing: (names: Iterable<string>, folder: string) => string;
}

const engine = resolve(import.meta.dirname, '../lib/engine');
const methodFile = /\/engine\/methods\/(?:pieces\/|checks\/)?[\w-]+\.ts$/;

/**
 * Compiles the formulas of every method, piece and check in `engine/methods/` as its file is built: their text is
 * read and checked here, and what ships is plain functions. A formula that cannot be read, or
 * whose dimensions do not agree, fails the build.
 */
export function compileMethods(): Plugin {
	let trade: Promise<Trade> | undefined;
	return {
		name: 'compile-methods',
		enforce: 'pre',
		async transform(code, id) {
			const path = id.split('?')[0] ?? id;
			if (!methodFile.test(path)) return null;
			trade ??= exportsOf<Trade>(`${engine}/trade/functions.ts`);
			const [exported, { functions, importing }] = await Promise.all([exportsOf(path), trade]);
			const added = Object.values(exported).flatMap((value) => compiledUnit(value, functions));
			return {
				code: [
					`import { addCompiled } from '${engine}/solver/compiled.ts';`,
					importing(called(added), `${engine}/trade`),
					code,
					...added
				].join('\n'),
				map: null
			};
		}
	};
}

async function exportsOf<Module extends object = Record<string, unknown>>(
	path: string
): Promise<Module> {
	const { module } = await runnerImport<Module>(path, { configFile: false });
	return module;
}

/** Names of the trade functions that compiled formulas call. */
function called(compiled: readonly string[]): string[] {
	return compiled.flatMap((text) =>
		[...text.matchAll(/\bf\.(\w+)\.run\(/g)].map(([, name = '']) => name)
	);
}

/** The line that hands a method or a piece its compiled formulas; none for anything else. */
function compiledUnit(value: unknown, functions: Functions): string[] {
	if (isMethod(value)) {
		return [`addCompiled(${JSON.stringify(value.id)}, ${compileMethod(value, functions)});`];
	}
	if (isPiece(value)) {
		const id = JSON.stringify(`piece/${value.piece}`);
		return [`addCompiled(${id}, ${compilePiece(value, functions)});`];
	}
	return [];
}

function isMethod(value: unknown): value is Method {
	return typeof value === 'object' && value !== null && 'steps' in value && 'slips' in value;
}

function isPiece(value: unknown): value is Piece {
	return typeof value === 'object' && value !== null && 'piece' in value && 'needs' in value;
}
