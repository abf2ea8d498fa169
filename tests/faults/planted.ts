import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';
import type { EnvironmentModuleNode } from 'vite';
import { createVitest, type TestModule, type TestRunResult, type Vitest } from 'vitest/node';
import type { Fault } from './faults.ts';

const top = resolve(import.meta.dirname, '../..');
const copied = ['src', 'tests', '.config', 'package.json', 'vite.config.ts', 'svelte.config.js'];

/** Below tests/engine: what the drawings and the sentences of outcomes were stored as. */
const stored = ['families/drawn.test.ts', 'outcomes/outcomes.test.ts'];

/** What came of a fault, in words. */
export interface Caught {
	readonly caught: boolean;
	readonly told: string;
}

/**
 * A copy of the project to plant faults in, one after another. Its test runner stays: a fault costs
 * what is read again because of it, and the tests.
 */
export async function plantedCopy() {
	const copy = mkdtempSync(join(tmpdir(), 'bucktail-faults-'));
	for (const name of copied) cpSync(join(top, name), join(copy, name), { recursive: true });
	symlinkSync(join(top, 'node_modules'), join(copy, 'node_modules'));
	const vitest = await runnerIn(copy);
	const write = (path: string, text: string) => {
		writeFileSync(path, text);
		forget(vitest, path);
	};
	return {
		async tried({ file, find, replace, heldBy }: Fault): Promise<Caught> {
			const path = join(copy, file);
			const text = readFileSync(path, 'utf8');
			const times = text.split(find).length - 1;
			if (times !== 1)
				return { caught: false, told: `NOT PLANTED: stands ${times} times in ${file}` };
			write(
				path,
				text.replace(find, () => replace)
			);
			try {
				const failed = await firstFailing(vitest, heldBy ? [heldBy] : stored);
				return failed ?? { caught: false, told: 'NOT CAUGHT' };
			} finally {
				write(path, text);
			}
		},
		/** What fails of the tests that hold these faults before any is planted; null when nothing does. */
		failing(faults: readonly Fault[]): Promise<Caught | null> {
			const named = faults.flatMap(({ heldBy }) => heldBy ?? []);
			return firstFailing(vitest, [...stored, ...new Set(named)]);
		},
		async remove() {
			await vitest.close();
			rmSync(copy, { recursive: true, force: true });
		}
	};
}

/** As the project `unit`, for tests of the engine alone. */
async function runnerIn(copy: string): Promise<Vitest> {
	const plugin = join(copy, 'src/plugins/compile-methods.ts');
	const { compileMethods } = (await import(
		plugin
	)) as typeof import('../../src/plugins/compile-methods.ts');
	const options: Parameters<typeof createVitest>[1] = {
		root: copy,
		config: false,
		watch: false,
		include: ['tests/engine/**/*.test.ts'],
		exclude: ['tests/**/*.{alone,slow,chromium}.test.ts'],
		isolate: false,
		unstubGlobals: true,
		maxWorkers: 1,
		bail: 1,
		reporters: [{}]
	};
	return createVitest('test', options, { plugins: [compileMethods()] });
}

/** Has a file read again, and the files that are compiled by what it says. */
function forget(vitest: Vitest, path: string): void {
	for (const environment of Object.values(vitest.vite.environments)) {
		const seen = new Set<EnvironmentModuleNode>();
		const visit = (node: EnvironmentModuleNode) => {
			if (seen.has(node)) return;
			seen.add(node);
			node.importers.forEach(visit);
		};
		environment.moduleGraph.getModulesByFile(path)?.forEach(visit);
		seen.forEach((node) => environment.moduleGraph.invalidateModule(node));
	}
}

/** The first failing test of these files; null when all pass. A fault that does not load is no fault. */
async function firstFailing(vitest: Vitest, files: readonly string[]): Promise<Caught | null> {
	const paths = files.map((file) => `tests/engine/${file}`);
	const found = await vitest.getRelevantTestSpecifications(paths);
	// Files that failed before would be told again.
	vitest.state.filesMap.clear();
	const result = await vitest.runTestSpecifications(found);
	const failed = result.testModules.map(failedTest).find((told) => told !== undefined);
	if (failed) return { caught: true, told: failed };
	const message = errorOf(result);
	return message === undefined ? null : { caught: false, told: `DOES NOT RUN: ${message}` };
}

function failedTest(file: TestModule): string | undefined {
	for (const test of file.children.allTests('failed'))
		return `${basename(file.moduleId, '.test.ts')}: ${test.fullName.trim()}`;
	return undefined;
}

/** What went wrong outside of tests. */
function errorOf({ testModules, unhandledErrors }: TestRunResult): string | undefined {
	if (testModules.length === 0) return 'no tests';
	const [error] = [...testModules.flatMap((file) => file.errors()), ...unhandledErrors];
	if (error === undefined) return undefined;
	const message = error instanceof Object && 'message' in error ? error.message : error;
	return String(message).split('\n')[0];
}
