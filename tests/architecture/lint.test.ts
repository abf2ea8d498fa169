import { expect, test } from 'vitest';
import { lintComplaints } from './lint-complaints.ts';

const engineFile = 'src/lib/engine/solver/x.ts';
const markup = '<script lang="ts">let { text }: { text: string } = $props();</script>{@html text}';

const planted: [rule: string, path: string, text: string][] = [
	['no-restricted-properties', engineFile, 'export const x = Math.random();'],
	['no-restricted-properties', engineFile, 'export const { random } = Math;'],
	['no-restricted-globals', engineFile, 'export const x = new Date();'],
	['no-restricted-globals', engineFile, 'export const x = performance.now();'],
	['no-restricted-globals', engineFile, 'export const x = document.title;'],
	['no-restricted-globals', engineFile, 'export const x = window.name;'],
	['no-restricted-globals', engineFile, "export const x = localStorage.getItem('x');"],
	['no-restricted-globals', engineFile, 'export const x = globalThis;'],
	['no-restricted-properties', 'tests/app/x.test.ts', "vi.mock('x');"],
	['no-restricted-properties', 'tests/app/x.test.ts', 'vi.resetModules();'],
	['no-new-func', engineFile, "export const x = new Function('return 1');"],
	['no-eval', 'src/lib/app/x.ts', "export const x = eval('1');"],
	['no-restricted-properties', 'src/lib/app/x.ts', 'export const x = crypto.randomUUID();'],
	['no-restricted-syntax', 'src/lib/app/x.ts', "export const x = import('./y.ts');"],
	['no-restricted-syntax', 'src/lib/ui/x.ts', "export const x = () => import('./y.ts');"],
	['no-restricted-syntax', 'src/routes/x.ts', "export const x = import('./y.ts').then();"],
	['no-console', 'src/lib/app/x.ts', 'console.log(1);'],
	['@typescript-eslint/no-explicit-any', 'src/lib/app/x.ts', 'export let x: any;'],
	['svelte/no-at-html-tags', 'src/lib/ui/X.svelte', markup]
];

test.each(planted)('%s catches, in %s: %s', async (rule, path, text) => {
	expect(await lintComplaints({ path, text })).toEqual([rule]);
});

test.each([
	['the one component that shows markup', 'src/lib/ui/Markup.svelte', markup],
	['a mock in a file of its own', 'tests/app/x.alone.test.ts', "vi.mock('x');"],
	['a late import', 'src/lib/app/x.ts', "export const x = late(() => import('./y.ts'));"],
	['a script that reports', 'src/scripts/x.js', 'console.log(new Date());']
])('lint allows %s', async (_name, path, text) => {
	expect(await lintComplaints({ path, text })).toEqual([]);
});
