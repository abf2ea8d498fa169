import { describe, expect, test } from 'vitest';
import { importFault } from '../../.config/layers.js';
import { lintComplaints } from './lint-complaints.ts';
import { importFaults, importsOf, sourceFiles } from './source-imports.ts';

describe('the layer table', () => {
	const files = sourceFiles().map(({ path, text }) => ({
		path,
		imports: importsOf({ path, text })
	}));

	test('reads the sources', () => {
		const imports = files.flatMap((file) => file.imports);
		expect(files.length).toBeGreaterThan(10);
		expect(imports).toContain('mathjs');
		expect(imports).toContain('../quantity/value.ts');
	});

	test('holds in every source file', () => {
		expect(
			files.flatMap(({ path, imports }) => imports.flatMap((one) => importFault(path, one) ?? []))
		).toEqual([]);
	});
});

const engine = 'src/lib/engine';

/** Each row: where the line is planted, the line, and whether it may stand. */
const planted: [path: string, line: string, stands: boolean][] = [
	[`${engine}/quantity/x.ts`, `import { y } from './y.ts'; y();`, true],
	[`${engine}/sets/x.ts`, `import { y } from '../quantity/y.ts'; y();`, true],
	[`${engine}/marking/x.ts`, `import { y } from '../families/rivets/y.ts'; y();`, true],
	[`${engine}/quantity/x.ts`, `import { y } from '../solver/y.ts'; y();`, false],
	[`${engine}/quantity/x.ts`, `import type { Y } from '../solver/y.ts'; export type X = Y;`, false],
	[`${engine}/quantity/x.ts`, `export type X = import('../solver/y.ts').Y;`, false],
	[`${engine}/quantity/x.ts`, `export { y } from '../solver/y.ts';`, false],
	[`${engine}/quantity/x.ts`, `export * from '../solver/y.ts';`, false],
	[`${engine}/quantity/x.ts`, `await import('../solver/y.ts');`, false],
	[`${engine}/quantity/x.ts`, `const at = '../solver/y.ts'; await import(at);`, false],
	[`${engine}/quantity/x.ts`, `import.meta.glob('../solver/*.ts');`, false],
	[`${engine}/quantity/x.ts`, `import.meta.glob(['./*.ts', '../solver/*.ts']);`, false],
	[`${engine}/quantity/x.ts`, `import.meta.glob(['./*.ts', '!../solver/*.ts']);`, true],
	[`${engine}/figures/x.ts`, `import { y } from '../families/y.ts'; y();`, false],
	[`${engine}/solver/x.ts`, `import { y } from '$lib/ui/y.ts'; y();`, false],
	[`${engine}/solver/x.ts`, `import { y } from '../../../routes/y.ts'; y();`, false],
	[`${engine}/solver/x.ts`, `import { y } from 'svelte'; y();`, false],
	[`${engine}/solver/x.ts`, `import { y } from 'node:fs'; y();`, false],
	[`${engine}/solver/x.ts`, `import { y } from 'fraction.js'; y();`, true],
	[`${engine}/solver/x.ts`, `import { y } from 'mathjs'; y();`, false],
	[`${engine}/solver/math.ts`, `import { y } from 'mathjs'; y();`, true],
	[`${engine}/quantity/arithmetic-mathjs.ts`, `import { y } from 'mathjs/number'; y();`, true],
	['src/lib/app/x.ts', `import { y } from 'mathjs'; y();`, false],
	['src/lib/app/x.ts', `import { y } from '$lib/storage/y.ts'; y();`, true],
	['src/lib/app/x.ts', `import { y } from '../../routes/y.ts'; y();`, false],
	['src/lib/ui/x.svelte.ts', `import { y } from '../storage/y.ts'; y();`, false],
	['src/lib/ui/x.svelte.ts', `import { y } from '../app/y.ts'; y();`, false],
	['src/lib/ui/x.svelte.ts', `import { y } from '../engine/marking/y.ts'; y();`, true],
	[
		'src/lib/ui/X.svelte',
		`<script lang="ts">import Y from '../app/Y.svelte';</script><Y />`,
		false
	],
	['src/lib/ui/X.svelte', `<script lang="ts">import Y from './Y.svelte';</script><Y />`, true],
	[
		'src/lib/ui/X.svelte',
		`<script lang="ts">const y: import('../app/y.ts').Y = 1;</script>{y}`,
		false
	],
	['src/lib/ui/X.svelte', `{#await late(() => import('../app/y.ts'))}wait{/await}`, false],
	['src/lib/storage/x.ts', `import { y } from '../ui/y.ts'; y();`, false],
	['src/lib/exchange/x.ts', `import { y } from '../engine/sets/y.ts'; y();`, true],
	['src/lib/exchange/x.ts', `import { y } from '../storage/y.ts'; y();`, false],
	['src/lib/exchange/x.ts', `import { y } from 'node:fs'; y();`, false],
	['src/lib/app/x.ts', `import { y } from '$lib/exchange/y.ts'; y();`, true],
	[`${engine}/sets/x.ts`, `import { y } from '../../exchange/y.ts'; y();`, false],
	['src/cli/x.ts', `import { y } from '../lib/exchange/y.ts'; y();`, true],
	['src/cli/x.ts', `import { y } from '../lib/app/y.ts'; y();`, false],
	['src/cli/x.ts', `import { y } from '../lib/engine/solver/y.ts'; y();`, true],
	['src/cli/x.ts', `import { y } from '../../tests/y.ts'; y();`, false],
	['src/routes/x.ts', `import { y } from '$lib/app/y.ts'; y();`, true],
	['src/lib/stray/x.ts', `import { y } from './y.ts'; y();`, false],
	[`${engine}/stray/x.ts`, `import { y } from './y.ts'; y();`, false]
];

describe('a planted import', () => {
	test.each(planted)('in %s: %s stands: %s', async (path, text, stands) => {
		expect(importFaults({ path, text }).length).toBe(stands ? 0 : 1);
		expect(await lintComplaints({ path, text })).toEqual(stands ? [] : ['bucktail/layers']);
	});
});
