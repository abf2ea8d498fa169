import { resolve } from 'node:path';
import { type Plugin, runnerImport } from 'vite';
import { compileMethod, type Functions } from '../lib/engine/solver/compile.ts';
import type { Method } from '../lib/engine/solver/method.ts';

const engine = resolve(import.meta.dirname, '../lib/engine');
const methodFile = /\/engine\/methods\/[\w-]+\.ts$/;

/**
 * Compiles the formulas of every file in `engine/methods/` as the file is built: their text is
 * read and checked here, and what ships is plain functions. A formula that cannot be read, or
 * whose dimensions do not agree, fails the build.
 */
export function compileMethods(): Plugin {
	let functions: Promise<Functions> | undefined;
	return {
		name: 'compile-methods',
		enforce: 'pre',
		async transform(code, id) {
			const path = id.split('?')[0] ?? id;
			if (!methodFile.test(path)) return null;
			functions ??= exportsOf(`${engine}/trade/functions.ts`).then(
				(all) => all.functions as Functions
			);
			const [exported, known] = await Promise.all([exportsOf(path), functions]);
			const added = Object.entries(exported)
				.filter(isMethodEntry)
				.map(([name, method]) => `addCompiled(${name}, ${compileMethod(method, known)});`);
			return {
				code: [
					`import { addCompiled } from '${engine}/solver/compiled.ts';`,
					`import { functions as f } from '${engine}/trade/functions.ts';`,
					code,
					...added
				].join('\n'),
				map: null
			};
		}
	};
}

async function exportsOf(path: string): Promise<Record<string, unknown>> {
	const { module } = await runnerImport<Record<string, unknown>>(path, { configFile: false });
	return module;
}

function isMethodEntry(entry: [string, unknown]): entry is [string, Method] {
	const value = entry[1];
	return typeof value === 'object' && value !== null && 'steps' in value && 'slips' in value;
}
